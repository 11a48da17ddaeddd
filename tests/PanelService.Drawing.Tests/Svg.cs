using System.Globalization;
using System.Xml.Linq;

namespace PanelService.Drawing.Tests;

/// <summary>Reads a drawing back, as a browser would: by its XML alone.</summary>
internal sealed class Svg
{
    private static readonly XNamespace Name = "http://www.w3.org/2000/svg";
    private readonly XElement _root;

    public Svg(string text) => _root = XDocument.Parse(text).Root!;

    public XElement Root => _root;

    public (double X, double Y, double Width, double Height) ViewBox
    {
        get
        {
            double[] parts = [.. _root.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
            return (parts[0], parts[1], parts[2], parts[3]);
        }
    }

    public IEnumerable<XElement> Elements(string tag) => _root.Descendants(Name + tag);

    public IEnumerable<XElement> Classed(string name) =>
        _root.Descendants().Where(element => ((string?)element.Attribute("class") ?? "").Split(' ').Contains(name));

    public static (double X, double Y, double Width, double Height) Box(XElement rect) => (
        Number(rect.Attribute("x")!.Value),
        Number(rect.Attribute("y")!.Value),
        Number(rect.Attribute("width")!.Value),
        Number(rect.Attribute("height")!.Value));

    public static (double X, double Y, double Width, double Height) FirstBox(XElement group) =>
        Box(group.Elements(Name + "rect").First());

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
