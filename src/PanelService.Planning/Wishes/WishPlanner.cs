using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Wishes;

/// <summary>The batch laid out, wishes included.</summary>
/// <param name="Boards">The sheets.</param>
/// <param name="Cloth">The cloths.</param>
/// <param name="Liquids">The liquids.</param>
/// <param name="Counts">Per wish: how many are made.</param>
internal sealed record FilledBatch(
    ImmutableArray<LaidOut<BoardStock>> Boards,
    ImmutableArray<LaidOut<ClothStock>> Cloth,
    ImmutableArray<LiquidUse> Liquids,
    ImmutableArray<int> Counts);

/// <summary>
/// Fills what a finished plan leaves over with wishes, at no extra price: board from spare board, cloth from spare
/// cloth, liquids from what is left. Where the cloth holds fewer than the boards, the boards are filled again with fewer.
/// </summary>
internal static class WishPlanner
{
    /// <summary>Fills.</summary>
    /// <param name="order">The order.</param>
    /// <param name="batch">The batch without wishes (no counts).</param>
    /// <param name="stop">Of the search: what is filled by then stands. Of everything: ends it with an exception.</param>
    public static FilledBatch Fill(Order order, FilledBatch batch, PlanStop stop)
    {
        return order.Wishes.IsEmpty
            ? batch
            : Fill(order, batch, (lines, most) => SpareFiller<BoardStock>.Fill(batch.Boards, BoardTask(order, lines), most, stop), stop)!;
    }

    /// <summary>Fills the same boards with wishes of more worth, where panels and wishes planned together come to that.</summary>
    /// <param name="order">The order.</param>
    /// <param name="batch">The batch without wishes.</param>
    /// <param name="filled">The batch with wishes in what it leaves over.</param>
    /// <param name="plan">The plan of its boards, and per line the size it is cut to.</param>
    /// <param name="stop">As in <see cref="Fill(Order, FilledBatch, PlanStop)"/>.</param>
    /// <returns>The batch with more worth; <paramref name="filled"/> where none was found.</returns>
    public static FilledBatch FillBetter(
        Order order, FilledBatch batch, FilledBatch filled, (BoardPlan Boards, ImmutableArray<CutSize> Sizes) plan, PlanStop stop)
    {
        if (filled.Counts.Zip(order.Wishes).All(pair => pair.First == pair.Second.AtMost))
        {
            return filled;
        }

        long known = WorthOf(order, filled.Counts, line => line.NeedsBoard);
        var other = Fill(order, batch, (lines, most) => WishBoards.Above(known, new WishTask(order, lines, most), plan.Boards, plan.Sizes, stop.Search), stop);
        return other is not null && WorthOf(order, other.Counts, _ => true) > WorthOf(order, filled.Counts, _ => true) ? other : filled;
    }

    private static long WorthOf(Order order, ImmutableArray<int> counts, Func<PanelLine, bool> counted) =>
        order.Wishes.Zip(counts).Where(pair => counted(pair.First.AsLine(1))).Sum(pair => pair.First.Worth.Minor * pair.Second);

    private static FilledBatch? Fill(
        Order order,
        FilledBatch batch,
        Func<ImmutableArray<PanelLine>, ImmutableArray<int>, (ImmutableArray<LaidOut<BoardStock>> Sheets, ImmutableArray<int> Counts)?> fillBoards,
        PlanStop stop)
    {
        var lines = order.Wishes.Select(wish => wish.AsLine(1)).ToImmutableArray();
        var most = FreeLiquids.AtMost(order, batch.Liquids);
        while (true)
        {
            if (fillBoards(lines, OnlyWhere(most, lines, line => line.NeedsBoard)) is not { } boards)
            {
                return null;
            }

            var wanted = most.Select((count, i) => lines[i].NeedsBoard ? boards.Counts[i] : count).ToImmutableArray();
            var cloth = SpareFiller<ClothStock>.Fill(batch.Cloth, ClothTask(order, lines), OnlyWhere(wanted, lines, line => line.NeedsCloth), stop);
            var made = wanted.Select((count, i) => lines[i].NeedsCloth ? cloth.Counts[i] : count).ToImmutableArray();
            if (made.SequenceEqual(wanted) || !lines.Any(line => line.NeedsBoard && line.NeedsCloth))
            {
                return new FilledBatch(boards.Sheets, cloth.Sheets, FreeLiquids.Take(order, batch.Liquids, made), made);
            }

            most = made;
        }
    }

    /// <summary>Fills what sheets laid out for the saw leave: joined, their leftovers may hold more than those of the first layout did.</summary>
    /// <param name="order">The order.</param>
    /// <param name="filled">The batch with its wishes.</param>
    /// <param name="sheets">Its sheets as the saw cuts them.</param>
    /// <param name="stop">As in <see cref="Fill(Order, FilledBatch, PlanStop)"/>.</param>
    /// <returns>The batch with more wishes; null: no leftover holds one that is still asked for.</returns>
    public static FilledBatch? FillAgain(Order order, FilledBatch filled, ImmutableArray<SheetLayout> sheets, PlanStop stop)
    {
        if (filled.Counts.IsEmpty || filled.Counts.Zip(order.Wishes).All(pair => pair.First == pair.Second.AtMost))
        {
            return null;
        }

        var left = order with { Wishes = [.. order.Wishes.Zip(filled.Counts, (wish, made) => wish with { AtMost = wish.AtMost - made })] };
        var more = Fill(left, filled with { Boards = LaidSheets.Of(order.Saw, sheets, PanelResults.Marks(order)) }, stop);
        return more.Counts.All(count => count == 0)
            ? null
            : more with { Counts = [.. filled.Counts.Zip(more.Counts, (made, count) => made + count)] };
    }

    private static ImmutableArray<int> OnlyWhere(
        ImmutableArray<int> counts, ImmutableArray<PanelLine> lines, Func<PanelLine, bool> needed) =>
        [.. counts.Select((count, i) => needed(lines[i]) ? count : 0)];

    private static SpareTask<BoardStock> BoardTask(Order order, ImmutableArray<PanelLine> lines) => new(
        [.. lines.Select(line => (line.Width.Steps, line.Height.Steps))],
        Worths(order),
        order.Panels.Length,
        order.Saw.Kerf.Steps,
        (wish, stock) => BoardFit.TurningOn(lines[wish], stock.Board))
    {
        Fence = HandlingLimits.Fence(order.Saw),
        SmallestKept = (order.Saw.SmallestKeptWidth.Steps, order.Saw.SmallestKeptHeight.Steps),
    };

    private static SpareTask<ClothStock> ClothTask(Order order, ImmutableArray<PanelLine> lines) => new(
        [.. lines.Select(line => ClothFit.WithMargins(new CutSize(line.Width, line.Height), order.Bench)).Select(size => (size.Width.Steps, size.Height.Steps))],
        Worths(order),
        order.Panels.Length,
        Kerf: 0,
        (wish, stock) => ClothFit.TurningOn(lines[wish], stock.Cloth));

    private static ImmutableArray<long> Worths(Order order) => [.. order.Wishes.Select(wish => wish.Worth.Minor)];
}
