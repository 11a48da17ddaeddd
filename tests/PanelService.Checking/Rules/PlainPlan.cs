using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// A plain plan of our own, to hold a bound against: pieces by falling area, each in the first free rectangle that
/// takes it, else on a new sheet of the cheapest kind by area. Every placement is a pair of guillotine cuts. It is
/// rarely cheap, but it can be made; a bound above it is wrong.
/// </summary>
internal static class PlainPlan
{
    private const int Most = 1500;

    /// <summary>What the boards of a plain plan cost; null where none was found, or the batch is too large to try.</summary>
    public static long? Cost(OrderFacts order, PlanFacts plan)
    {
        var wanted = plan.Panels
            .Select(panel => (Line: order.Line(panel.Mark), panel.Made))
            .Where(one => one.Line is { NeedsBoard: true, IsWish: false })
            .SelectMany(one => Enumerable.Repeat(one.Line!, (int)Math.Min(one.Made, Most + 1)))
            .ToArray();
        bool fenceMatters = order.Handling.FenceReach is { } reach && order.Boards.Values.Any(board => Math.Max(board.Width, board.Height) > reach);
        return wanted.Length > Most || fenceMatters ? null : Place(order, [.. wanted.OrderByDescending(line => line.Area)]);
    }

    private static long? Place(OrderFacts order, IReadOnlyList<LineFacts> lines)
    {
        var supplies = order.Boards.Values
            .SelectMany(board => (Supply[])[OnHand(order, board), Bought(order, board)])
            .OrderBy(supply => supply.Price / (decimal)((Int128)supply.Board.Width * supply.Board.Height))
            .ToArray();
        var free = new List<(Supply Supply, Box Box)>();
        foreach (var line in lines)
        {
            if (!TryFree(order, line, free) && !TryNew(order, line, supplies, free))
            {
                return null;
            }
        }

        return supplies.Sum(supply => supply.Used * supply.Price);
    }

    private static bool TryFree(OrderFacts order, LineFacts line, List<(Supply Supply, Box Box)> free)
    {
        for (int i = 0; i < free.Count; i++)
        {
            var (supply, box) = free[i];
            if (Lie(order, line, supply, box) is { } lies)
            {
                free.RemoveAt(i);
                free.AddRange(Split(box, lies, supply.Kerf).Select(rest => (supply, rest)));
                return true;
            }
        }

        return false;
    }

    private static bool TryNew(OrderFacts order, LineFacts line, Supply[] supplies, List<(Supply Supply, Box Box)> free)
    {
        foreach (var supply in supplies.Where(supply => supply.Used < supply.Limit))
        {
            long trim = supply.Board.EdgeTrim;
            var good = new Box(trim, trim, supply.Board.Width - (2 * trim), supply.Board.Height - (2 * trim));
            if (Lie(order, line, supply, good) is { } lies)
            {
                supply.Used++;
                free.AddRange(Split(good, lies, supply.Kerf).Select(rest => (supply, rest)));
                return true;
            }
        }

        return false;
    }

    // What nobody can handle stays where it is.
    private static Supply OnHand(OrderFacts order, BoardFacts board) => new(
        board, board.Value, HandlingRule.Fault(order.Handling, board, onHand: true, Whole(board)) is null ? board.OnHand : 0, order.Kerf, first: false);

    // Everything with the wider of the two kerfs can be cut by supplier and saw, whoever makes which cut.
    private static Supply Bought(OrderFacts order, BoardFacts board)
    {
        bool first = HandlingRule.Fault(order.Handling, board, onHand: false, Whole(board)) is not null;
        long limit = board.Price is null ? 0 : board.ForSale ?? long.MaxValue;
        return new(board, board.Price ?? 0, limit, first ? Math.Max(order.Kerf, order.Handling.SupplierKerf) : order.Kerf, first);
    }

    private static Box Whole(BoardFacts board) => new(0, 0, board.Width, board.Height);

    private static (long Width, long Height)? Lie(OrderFacts order, LineFacts line, Supply supply, Box box)
    {
        var board = supply.Board;
        if (!board.Serves(line)
            || (supply.First && HandlingRule.Fault(order.Handling, board, onHand: false, new Box(0, 0, line.Width, line.Height)) is not null))
        {
            return null;
        }

        if (line.Width <= box.Width && line.Height <= box.Height)
        {
            return (line.Width, line.Height);
        }

        bool turns = line.MayTurn && !board.HasGrain && line.Height <= box.Width && line.Width <= box.Height;
        return turns ? (line.Height, line.Width) : null;
    }

    // The piece in the corner; the longer cut goes across the side with more left over.
    private static IEnumerable<Box> Split(Box box, (long Width, long Height) piece, long kerf)
    {
        long right = box.Width - piece.Width - kerf, above = box.Height - piece.Height - kerf;
        bool tall = right > above;
        if (right > 0)
        {
            yield return new Box(box.Right - right, box.Y, right, tall ? box.Height : piece.Height);
        }

        if (above > 0)
        {
            yield return new Box(box.X, box.Top - above, tall ? piece.Width : box.Width, above);
        }
    }

    private sealed class Supply(BoardFacts board, long price, long limit, long kerf, bool first)
    {
        public long Kerf { get; } = kerf;

        /// <summary>Whether its first cuts are made where it is bought.</summary>
        public bool First { get; } = first;

        public BoardFacts Board { get; } = board;

        public long Price { get; } = price;

        public long Limit { get; } = limit;

        public long Used { get; set; }
    }
}
