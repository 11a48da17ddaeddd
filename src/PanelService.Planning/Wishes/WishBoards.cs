// Problem: wishes put into what a plan happens to leave may be worth less than the same boards could hold.
// Idea:    panels and wishes are planned together, out of the same boards, for the most worth (WishChoice).
// Source:  see WishChoice.
// Cost:    see WishChoice.
// Not:     for larger orders: those keep what the leftovers hold.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Cutting.Leftovers;
using PanelService.Planning.Boards;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Wishes;

/// <summary>The wishes of an order.</summary>
/// <param name="Order">The order.</param>
/// <param name="Lines">Per wish: the line it would be.</param>
/// <param name="Most">Per wish: how many at most.</param>
internal sealed record WishTask(Order Order, ImmutableArray<PanelLine> Lines, ImmutableArray<int> Most);

/// <summary>Lays boards out anew, together with wishes.</summary>
internal static class WishBoards
{
    /// <summary>The same boards with wishes of more worth.</summary>
    /// <param name="worth">What the wishes known are worth.</param>
    /// <param name="task">The wishes.</param>
    /// <param name="plan">The boards as planned.</param>
    /// <param name="sizes">Per line: the size it is cut to.</param>
    /// <param name="cancellation">Ends it with nothing.</param>
    /// <returns>The sheets, and per wish how many are on them; null: none was found.</returns>
    public static (ImmutableArray<LaidOut<BoardStock>> Sheets, ImmutableArray<int> Counts)? Above(
        long worth, WishTask task, BoardPlan plan, ImmutableArray<CutSize> sizes, CancellationToken cancellation)
    {
        int[] wanted = [.. Enumerable.Range(0, task.Lines.Length).Where(w => task.Most[w] > 0).OrderByDescending(w => task.Order.Wishes[w].Worth.Minor)];
        if (plan.Cut is not { } cut || wanted.Length == 0)
        {
            return null;
        }

        var problem = BoardPlanner.ProblemAt(cut, sizes);
        ImmutableArray<WishedPiece> wishes = [.. wanted.Select(w => new WishedPiece(PieceOf(task, w, cut, problem.Stocks.Length), task.Order.Wishes[w].Worth.Minor))];
        var result = cut.Result with { Patterns = WishChoice.Of(problem, cut.Result, wishes, worth, cancellation) };
        var both = problem with { Pieces = [.. problem.Pieces, .. wishes.Select(wish => wish.Piece)] };
        if (result.Patterns.IsEmpty || !LimitedBoards.CanCut(result, cut.Stocks, both))
        {
            return null;
        }

        int first = task.Order.Panels.Length;
        var laid = plan with
        {
            Patterns = BoardPlanner.PatternsOf(result, cut.Stocks),
            LineOf = [.. cut.Task.LineOf, .. wanted.Select(w => first + w)],
        };
        var sheets = Layouts.Of(laid, [.. sizes, .. task.Lines.Select(line => new CutSize(line.Width, line.Height))], task.Order.Saw.Kerf);
        var made = sheets.SelectMany(sheet => sheet.Cuts.Pieces.Select(piece => (piece.Piece, sheet.Copies))).ToLookup(one => one.Piece, one => one.Copies);
        return (sheets, [.. task.Lines.Select((_, w) => made[first + w].Sum())]);
    }

    private static Piece PieceOf(WishTask task, int wish, BoardCut cut, int stocks)
    {
        var line = task.Lines[wish];
        return new Piece(
            line.Width.Steps,
            line.Height.Steps,
            task.Most[wish],
            [.. Enumerable.Range(0, stocks).Select(s => s < cut.Stocks.Length && cut.Stocks[s].LetsOut(line.Width, line.Height)
                ? BoardFit.TurningOn(line, cut.Stocks[s].Board)
                : Turning.None)]);
    }
}
