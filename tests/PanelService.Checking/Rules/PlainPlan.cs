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
        return wanted.Length > Most ? null : Place(order, [.. wanted.OrderByDescending(line => line.Area)]);
    }

    private static long? Place(OrderFacts order, IReadOnlyList<LineFacts> lines)
    {
        var supplies = order.Boards.Values
            .SelectMany(board => (Supply[])[new Supply(board, board.Value, board.OnHand), new Supply(board, board.Price ?? 0, board.Price is null ? 0 : board.ForSale ?? long.MaxValue)])
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
            if (Lie(line, supply.Board, box) is { } lies)
            {
                free.RemoveAt(i);
                free.AddRange(Split(box, lies, order.Kerf).Select(rest => (supply, rest)));
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
            if (Lie(line, supply.Board, good) is { } lies)
            {
                supply.Used++;
                free.AddRange(Split(good, lies, order.Kerf).Select(rest => (supply, rest)));
                return true;
            }
        }

        return false;
    }

    private static (long Width, long Height)? Lie(LineFacts line, BoardFacts board, Box box)
    {
        if (!board.Serves(line))
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

    private sealed class Supply(BoardFacts board, long price, long limit)
    {
        public BoardFacts Board { get; } = board;

        public long Price { get; } = price;

        public long Limit { get; } = limit;

        public long Used { get; set; }
    }
}
