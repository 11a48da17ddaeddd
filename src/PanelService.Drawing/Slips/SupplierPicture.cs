using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>
/// A sheet with the supplier's cuts in the accent, their numbers, and the size of every part. y runs down, as on the large drawing.
/// A number slides along its cut to where it touches no size and no other number.
/// </summary>
internal static class SupplierPicture
{
    private const double Largest = 3.2;
    private const double Smallest = 1.4;
    private const double Badge = 4.2;
    private const double Apart = 0.3;

    // As far along the cut as numbers usually stand first, then on either side of that.
    private static readonly double[] Slides = [0.2, 0.15, 0.25, 0.1, 0.3, 0.35, 0.4, 0.05, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95];

    public static XElement Draw(SheetLayout sheet, (LengthUnit Unit, SlipWords Words) written, Box room)
    {
        double width = Millimetres.Of(sheet.Board.Width), height = Millimetres.Of(sheet.Board.Height);
        double scale = Math.Min(room.Width / width, room.Height / height);
        Box Placed(Box box) => new(room.X + (box.X * scale), room.Y + (box.Y * scale), box.Width * scale, box.Height * scale);
        var taken = new LabelPlacer(Badge);

        return Ink.Group(
            "sheet-picture",
            Ink.Rectangle(Placed(new Box(0, 0, width, height)), Ink.Fine, Ink.Fill(Ink.White), Ink.Stroke(Ink.Black), Ink.Weight(0.4)),
            SupplierParts.Of(sheet).SelectMany(part =>
                SizeOf(Placed(Millimetres.Of(part.X, part.Y, part.Width, part.Height)), written.Words.Size((part.Width, part.Height), written.Unit), taken)).ToList(),
            sheet.Cuts.Where(cut => cut.BySupplier).SelectMany(cut => CutOf(cut, Placed, taken)));
    }

    private static IEnumerable<XElement> SizeOf(Box at, string size, LabelPlacer taken)
    {
        double letters = Math.Min(Largest, at.Width * 0.92 / Lettering.Width(size));
        if (letters >= Smallest && letters * 1.3 < at.Height)
        {
            taken.Take(Box.Centred(at.CentreX, at.CentreY, Lettering.Width(size) * letters, letters));
            yield return Centred(size, at.CentreX, at.CentreY, letters);
        }
    }

    private static IEnumerable<XElement> CutOf(SheetCut cut, Func<Box, Box> placed, LabelPlacer taken)
    {
        double at = Millimetres.Of(cut.At) + (Millimetres.Of(cut.SupplierKerf!.Value) / 2);
        double x = Millimetres.Of(cut.X), y = Millimetres.Of(cut.Y), width = Millimetres.Of(cut.Width), height = Millimetres.Of(cut.Height);
        bool across = cut.Axis == Cutting.Axis.X;
        Box from = placed(across ? new Box(at, y, 0, 0) : new Box(x, at, 0, 0));
        Box to = placed(across ? new Box(at, y + height, 0, 0) : new Box(x + width, at, 0, 0));
        yield return Ink.Path(
            Ink.Line(from.X, from.Y, to.X, to.Y), new XAttribute("class", "cut"), new XAttribute("data-cut", cut.Number), Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(0.8));
        Box BadgeAt(double slide) => Box.Centred(from.X + ((to.X - from.X) * slide), from.Y + ((to.Y - from.Y) * slide), Badge, Badge);
        var badge = BadgeAt(Slides.FirstOrDefault(slide => taken.IsFree(BadgeAt(slide).Shrink(-Apart)), Slides[0]));
        taken.Take(badge);
        yield return Ink.Rectangle(badge, Ink.Fine, new XAttribute("rx", "2.1"), Ink.Fill(Ink.White), Ink.Stroke(Ink.Accent), Ink.Weight(0.3));
        yield return Centred(cut.Number.ToString(CultureInfo.InvariantCulture), badge.CentreX, badge.CentreY, 2.8);
    }

    private static XElement Centred(string text, double x, double y, double size) => SlipSheet.Text(text, x, y + (size * 0.36), size, 100, ("text-anchor", "middle"));
}
