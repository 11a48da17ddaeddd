using System.Xml.Linq;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>The material itself: outline, overall sizes, selvedges, the way of the grain.</summary>
internal static class Frame
{
    private const double Offset = 7.5;

    public static XElement Draw(Sketch sketch)
    {
        Draft draft = sketch.Draft;
        double offset = sketch.Paper(Offset);
        double letters = sketch.Paper(2.8);
        var across = new Label(LengthText.FormatFigure(draft.Width, draft.Unit), draft.Outline.CentreX, -offset, letters);
        string alongside = draft.Along is null ? "" : $"   ({draft.Along} this way)";
        var down = new Label(
            LengthText.FormatFigure(draft.Height, draft.Unit) + alongside, -offset, draft.Outline.CentreY, letters, Upright: true);
        if (down.Box.Height > draft.Outline.Height - sketch.Paper(4))
        {
            down = down with { Text = LengthText.FormatFigure(draft.Height, draft.Unit) };
        }

        sketch.Labels.Take(across.Box);
        sketch.Labels.Take(down.Box);
        double gap = sketch.Paper(1);
        string extensions = DimensionLine.Extensions(draft.Outline, offset, gap, upright: false)
            + DimensionLine.Extensions(draft.Outline, offset, gap, upright: true);
        sketch.Dimensions.Append(extensions);
        DimensionLine.Draw(sketch, draft.Outline.X, draft.Outline.Right, across);
        DimensionLine.Draw(sketch, draft.Outline.Y, draft.Outline.Bottom, down);
        return Ink.Rectangle(
            draft.Outline, new XAttribute("class", "outline"), Ink.Fill("none"), Ink.Stroke(Ink.Black), Ink.Weight(sketch.Paper(0.45)));
    }

    public static XElement Bands(Sketch sketch)
    {
        XElement bands = Ink.Group("bands");
        double dot = sketch.Paper(0.5);
        foreach (Box band in sketch.Draft.Bands)
        {
            bands.Add(Ink.Group(
                "band",
                Ink.Title(sketch.Draft.BandWord),
                Ink.Rectangle(
                    band,
                    Ink.Fill(Ink.White),
                    Ink.Stroke(Ink.Grey),
                    Ink.Weight(sketch.Paper(0.18)),
                    new XAttribute("stroke-dasharray", $"{Ink.Number(dot)} {Ink.Number(dot * 2)}"))));
            Label? word = Word(sketch, band);
            if (word is { } label)
            {
                bands.Add(label.Draw());
            }
        }

        return bands;
    }

    private static Label? Word(Sketch sketch, Box band)
    {
        var label = new Label(sketch.Draft.BandWord, band.CentreX, band.CentreY, sketch.Paper(1.8), Upright: true);
        return band.Holds(label.Box) && sketch.Labels.TryTake(label.Box) ? label : null;
    }
}
