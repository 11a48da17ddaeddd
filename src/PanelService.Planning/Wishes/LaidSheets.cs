using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Wishes;

/// <summary>Reads sheets that were laid out for the saw back as what can be filled: the other way round than <see cref="SheetLayoutMaker"/>.</summary>
internal static class LaidSheets
{
    /// <summary>Reads.</summary>
    /// <param name="saw">How they are cut.</param>
    /// <param name="sheets">The sheets.</param>
    /// <param name="marks">Per piece number: its mark.</param>
    public static ImmutableArray<LaidOut<BoardStock>> Of(SawSettings saw, ImmutableArray<SheetLayout> sheets, ImmutableArray<string> marks)
    {
        var numbers = marks.Select((mark, number) => (mark, number)).ToDictionary(pair => pair.mark, pair => pair.number, StringComparer.Ordinal);
        return
        [
            .. sheets.Select(sheet => new LaidOut<BoardStock>(
                BoardStock.Of(saw, sheet.Board, sheet.Source),
                new SheetCuts(
                    [.. sheet.Cuts.Select(CutOf)],
                    [.. sheet.Pieces.Select(piece => new PlacedPiece(numbers[piece.Mark], new Rectangle(piece.X.Steps, piece.Y.Steps, piece.Width.Steps, piece.Height.Steps), piece.Turned))],
                    [.. sheet.Offcuts.Select(offcut => LeftoverOf(offcut, sheet))]),
                sheet.Copies)),
        ];
    }

    private static CutLine CutOf(SheetCut cut) => new(
        new Rectangle(cut.X.Steps, cut.Y.Steps, cut.Width.Steps, cut.Height.Steps), cut.Axis, cut.At.Steps, cut.IsTrim, cut.BySupplier);

    /// <summary>What lies outside the trimmed edges was trimmed off; what lies across one still has its factory edge.</summary>
    private static Leftover LeftoverOf(Offcut offcut, SheetLayout sheet)
    {
        var (near, right, top) = (sheet.EdgeTrim, sheet.Board.Width - sheet.EdgeTrim, sheet.Board.Height - sheet.EdgeTrim);
        var (endX, endY) = (offcut.X + offcut.Width, offcut.Y + offcut.Height);
        bool isOutside = endX <= near || endY <= near || offcut.X >= right || offcut.Y >= top;
        bool isInside = offcut.X >= near && offcut.Y >= near && endX <= right && endY <= top;
        return new Leftover(
            new Rectangle(offcut.X.Steps, offcut.Y.Steps, offcut.Width.Steps, offcut.Height.Steps), FromTrim: isOutside, Untrimmed: !isInside && !isOutside);
    }
}
