using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;

namespace PanelService.Drawing.Labels;

/// <summary>One label: the format large, mark and number in the corner, what it is made of, room to sign.</summary>
internal static class LabelFace
{
    // What the sizes below are drawn for; a smaller label is drawn smaller.
    private const double FullWidth = 90;
    private const double FullHeight = 41;
    private const double Inset = 4;
    private const double HeadSize = 5;
    private const double TextSize = 2.8;
    private const double SmallSize = 2.2;
    private const double CornerRoom = 34;

    // Bold letters run a twelfth wider.
    private const double Bold = 1.08;

    public static XElement Draw(Box place, LabelRun run, long number, (string Batch, string Date) on, LabelWords words)
    {
        double scale = Math.Min(1, Math.Min(place.Width / FullWidth, place.Height / FullHeight));
        Box room = place.Shrink(Inset * scale);
        string corner = string.Create(CultureInfo.InvariantCulture, $"{run.Mark} {number}/{run.Of}");
        XElement face = Ink.Group(
            $"label {run.Sort}",
            new XAttribute("data-mark", Lettering.Clean(run.Mark)),
            new XAttribute("data-number", number),
            Text(run.Head, room.X, room.Y + (5 * scale), HeadSize * scale, room.Width - (CornerRoom * scale), ("font-weight", "bold")),
            Text(corner, room.Right, room.Y + (5 * scale), 4 * scale, (CornerRoom - 2) * scale, ("font-weight", "bold"), ("text-anchor", "end")));
        double y = room.Y + (10 * scale);
        foreach (string line in run.Lines.Append(on.Batch).Where(line => line.Length > 0))
        {
            face.Add(Text(line, room.X, y, TextSize * scale, room.Width));
            y += 4.2 * scale;
        }

        face.Add(Ruled(room.X, 50 * scale, room.Bottom, (run.Sort == "panel" ? words.Signature : words.Note, scale)));
        face.Add(Ruled(room.X + (54 * scale), room.Width - (54 * scale), room.Bottom, (words.Date, scale)));
        if (on.Date.Length > 0)
        {
            face.Add(Text(on.Date, room.X + (54 * scale), room.Bottom - (3.4 * scale), TextSize * scale, room.Width - (54 * scale)));
        }

        return face;
    }

    public static XElement Nothing(Box grid, LabelWords words) => Text(
        words.Nothing, grid.X, grid.Y + 8, TextSize, grid.Width);

    private static XElement Ruled(double x, double width, double bottom, (string Word, double Scale) of) => Ink.Group(
        "room",
        Ink.Path(Ink.Line(x, bottom - (2.6 * of.Scale), x + width, bottom - (2.6 * of.Scale)), Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.2)),
        Text(of.Word, x, bottom, SmallSize * of.Scale, width));

    private static XElement Text(string text, double x, double y, double size, double room, params (string Name, string Value)[] more) => new(
        Ink.Svg + "text",
        new XAttribute("x", Ink.Fine(x)),
        new XAttribute("y", Ink.Fine(y)),
        new XAttribute("font-size", Ink.Fine(size)),
        more.Select(attribute => new XAttribute(attribute.Name, attribute.Value)),
        Lettering.Fit(Lettering.Clean(text), more.Length > 0 ? size * Bold : size, room));
}
