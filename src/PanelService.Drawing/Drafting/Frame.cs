using System.Xml.Linq;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>The material itself: outline, overall sizes, selvedges, the way of the grain.</summary>
internal static class Frame
{
    private const double Offset = 7.5;

    public static XElement Draw(Sketch sketch) => sketch.Draft.Parts.IsEmpty ? Whole(sketch) : Parts(sketch);

    private static XElement Whole(Sketch sketch)
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

    /// <summary>
    /// Each part with where on the material it begins and ends; where it goes on in the next, its edge is dashed. How wide it is
    /// stands above the first.
    /// </summary>
    private static XElement Parts(Sketch sketch)
    {
        Draft draft = sketch.Draft;
        double offset = sketch.Paper(Offset);
        double letters = sketch.Paper(2.8);
        XElement frame = Ink.Group("outlines", Ink.Fill("none"), Ink.Stroke(Ink.Black), Ink.Weight(sketch.Paper(0.45)));
        foreach (DraftPart part in draft.Parts)
        {
            Box box = part.Box;
            var along = new Label(
                $"{LengthText.FormatFigure(part.From, draft.Unit)} – {LengthText.FormatFigure(part.To, draft.Unit)}", box.X - offset, box.CentreY, letters, Upright: true);
            sketch.Labels.Take(along.Box);
            DimensionLine.Draw(sketch, box.Y, box.Bottom, along);
            frame.Add(Ink.Path(Ink.Line(box.X, box.Y, box.X, box.Bottom) + Ink.Line(box.Right, box.Y, box.Right, box.Bottom), new XAttribute("class", "outline")));
            frame.Add(End(sketch, box with { Height = 0 }, part == draft.Parts[0]), End(sketch, box with { Y = box.Bottom, Height = 0 }, part == draft.Parts[^1]));
        }

        Box first = draft.Parts[0].Box;
        var across = new Label(LengthText.FormatFigure(draft.Width, draft.Unit), first.CentreX, -offset, letters);
        sketch.Labels.Take(across.Box);
        sketch.Dimensions.Append(DimensionLine.Extensions(first, offset, sketch.Paper(1), upright: false));
        DimensionLine.Draw(sketch, first.X, first.Right, across);
        return frame;
    }

    private static XElement End(Sketch sketch, Box edge, bool isReal) => Ink.Path(
        Ink.Line(edge.X, edge.Y, edge.Right, edge.Y),
        new XAttribute("class", "outline"),
        isReal ? null! : new XAttribute("stroke-dasharray", $"{Ink.Fine(sketch.Paper(3))} {Ink.Fine(sketch.Paper(1.2))}"));

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
