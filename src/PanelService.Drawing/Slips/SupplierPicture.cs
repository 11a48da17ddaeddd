using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>A sheet with the supplier's cuts in the accent, their numbers, and the size of every part. y runs down, as on the large drawing.</summary>
internal static class SupplierPicture
{
    public static XElement Draw(SheetLayout sheet, (LengthUnit Unit, SlipWords Words) written, Box room)
    {
        double width = Millimetres.Of(sheet.Board.Width), height = Millimetres.Of(sheet.Board.Height);
        double scale = Math.Min(room.Width / width, room.Height / height);
        Box Placed(Box box) => new(room.X + (box.X * scale), room.Y + (box.Y * scale), box.Width * scale, box.Height * scale);

        return Ink.Group(
            "sheet-picture",
            Ink.Rectangle(Placed(new Box(0, 0, width, height)), Ink.Fine, Ink.Fill(Ink.White), Ink.Stroke(Ink.Black), Ink.Weight(0.4)),
            SupplierParts.Of(sheet).SelectMany(part =>
                SizeOf(Placed(Millimetres.Of(part.X, part.Y, part.Width, part.Height)), written.Words.Size((part.Width, part.Height), written.Unit))),
            sheet.Cuts.Where(cut => cut.BySupplier).SelectMany(cut => CutOf(cut, Placed)));
    }

    private static IEnumerable<XElement> SizeOf(Box at, string size)
    {
        double letters = Math.Min(3.2, at.Width * 0.92 / Lettering.Width(size));
        if (letters >= 1.4 && letters * 1.3 < at.Height)
        {
            yield return Centred(size, at.CentreX, at.CentreY, letters);
        }
    }

    private static IEnumerable<XElement> CutOf(SheetCut cut, Func<Box, Box> placed)
    {
        double at = Millimetres.Of(cut.At) + (Millimetres.Of(cut.SupplierKerf!.Value) / 2);
        double x = Millimetres.Of(cut.X), y = Millimetres.Of(cut.Y), width = Millimetres.Of(cut.Width), height = Millimetres.Of(cut.Height);
        bool across = cut.Axis == Cutting.Axis.X;
        Box from = placed(across ? new Box(at, y, 0, 0) : new Box(x, at, 0, 0));
        Box to = placed(across ? new Box(at, y + height, 0, 0) : new Box(x + width, at, 0, 0));
        yield return Ink.Path(
            Ink.Line(from.X, from.Y, to.X, to.Y), new XAttribute("class", "cut"), new XAttribute("data-cut", cut.Number), Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(0.8));
        var badge = Box.Centred(from.X + ((to.X - from.X) * 0.2), from.Y + ((to.Y - from.Y) * 0.2), 4.2, 4.2);
        yield return Ink.Rectangle(badge, Ink.Fine, new XAttribute("rx", "2.1"), Ink.Fill(Ink.White), Ink.Stroke(Ink.Accent), Ink.Weight(0.3));
        yield return Centred(cut.Number.ToString(CultureInfo.InvariantCulture), badge.CentreX, badge.CentreY, 2.8);
    }

    private static XElement Centred(string text, double x, double y, double size) => SlipSheet.Text(text, x, y + (size * 0.36), size, 100, ("text-anchor", "middle"));
}
