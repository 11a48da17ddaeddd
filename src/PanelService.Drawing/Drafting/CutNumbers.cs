using System.Globalization;
using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>
/// The blade's paths, to scale, each with its number at an end: outside the sheet where the cut reaches the edge,
/// else on the cut itself, as near its end as there is room.
/// </summary>
internal static class CutNumbers
{
    private static readonly double[] Sizes = [2.3, 1.9, 1.5];

    public static XElement Draw(Sketch sketch)
    {
        XElement cuts = Ink.Group("cuts", Ink.Fill(Ink.Accent), Ink.Weight(sketch.Paper(0.18)));
        foreach (DraftCut cut in sketch.Draft.Cuts)
        {
            cuts.Add(Draw(sketch, cut));
        }

        return cuts;
    }

    private static XElement Draw(Sketch sketch, DraftCut cut)
    {
        string number = cut.Number.ToString(CultureInfo.InvariantCulture);
        var group = Ink.Group(
            cut.BySupplier ? "cut supplier" : "cut", new XAttribute("data-cut", number), Ink.Title(cut.Note), Ink.Rectangle(cut.Path, new XAttribute("class", "kerf")));
        if (cut.BySupplier)
        {
            group.Add(Dashes(sketch, cut));
        }

        foreach (double size in Sizes)
        {
            double letters = sketch.Paper(size);
            XElement[] drawn = Outside(sketch, cut, number, letters) ?? Inside(sketch, cut, number, letters);
            if (drawn.Length > 0)
            {
                group.Add(drawn);
                return group;
            }
        }

        sketch.Left++;
        return group;
    }

    /// <summary>A broad dashed line along the path: not the painter's saw.</summary>
    private static XElement Dashes(Sketch sketch, DraftCut cut)
    {
        string along = cut.AlongY
            ? Ink.Line(cut.Path.CentreX, cut.Path.Y, cut.Path.CentreX, cut.Path.Bottom)
            : Ink.Line(cut.Path.X, cut.Path.CentreY, cut.Path.Right, cut.Path.CentreY);
        string dash = $"{Ink.Fine(sketch.Paper(3))} {Ink.Fine(sketch.Paper(1.2))}";
        return Ink.Path(along, Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(sketch.Paper(0.9)), new XAttribute("stroke-dasharray", dash));
    }

    private static XElement[]? Outside(Sketch sketch, DraftCut cut, string number, double size)
    {
        Box outline = sketch.Draft.Outline;
        double reach = sketch.Paper(1.2) + (size * 0.9);
        double near = 0.01;
        List<(double X, double Y)> ends = cut.AlongY
            ? [(cut.Path.CentreX, cut.Path.Y <= outline.Y + near ? outline.Y - reach : double.NaN),
               (cut.Path.CentreX, cut.Path.Bottom >= outline.Bottom - near ? outline.Bottom + reach : double.NaN)]
            : [(cut.Path.X <= outline.X + near ? outline.X - reach : double.NaN, cut.Path.CentreY),
               (cut.Path.Right >= outline.Right - near ? outline.Right + reach : double.NaN, cut.Path.CentreY)];
        foreach ((double x, double y) in ends)
        {
            if (double.IsNaN(x) || double.IsNaN(y) || Badge(sketch, number, x, y, size) is not { } badge)
            {
                continue;
            }

            return [Lead(sketch, cut, outline, x, y), .. badge];
        }

        return null;
    }

    /// <summary>A short line from the cut's end out to its number.</summary>
    private static XElement Lead(Sketch sketch, DraftCut cut, Box outline, double x, double y)
    {
        double edgeX = Math.Clamp(x, outline.X, outline.Right);
        double edgeY = Math.Clamp(y, outline.Y, outline.Bottom);
        double half = sketch.Paper(1.2);
        double outX = cut.AlongY ? x : edgeX + (Math.Sign(x - edgeX) * half);
        double outY = cut.AlongY ? edgeY + (Math.Sign(y - edgeY) * half) : y;
        return Ink.Path(Ink.Line(edgeX, edgeY, outX, outY), Ink.Stroke(Ink.Accent), Ink.Fill("none"));
    }

    private static XElement[] Inside(Sketch sketch, DraftCut cut, string number, double size)
    {
        double step = size * 0.7;
        double length = cut.AlongY ? cut.Path.Height : cut.Path.Width;
        for (double along = size; along < length / 2; along += step)
        {
            foreach (double at in (double[])[along, length - along])
            {
                double x = cut.AlongY ? cut.Path.CentreX : cut.Path.X + at;
                double y = cut.AlongY ? cut.Path.Y + at : cut.Path.CentreY;
                if (Badge(sketch, number, x, y, size) is { } badge)
                {
                    return badge;
                }
            }
        }

        return [];
    }

    private static XElement[]? Badge(Sketch sketch, string number, double x, double y, double size)
    {
        double width = Math.Max(size * 1.35, (Lettering.Width(number) + 0.45) * size);
        Box box = Box.Centred(x, y, width, size * 1.35);
        if (!sketch.Fit.Page.Holds(box) || !sketch.Labels.TryTake(box))
        {
            return null;
        }

        string round = Ink.Fine(size * 0.67);
        return
        [
            Ink.Rectangle(box, Ink.Fine, new XAttribute("rx", round), Ink.Fill(Ink.White), Ink.Stroke(Ink.Accent)),
            new Label(number, x, y, size).Draw(),
        ];
    }
}
