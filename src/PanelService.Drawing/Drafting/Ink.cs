using System.Globalization;
using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>
/// The pen: makes SVG elements with colours as plain attributes, so that a page may restyle them by class and a
/// strict content security policy has nothing to object to. Text always goes in as a text node.
/// </summary>
internal static class Ink
{
    public const string Black = "#1a1a1a";
    public const string Grey = "#5c5c5c";
    public const string White = "#ffffff";

    /// <summary>The one accent, a carpenter's red pencil: prints as a dark grey (relative luminance 0.11).</summary>
    public const string Accent = "#b3261e";

    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static string Number(double value)
    {
        string text = value.ToString("0.######", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>For what is not geometry of the material: hundredths of a millimetre are finer than any printer.</summary>
    public static string Fine(double value)
    {
        string text = value.ToString("0.##", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    public static XElement Group(string name, params object[] content) =>
        new(Svg + "g", new XAttribute("class", name), content);

    public static XElement Rectangle(Box box, params XAttribute[] attributes) => Rectangle(box, Number, attributes);

    public static XElement Rectangle(Box box, Func<double, string> number, params XAttribute[] attributes) => new(
        Svg + "rect",
        new XAttribute("x", number(box.X)),
        new XAttribute("y", number(box.Y)),
        new XAttribute("width", number(box.Width)),
        new XAttribute("height", number(box.Height)),
        attributes);

    public static XElement Path(string data, params XAttribute[] attributes) =>
        new(Svg + "path", new XAttribute("d", data), attributes);

    public static string Line(double x1, double y1, double x2, double y2) =>
        $"M{Fine(x1)} {Fine(y1)}L{Fine(x2)} {Fine(y2)}";

    public static XAttribute Fill(string colour) => new("fill", colour);

    public static XAttribute Stroke(string colour) => new("stroke", colour);

    public static XAttribute Weight(double width) => new("stroke-width", Fine(width));

    public static XElement Title(string text) => new(Svg + "title", Lettering.Clean(text));
}
