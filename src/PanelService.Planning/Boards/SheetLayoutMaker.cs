using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Boards;

/// <summary>Writes laid-out boards as the plan shows them: marks, numbered cuts, what is kept, what is wasted.</summary>
internal static class SheetLayoutMaker
{
    /// <summary>Writes.</summary>
    /// <param name="saw">How they are cut, and what is kept.</param>
    /// <param name="boards">The boards, in the order they are to be numbered in.</param>
    /// <param name="marks">Per piece number: its mark.</param>
    public static ImmutableArray<SheetLayout> Make(
        SawSettings saw, ImmutableArray<LaidOut<BoardStock>> boards, ImmutableArray<string> marks) =>
        [.. boards.Select((board, i) => Make(saw, board, marks, i + 1))];

    private static SheetLayout Make(SawSettings saw, LaidOut<BoardStock> board, ImmutableArray<string> marks, int number)
    {
        var pieces = board.Cuts.Pieces.Select(piece => Shapes.Placed(piece, marks)).ToImmutableArray();
        var offcuts = board.Cuts.Leftovers.Select(leftover => OffcutOf(leftover, saw)).ToImmutableArray();
        return new SheetLayout
        {
            Number = number,
            Copies = board.Copies,
            Board = board.Stock.Board,
            Source = board.Stock.Source,
            EdgeTrim = board.Stock.EdgeTrim,
            Kerf = saw.Kerf,
            Pieces = pieces,
            Offcuts = offcuts,
            Cuts = [.. board.Cuts.Cuts.Select((cut, i) => CutOf(cut, i + 1, board.Stock))],
            Waste = WasteOf(board, pieces, offcuts),
        };
    }

    /// <summary>What was trimmed off a factory edge is never kept.</summary>
    private static Offcut OffcutOf(Leftover leftover, SawSettings saw)
    {
        var offcut = Shapes.Offcut(leftover.At);
        return offcut with
        {
            Kept = !leftover.FromTrim && Shapes.Holds(offcut, saw.SmallestKeptWidth, saw.SmallestKeptHeight),
        };
    }

    private static SheetCut CutOf(CutLine cut, int number) => new(
        number,
        Length.FromSteps(cut.Workpiece.X),
        Length.FromSteps(cut.Workpiece.Y),
        Length.FromSteps(cut.Workpiece.Width),
        Length.FromSteps(cut.Workpiece.Height),
        cut.Axis,
        Length.FromSteps(cut.At),
        cut.IsTrim);

    private static SheetCut CutOf(CutLine cut, int number, BoardStock stock) => CutOf(cut, number) with
    {
        SupplierKerf = cut.IsFirst ? Length.FromSteps(stock.First!.Kerf) : null,
    };

    private static SheetWaste WasteOf(
        LaidOut<BoardStock> board, ImmutableArray<PlacedPanel> pieces, ImmutableArray<Offcut> offcuts) => SheetWaste.Of(
        (board.Stock.Board.Width, board.Stock.Board.Height),
        board.Stock.EdgeTrim,
        Shapes.Sum(pieces.Select(piece => piece.Width * piece.Height)),
        [.. offcuts.Where((_, i) => !board.Cuts.Leftovers[i].FromTrim)]);
}
