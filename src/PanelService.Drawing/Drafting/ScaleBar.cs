using System.Xml.Linq;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>A bar of four fields, black and white, whose whole is a round length of the order's unit.</summary>
internal static class ScaleBar
{
    private const double Longest = 42;
    private static readonly decimal[] Inches = [96, 48, 24, 12, 6, 4, 2, 1];
    private static readonly decimal[] Centimetres = [400, 200, 100, 80, 40, 20, 10, 4, 2];

    public static XElement Draw(Sketch sketch, Box cell)
    {
        LengthUnit unit = sketch.Draft.Unit;
        double room = Math.Min(sketch.Paper(Longest), cell.Width - sketch.Paper(16));
        Length length = Round(unit, room);
        double field = Millimetres.Of(length) / 4;
        double x = cell.X + sketch.Paper(3.5);
        double y = cell.Y + sketch.Paper(5.2);
        double thick = sketch.Paper(1.3);
        XElement bar = Ink.Group("scale");
        for (int i = 0; i < 4; i++)
        {
            bar.Add(Ink.Rectangle(
                new Box(x + (i * field), y, field, thick),
                Ink.Fill(i % 2 == 0 ? Ink.Black : Ink.White),
                Ink.Stroke(Ink.Black),
                Ink.Weight(sketch.Paper(0.18))));
        }

        double above = y - sketch.Paper(1.9);
        double size = sketch.Paper(2.2);
        bar.Add(new Label("0", x, above, size).Draw());
        bar.Add(new Label($"{LengthText.FormatFigure(length, unit)} {LengthText.Abbreviation(unit)}", x + (4 * field), above, size).Draw());
        return bar;
    }

    private static Length Round(LengthUnit unit, double room)
    {
        (decimal[] lengths, LengthUnit of) = unit == LengthUnit.Inch
            ? (Inches, LengthUnit.Inch)
            : (Centimetres, LengthUnit.Centimetre);
        decimal best = lengths.FirstOrDefault(length => Millimetres.Of(Length.From(length, of)) <= room, lengths[^1]);
        return Length.From(best, of);
    }
}
