using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>The strip below: batch and sheet above, material and scale bar under them, ruled like a drawing's title block.</summary>
internal static class TitleStrip
{
    private const double Split = 0.6;
    private static readonly double[] HeadSizes = [3.2, 2.8, 2.4];

    public static XElement Draw(Sketch sketch)
    {
        Box strip = sketch.Fit.Strip.Shrink(sketch.Paper(0.4));
        double half = strip.CentreY;
        double split = strip.X + (strip.Width * Split);
        string rules = Ink.Line(strip.X, half, strip.Right, half) + Ink.Line(split, strip.Y, split, strip.Bottom);
        var left = new Box(strip.X, strip.Y, split - strip.X, half - strip.Y);
        var right = new Box(split, strip.Y, strip.Right - split, half - strip.Y);
        XAttribute fine = Ink.Weight(sketch.Paper(0.2));
        return Ink.Group(
            "strip",
            Ink.Rectangle(strip, Ink.Fill("none"), Ink.Stroke(Ink.Black), Ink.Weight(sketch.Paper(0.4))),
            Ink.Path(rules, Ink.Fill("none"), Ink.Stroke(Ink.Black), fine),
            Cell(sketch, left, sketch.Draft.Batch, Sizes(sketch.Draft)),
            Cell(sketch, right, sketch.Draft.Name, sketch.Draft.Copies),
            Lines(sketch, left with { Y = half }, sketch.Draft.Material),
            ScaleBar.Draw(sketch, right with { Y = half }));
    }

    private static string Sizes(Draft draft) => draft.Unit switch
    {
        Planning.Measures.LengthUnit.Inch => "sizes in inches",
        Planning.Measures.LengthUnit.Centimetre => "sizes in centimetres",
        _ => "sizes in millimetres",
    };

    private static XElement Cell(Sketch sketch, Box cell, string head, string under)
    {
        double small = sketch.Paper(2.4);
        double x = cell.X + sketch.Paper(2);
        double room = cell.Width - sketch.Paper(4);

        // A long name is written smaller before it is cut short. Bold letters run a twelfth wider.
        double big = HeadSizes.Select(sketch.Paper).FirstOrDefault(size => Lettering.Width(head) * size * 1.08 <= room, sketch.Paper(HeadSizes[^1]));
        XElement group = Ink.Group("cell", Text(Lettering.Fit(head, big * 1.08, room), x, cell.Y + sketch.Paper(4), big, bold: true));
        group.Add(Text(Lettering.Fit(under, small, room), x, cell.Y + sketch.Paper(7.8), small, bold: false));
        return group;
    }

    private static XElement Lines(Sketch sketch, Box cell, string text)
    {
        double size = sketch.Paper(2.4);
        double room = cell.Width - sketch.Paper(4);
        double x = cell.X + sketch.Paper(2);
        (string first, string second) = Break(text, size, room);
        XElement group = Ink.Group("cell", Text(Lettering.Fit(first, size, room), x, cell.Y + sketch.Paper(4), size, bold: false));
        if (second.Length > 0)
        {
            group.Add(Text(Lettering.Fit(second, size, room), x, cell.Y + sketch.Paper(7.6), size, bold: false));
        }

        return group;
    }

    /// <summary>Breaks a text after the last comma that fits on the first line, or the last space, or not at all.</summary>
    private static (string First, string Second) Break(string text, double size, double room)
    {
        if (Lettering.Width(text) * size <= room)
        {
            return (text, "");
        }

        int fits = Enumerable.Range(1, text.Length).LastOrDefault(n => Lettering.Width(text[..n]) * size <= room);
        int at = text.LastIndexOf(", ", Math.Max(0, fits - 1), StringComparison.Ordinal) is var comma and > 0
            ? comma + 1
            : text.LastIndexOf(' ', Math.Max(0, fits - 1));
        return at > 0 ? (text[..at], text[(at + 1)..]) : (text, "");
    }

    private static XElement Text(string text, double x, double y, double size, bool bold) => new(
        Ink.Svg + "text",
        new XAttribute("x", Ink.Fine(x)),
        new XAttribute("y", Ink.Fine(y)),
        new XAttribute("font-size", Ink.Fine(size)),
        new XAttribute("text-anchor", "start"),
        bold ? new XAttribute("font-weight", "bold") : null!,
        text);
}
