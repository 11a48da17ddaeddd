// Problem: the most rectangles of one size that cuts from edge to edge can part a sheet into, with a kerf.
// Idea:    the exact guillotine programme with every piece worth 1; with undersize, once at the nominal size and once
//          at the smallest, the nominal kept where the smallest brings no more; else the size grown back as far as it may.
// Source:  Gilmore and Gomory 1966; Herz 1972 (see BestPattern).
// Cost:    cubic in the points of an axis; a board with more points than MostPoints is not answered, nor are more boards than
//          MostBoards such would be.
// Not:     sizes between nominal and smallest: the count can only be that of one of the two or lie between them.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Yields;

/// <summary>Answers how many panels of one size come out of a sheet.</summary>
public static class YieldPlanner
{
    // About a second on one core.
    private const long MostPoints = 2000;
    private const int MostBoards = 5;

    /// <summary>Answers for every board of the question.</summary>
    /// <param name="question">Panel, boards and saw; sizes above zero, trims smaller than the sheets.</param>
    /// <param name="cancellation">Ends it between two boards, with an exception.</param>
    /// <returns>Counts, areas and layouts. Never throws for a right question.</returns>
    public static Yield Answer(YieldQuestion question, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        Order order = OrderOf(question);
        var boards = ImmutableArray.CreateBuilder<BoardYield>();
        var sheets = ImmutableArray.CreateBuilder<SheetLayout>();
        var tooFine = ImmutableArray.CreateBuilder<BoardSupply>();
        Int128 work = 0;
        foreach (BoardSupply board in question.Boards)
        {
            cancellation.ThrowIfCancellationRequested();
            Int128 points = PointsOf(order, board);
            if (points > MostPoints)
            {
                tooFine.Add(board);
                continue;
            }

            work += points * points * points;
            if (work > MostBoards * (Int128)MostPoints * MostPoints * MostPoints)
            {
                return new Yield(boards.ToImmutable(), YieldPlan.Of(order, sheets.ToImmutable()), tooFine.ToImmutable()) { IsCutShort = true };
            }

            BoardYield yield = OfBoard(order, board, sheets.Count + 1);
            boards.Add(yield);
            if (yield.Sheet is not null)
            {
                sheets.Add(yield.Sheet);
            }
        }

        return new Yield(boards.ToImmutable(), YieldPlan.Of(order, sheets.ToImmutable()), tooFine.ToImmutable());
    }

    private static Order OrderOf(YieldQuestion question) => new()
    {
        Title = "Yield",
        Units = question.Units,
        Currency = new Currency("XXX", 0),
        Panels = [question.Panel],
        Boards = question.Boards,
        Saw = question.Saw,
    };

    private static BoardYield OfBoard(Order order, BoardSupply board, int number)
    {
        PanelLine panel = order.Panels[0];
        CutSize nominal = CutSizes.Nominal(order)[0];
        CutSize smallest = CutSizes.Smallest(order)[0];
        var stock = new BoardStock(board, board.ForSale == 0 ? Source.OnHand : Source.Bought, board.EdgeTrim ?? order.Saw.EdgeTrim);
        (long count, Block? block) = Most(order, stock, nominal);
        (long more, Block? denser) = smallest == nominal ? (count, block) : Most(order, stock, smallest);
        (count, block, CutSize size) = more > count ? (more, denser, Grown(order, stock, denser!)) : (count, block, nominal);
        SheetLayout? sheet = block is null ? null : Layout(order, stock, block, size) with { Number = number };
        decimal byArea = (decimal)(board.Width * board.Height).SquareSteps / (decimal)panel.Area.SquareSteps;
        return new BoardYield(board, (int)count, byArea, size.Width, size.Height, sheet);
    }

    private static CutSize Grown(Order order, BoardStock stock, Block block)
    {
        var room = new Room(block, LineOf: [0], stock.UsableWidth.Steps, stock.UsableHeight.Steps, order.Saw.Kerf.Steps);
        return SizeGrower.Grow(CutSizes.Smallest(order), CutSizes.Nominal(order), [room], SizeGrower.Tape(order.Units))[0];
    }

    private static (long Count, Block? Block) Most(Order order, BoardStock stock, CutSize size)
    {
        Turning turning = TurningOn(order.Panels[0], stock.Board);
        var piece = new Piece(size.Width.Steps, size.Height.Steps, int.MaxValue, [turning]);
        return turning == Turning.None
            ? (0, null)
            : BestPattern.Unlimited(stock.UsableWidth.Steps, stock.UsableHeight.Steps, [piece], [1], order.Saw.Kerf.Steps);
    }

    // As for a plan, but the thickness rule stays out of it: the question is about room.
    private static Turning TurningOn(PanelLine panel, BoardSupply board) =>
        panel.Thickness is null && BoardFit.IsOfKind(panel, board)
            ? board.Grain == Grain.Height || !panel.MayTurn ? Turning.Upright : Turning.Either
            : BoardFit.TurningOn(panel, board);

    private static SheetLayout Layout(Order order, BoardStock stock, Block block, CutSize size)
    {
        SheetCuts cuts = SheetCutter.Cut(block, stock.ToFrame(order.Saw.Kerf), [(size.Width.Steps, size.Height.Steps)]);
        return SheetLayoutMaker.Make(order.Saw, [new LaidOut<BoardStock>(stock, cuts, 1)], [order.Panels[0].Mark])[0];
    }

    // How many sums of the two sides fit along the sheet's longer side, at most.
    private static Int128 PointsOf(Order order, BoardSupply board)
    {
        CutSize size = CutSizes.Smallest(order)[0];
        long kerf = order.Saw.Kerf.Steps;
        long longest = Length.Max(board.Width, board.Height).Steps + kerf;
        long wide = longest / (size.Width.Steps + kerf);
        long high = longest / (size.Height.Steps + kerf);
        bool oneWay = size.Width == size.Height || !order.Panels[0].MayTurn || board.Grain == Grain.Height;
        return oneWay ? Math.Max(wide, high) : (Int128)(wide + 1) * (high + 1) / 2;
    }
}
