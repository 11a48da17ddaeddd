using System.Xml.Linq;
using PanelService.Drawing.Drafting;

namespace PanelService.Drawing.Curves;

/// <summary>Lettering of the chart.</summary>
internal static class CurveText
{
    /// <summary>Bold.</summary>
    public static readonly (string Name, string Value) Bold = ("font-weight", "bold");

    /// <summary>Ends where it is put.</summary>
    public static readonly (string Name, string Value) ToTheLeft = ("text-anchor", "end");

    /// <summary>Centred where it is put.</summary>
    public static readonly (string Name, string Value) Centred = ("text-anchor", "middle");

    /// <summary>A text, shortened to its room.</summary>
    public static XElement At(string text, double x, double y, double size, double room, params (string Name, string Value)[] more) => new(
        Ink.Svg + "text",
        new XAttribute("x", Ink.Fine(x)),
        new XAttribute("y", Ink.Fine(y)),
        new XAttribute("font-size", Ink.Fine(size)),
        more.Select(attribute => new XAttribute(attribute.Name, attribute.Value)),
        Lettering.Fit(Lettering.Clean(text), size, room));
}
