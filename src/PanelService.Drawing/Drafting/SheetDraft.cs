using System.Collections.Immutable;
using System.Globalization;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Drafting;

/// <summary>What a drawing of a sheet shows.</summary>
internal static class SheetDraft
{
    public static Draft Of(Plan plan, SheetLayout sheet)
    {
        LengthUnit unit = plan.Order.Units;
        ImmutableArray<DraftKey> keys = Keys.Of(plan, sheet.Pieces, unit);
        string name = string.Create(CultureInfo.InvariantCulture, $"Sheet {sheet.Number} of {plan.Sheets.Length}");
        string material = Material(sheet, unit);
        string copies = Wording.Copies(sheet.Copies);
        return new Draft
        {
            Sort = "sheet",
            Batch = Lettering.Clean(plan.Order.Title),
            Name = name,
            Copies = copies,
            Material = material,
            Description = Wording.Describe($"{material}. {copies}.", keys, sheet.Offcuts, unit),
            Unit = unit,
            Width = sheet.Board.Width,
            Height = sheet.Board.Height,
            Pieces = [.. sheet.Pieces.Select(piece => new DraftPiece(piece.Mark, Millimetres.Of(piece), piece.Width, piece.Height, piece.Turned))],
            Offcuts = [.. sheet.Offcuts.Select(Millimetres.Of)],
            Cuts = [.. sheet.Cuts.Select(cut => Cut(sheet, cut, unit))],
            Keys = keys,
            Along = sheet.Board.Grain == Grain.Height ? "grain" : null,
        };
    }

    private static DraftCut Cut(SheetLayout sheet, SheetCut cut, LengthUnit unit)
    {
        Box workpiece = Millimetres.Of(cut.X, cut.Y, cut.Width, cut.Height);
        double at = Millimetres.Of(cut.At);
        double kerf = Millimetres.Of(cut.SupplierKerf ?? sheet.Kerf);
        bool alongY = cut.Axis == Axis.X;
        Box path = alongY ? workpiece with { X = at, Width = kerf } : workpiece with { Y = at, Height = kerf };
        Length from = cut.At - (alongY ? cut.X : cut.Y);
        string edge = alongY ? "left" : "upper";
        string note = string.Create(
            CultureInfo.InvariantCulture,
            $"Cut {cut.Number}: {LengthText.FormatFigure(from, unit)} {LengthText.Abbreviation(unit)} from the {edge} edge of its workpiece{(cut.BySupplier ? ", where you buy it" : "")}");

        // A path may hang over the workpiece's edge: what hangs over is dust, and is not drawn.
        return new DraftCut(cut.Number, path.Clip(workpiece), alongY, note, cut.BySupplier);
    }

    private static string Material(SheetLayout sheet, LengthUnit unit)
    {
        BoardSupply board = sheet.Board;
        string from = sheet.Source == Source.Bought ? "bought" : "from the rack";
        string size = Wording.Size(board.Width, board.Height, unit);
        return $"{Lettering.Clean(board.Name ?? board.Id)}, {LengthText.FormatFigure(board.Thickness, unit)} thick, {size} {LengthText.Abbreviation(unit)}, {from}";
    }
}
