using System.Xml.Linq;
using PanelService.Drawing.Drafting;

namespace PanelService.Drawing.Slips;

/// <summary>A page of paper that slips are printed on: head, foot, and the pen for their lines.</summary>
internal static class SlipSheet
{
    public const double Left = 12;
    public const double Width = 190;
    public static readonly (string, string) Bold = ("font-weight", "bold");

    /// <summary>Where the slip begins on a paper.</summary>
    public static double LeftOn(LabelPaper paper) => Left + ((Size(paper).Width - 210) / 2);

    /// <summary>A page with its head and foot.</summary>
    /// <param name="name">The class it is known by.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="words">Batch, heading, summary and foot.</param>
    /// <param name="content">What stands between them.</param>
    public static string Render(
        string name, LabelPaper paper, (string Batch, string Heading, string Summary, string Foot) words, IEnumerable<XElement> content)
    {
        var (width, height) = Size(paper);
        double left = LeftOn(paper);
        return new XElement(
            Ink.Svg + "svg",
            new XAttribute("viewBox", $"0 0 {Ink.Number(width)} {Ink.Number(height)}"),
            new XAttribute("width", Ink.Number(width) + "mm"),
            new XAttribute("height", Ink.Number(height) + "mm"),
            new XAttribute("class", $"drawing {name}"),
            new XAttribute("role", "img"),
            new XAttribute("font-family", Lettering.Family),
            Ink.Fill(Ink.Black),
            Ink.Title($"{words.Batch}: {words.Heading}"),
            Ink.Rectangle(new Box(0, 0, width, height), Ink.Fill(Ink.White), new XAttribute("class", "paper")),
            Text(words.Batch, left, 17, 6, Width, Bold),
            Text(words.Heading, left + Width, 10.5, SlipText.CautionSize, Width, ("text-anchor", "end")),
            Text(words.Summary, left, 23.5, SlipText.LineSize, Width),
            content,
            Text(words.Foot, left, height - 9, SlipText.CautionSize, Width)).ToString(SaveOptions.DisableFormatting);
    }

    /// <summary>A line across the page.</summary>
    public static XElement Rule(double left, double y) => Ink.Path(
        Ink.Line(left, y, left + Width, y), Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.2));

    /// <summary>A box to tick.</summary>
    public static XElement Tick(double x, double y, double size) => Ink.Rectangle(
        new Box(x, y, size, size), Ink.Fine, Ink.Fill("none"), Ink.Stroke(Ink.Black), Ink.Weight(0.4), new XAttribute("class", "tick"));

    /// <summary>A line of text: smaller where it would not fit, down to two thirds, and only then cut short.</summary>
    public static XElement Text(string text, double x, double y, double size, double room, params (string Name, string Value)[] more)
    {
        string clean = Lettering.Clean(text);
        double bold = more.Contains(Bold) ? 1.08 : 1;
        double fitting = Math.Clamp(room / Math.Max(0.01, Lettering.Width(clean) * bold), size * 2 / 3, size);
        return new XElement(
            Ink.Svg + "text",
            new XAttribute("x", Ink.Fine(x)),
            new XAttribute("y", Ink.Fine(y)),
            new XAttribute("font-size", Ink.Fine(fitting)),
            more.Select(attribute => new XAttribute(attribute.Name, attribute.Value)),
            Lettering.Fit(clean, fitting * bold, room + 0.01).Replace('\u00a0', ' '));
    }

    private static (double Width, double Height) Size(LabelPaper paper) => paper == LabelPaper.A4 ? (210, 297) : (215.9, 279.4);
}
