using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;

namespace PanelService.Drawing.Labels;

/// <summary>One label: the format large, mark and number in the corner, what it is made of, room to sign.</summary>
internal static class LabelFace
{
    public const double Width = 90;
    public const double Height = 41;

    private const double Inset = 4;
    private const double HeadSize = 5;
    private const double TextSize = 2.8;
    private const double SmallSize = 2.2;
    private const double CornerRoom = 34;

    // Bold letters run a twelfth wider.
    private const double Bold = 1.08;

    public static XElement Draw(Box place, LabelRun run, long number, string batch)
    {
        Box room = place.Shrink(Inset);
        string corner = string.Create(CultureInfo.InvariantCulture, $"{run.Mark} {number}/{run.Of}");
        XElement face = Ink.Group(
            $"label {run.Sort}",
            new XAttribute("data-mark", Lettering.Clean(run.Mark)),
            new XAttribute("data-number", number),
            Text(run.Head, room.X, room.Y + 5, HeadSize, room.Width - CornerRoom, ("font-weight", "bold")),
            Text(corner, room.Right, room.Y + 5, 4, CornerRoom - 2, ("font-weight", "bold"), ("text-anchor", "end")));
        double y = room.Y + 10;
        foreach (string line in run.Lines.Append(batch).Where(line => line.Length > 0))
        {
            face.Add(Text(line, room.X, y, TextSize, room.Width));
            y += 4.2;
        }

        face.Add(Ruled(room.X, 50, room.Bottom, run.Sort == "panel" ? "signature" : "note"));
        face.Add(Ruled(room.X + 54, room.Width - 54, room.Bottom, "date"));
        return face;
    }

    public static XElement Nothing(Box grid) => Text(
        "Nothing to label: no panel is cut from board, and no offcut is kept.", grid.X, grid.Y + 8, TextSize, grid.Width);

    private static XElement Ruled(double x, double width, double bottom, string word) => Ink.Group(
        "room",
        Ink.Path(Ink.Line(x, bottom - 2.6, x + width, bottom - 2.6), Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.2)),
        Text(word, x, bottom, SmallSize, width));

    private static XElement Text(string text, double x, double y, double size, double room, params (string Name, string Value)[] more) => new(
        Ink.Svg + "text",
        new XAttribute("x", Ink.Fine(x)),
        new XAttribute("y", Ink.Fine(y)),
        new XAttribute("font-size", Ink.Fine(size)),
        more.Select(attribute => new XAttribute(attribute.Name, attribute.Value)),
        Lettering.Fit(Lettering.Clean(text), more.Length > 0 ? size * Bold : size, room));
}
