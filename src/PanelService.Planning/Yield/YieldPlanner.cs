using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Yield;

/// <summary>
/// Answers how many panels of one size come out of each board: the exact guillotine optimum of the trimmed sheet with
/// the kerf, turned where panel and grain allow it.
/// </summary>
public static class YieldPlanner
{
    /// <summary>Answers.</summary>
    /// <param name="question">The panel, the boards and the saw.</param>
    public static YieldAnswer Answer(YieldQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        ImmutableArray<BoardYield> boards = [.. question.Boards.Select((board, i) => Of(board, i + 1, question))];
        return new YieldAnswer(boards, boards.Where(yield => yield.Serves).Sum(yield => yield.FromHand));
    }

    private static BoardYield Of(BoardSupply board, int number, YieldQuestion question)
    {
        var stock = new BoardStock(board, board.ForSale == 0 ? Source.OnHand : Source.Bought, board.EdgeTrim ?? question.Saw.EdgeTrim);
        var nominal = new CutSize(question.Panel.Width, question.Panel.Height);
        var smallest = CutSizes.Smallest(question.Panel, question.Saw.Undersize);
        var (count, block) = Best(stock, nominal, question);
        var size = nominal;
        if (smallest != nominal && Best(stock, smallest, question) is var (more, smaller) && more > count)
        {
            (count, block) = (more, smaller);
            size = Grown(stock, smaller!, (smallest, nominal), question);
        }

        return new BoardYield
        {
            Board = board,
            Serves = BoardFit.TurningOn(question.Panel, board) != Turning.None,
            PerSheet = count,
            ByArea = (board.Width * board.Height).SquareMetres / question.Panel.Area.SquareMetres,
            CutWidth = size.Width,
            CutHeight = size.Height,
            Layout = block is null ? null : LayoutOf(stock, block, size, question) with { Number = number },
        };
    }

    private static (int Count, Block? Block) Best(BoardStock stock, CutSize size, YieldQuestion question)
    {
        if (stock.UsableWidth <= Length.Zero || stock.UsableHeight <= Length.Zero)
        {
            return (0, null);
        }

        var turning = stock.Board.Grain == Grain.Height || !question.Panel.MayTurn ? Turning.Upright : Turning.Either;
        var piece = new Piece(size.Width.Steps, size.Height.Steps, int.MaxValue, [turning]);
        var (value, block) = BestPattern.Unlimited(
            stock.UsableWidth.Steps, stock.UsableHeight.Steps, [piece], [1], question.Saw.Kerf.Steps);
        return ((int)value, block);
    }

    private static CutSize Grown(BoardStock stock, Block block, (CutSize Smallest, CutSize Nominal) sizes, YieldQuestion question)
    {
        var room = new Room(
            block, LineOf: [0], stock.UsableWidth.Steps, stock.UsableHeight.Steps, question.Saw.Kerf.Steps);
        return SizeGrower.Grow([sizes.Smallest], [sizes.Nominal], [room], SizeGrower.Tape(question.Units))[0];
    }

    private static SheetLayout LayoutOf(BoardStock stock, Block block, CutSize size, YieldQuestion question)
    {
        var cuts = SheetCutter.Cut(block, stock.ToFrame(question.Saw.Kerf), [(size.Width.Steps, size.Height.Steps)]);
        return SheetLayoutMaker.Make(question.Saw, [new LaidOut<BoardStock>(stock, cuts, Copies: 1)], [question.Panel.Mark])[0];
    }
}
