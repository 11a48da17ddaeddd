// Problem: the plan of least cost may have sisters of the same cost that are better to cut.
// Idea:    the boards in other patterns of the same stocks that take fewer sizes (FewSizesPlanner), both plans laid out and run
//          through to the end; the other is taken where its run has fewer settings, and nothing else is worse for it: as
//          much kept of every board, the same cut sizes, the same wishes.
// Cost:    the saw run twice where there is another plan.
// Not:     the fewest settings over all plans of least cost.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;
using PanelService.Planning.Wishes;

namespace PanelService.Planning.SawRun;

/// <summary>A batch with its spare places filled, and the saw run of its boards.</summary>
/// <param name="Filled">Boards, cloth and liquids.</param>
/// <param name="Saw">The run.</param>
internal sealed record JointChoice(FilledBatch Filled, SawPlan Saw)
{
    /// <summary>Runs the boards as planned, and as they could be for the same money; keeps the better.</summary>
    /// <param name="order">The order.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="sizes">Its cut sizes.</param>
    /// <param name="cancellation">Ends the search with what was found.</param>
    public static JointChoice Make(Order order, Batch batch, ImmutableArray<CutSize> sizes, CancellationToken cancellation)
    {
        var first = Run(order, batch, sizes, cancellation);
        if (order.Effort == Effort.Quick || first.Saw.Proof.Settings < 2 || cancellation.IsCancellationRequested)
        {
            return first;
        }

        var boards = BoardPlanner.AtFewSizes(batch.Boards, cancellation);
        var other = batch with { Boards = boards };
        if (ReferenceEquals(boards, batch.Boards) || !Grown(order, other).SequenceEqual(sizes))
        {
            return first;
        }

        var second = Run(order, other, sizes, cancellation);
        return second.Saw.Proof.Settings < first.Saw.Proof.Settings && IsNoWorse(second, first) ? second : first;
    }

    /// <summary>The cut sizes of a batch: as large as its boards and cloths let them be.</summary>
    /// <param name="order">The order.</param>
    /// <param name="batch">The batch.</param>
    public static ImmutableArray<CutSize> Grown(Order order, Batch batch) => SizeGrower.Grow(
        CutSizes.Smallest(order),
        CutSizes.Nominal(order),
        batch.Boards.Rooms(order.Saw.Kerf).Concat(batch.Cloth.Rooms(order.Bench)),
        SizeGrower.Tape(order.Units));

    private static JointChoice Run(Order order, Batch batch, ImmutableArray<CutSize> sizes, CancellationToken cancellation)
    {
        var filled = WishPlanner.Fill(order, new FilledBatch(
            Layouts.Of(batch.Boards, sizes, order.Saw.Kerf),
            Layouts.Of(batch.Cloth, sizes, order.Bench),
            batch.Liquids.Uses,
            Counts: []));
        var sheets = SheetLayoutMaker.Make(order.Saw, filled.Boards, PanelResults.Marks(order));
        return new JointChoice(filled, SawRunPlanner.Plan(order.Saw, sheets, cancellation));
    }

    private static bool IsNoWorse(JointChoice one, JointChoice other) =>
        one.Filled.Counts.SequenceEqual(other.Filled.Counts)
        && Kept(other.Saw.Sheets).All(kept => Kept(one.Saw.Sheets).GetValueOrDefault(kept.Key) >= kept.Value);

    private static Dictionary<string, Area> Kept(ImmutableArray<SheetLayout> sheets) => sheets
        .GroupBy(sheet => sheet.Board.Id, StringComparer.Ordinal)
        .ToDictionary(
            board => board.Key,
            board => board.SelectMany(sheet => sheet.Offcuts.Where(offcut => offcut.Kept).SelectMany(offcut => Enumerable.Repeat(offcut.Area, sheet.Copies)))
                .Aggregate(Area.Zero, (sum, area) => sum + area),
            StringComparer.Ordinal);
}
