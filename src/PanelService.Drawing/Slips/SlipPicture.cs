using System.Xml.Linq;
using PanelService.Cutting;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>A sheet the size of a stamp: its pieces in thin lines, this setting's cuts in the accent. y runs down, as on the large drawing.</summary>
internal static class SlipPicture
{
    public static XElement Draw(SheetLayout sheet, IReadOnlyCollection<int> cuts, Box room)
    {
        double width = Millimetres.Of(sheet.Board.Width), height = Millimetres.Of(sheet.Board.Height);
        double scale = Math.Min(room.Width / width, room.Height / height);
        Box Placed(double x, double y, double w, double h) =>
            new(room.X + (x * scale), room.Y + (y * scale), w * scale, h * scale);

        return Ink.Group(
            "sheet-picture",
            new XAttribute("data-sheet", sheet.Number),
            Ink.Rectangle(Placed(0, 0, width, height), Ink.Fine, Ink.Fill(Ink.White), Ink.Stroke(Ink.Black), Ink.Weight(0.3)),
            sheet.Pieces.Select(piece => Millimetres.Of(piece)).Select(box => Ink.Rectangle(
                Placed(box.X, box.Y, box.Width, box.Height), Ink.Fine, Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.1))),
            sheet.Cuts.Where(cut => cuts.Contains(cut.Number)).Select(cut =>
            {
                var line = LineOf(cut, Millimetres.Of(cut.SupplierKerf ?? sheet.Kerf) / 2);
                Box from = Placed(line.X1, line.Y1, 0, 0), to = Placed(line.X2, line.Y2, 0, 0);
                return Ink.Path(
                    Ink.Line(from.X, from.Y, to.X, to.Y), new XAttribute("class", "cut"), new XAttribute("data-cut", cut.Number), Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(0.7));
            }));
    }

    private static (double X1, double Y1, double X2, double Y2) LineOf(SheetCut cut, double half)
    {
        double at = Millimetres.Of(cut.At) + half;
        double x = Millimetres.Of(cut.X), y = Millimetres.Of(cut.Y);
        return cut.Axis == Axis.X ? (at, y, at, y + Millimetres.Of(cut.Height)) : (x, at, x + Millimetres.Of(cut.Width), at);
    }
}
