using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>A text on the drawing, by its middle.</summary>
/// <param name="Text">What it says.</param>
/// <param name="X">Its middle.</param>
/// <param name="Y">Its middle.</param>
/// <param name="Size">Size of the letters, in millimetres of the material.</param>
/// <param name="Upright">Whether it reads from below upwards, turned a quarter left.</param>
internal readonly record struct Label(string Text, double X, double Y, double Size, bool Upright = false)
{
    /// <summary>Half of the letters' height lies this far above the base line: digits and capitals are 0.72 of the size.</summary>
    private const double Middle = 0.36;

    /// <summary>What it takes up, with a hair of air.</summary>
    public Box Box
    {
        get
        {
            double along = (Lettering.Width(Text) + 0.3) * Size;
            double across = Size * 1.05;
            return Upright ? Box.Centred(X, Y, across, along) : Box.Centred(X, Y, along, across);
        }
    }

    public XElement Draw(params XAttribute[] attributes)
    {
        double x = Upright ? X + (Size * Middle) : X;
        double y = Upright ? Y : Y + (Size * Middle);
        var text = new XElement(
            Ink.Svg + "text",
            new XAttribute("x", Ink.Fine(x)),
            new XAttribute("y", Ink.Fine(y)),
            new XAttribute("font-size", Ink.Fine(Size)),
            attributes,
            Lettering.Clean(Text));
        if (Upright)
        {
            text.Add(new XAttribute("transform", $"rotate(-90 {Ink.Fine(x)} {Ink.Fine(y)})"));
        }

        return text;
    }
}
