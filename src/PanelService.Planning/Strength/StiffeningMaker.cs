// Problem: panels sag too much; are strips on their backs the cheaper way, or a thicker board?
// Idea:    plan both, at quick effort, for all such lines together: the strips of their cradles on top of the batch's own, and
//          the boards anew with those lines on the board that is thick enough and costs least by area.
// Cost:    one quick run of the engine for the boards and one for the strips, only where something sags too much.
// Not:     part of the plan or its proof: a remark. Shops' charges and the work of gluing cradles on are left out.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Strips;

namespace PanelService.Planning.Strength;

/// <summary>Weighs strips against thicker boards.</summary>
internal static class StiffeningMaker
{
    /// <summary>Weighs; null where nothing sags too much.</summary>
    /// <param name="order">The order.</param>
    /// <param name="batch">What was planned for it.</param>
    /// <param name="strength">What its panels bear.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static Stiffening? Of(Order order, Batch batch, ImmutableArray<PanelStrength> strength, CancellationToken cancellation)
    {
        var weak = strength.Where(one => one.SagUnderHand > one.Allowed && !one.Cradled).ToLookup(one => one.Mark);
        ImmutableArray<string> marks = [.. order.Panels.Select(line => line.Mark).Where(weak.Contains)];
        if (marks.IsEmpty || cancellation.IsCancellationRequested)
        {
            return null;
        }

        // The panels are cut already: their cradles fit what they measure, not what they are called.
        Cradle? CradleOf(PanelLine line) => weak[line.Mark].Select(one => one.Cradle).OfType<Cradle>().MaxBy(cradle => cradle.Bars);
        var quick = order with { Effort = Effort.Quick };
        return new Stiffening(marks, Strips(quick, batch, (marks, CradleOf), cancellation), Thicker(quick, batch, marks, cancellation))
        {
            Pieces = [.. order.Panels.Zip(batch.Made).Where(pair => marks.Contains(pair.First.Mark)).SelectMany(pair => Pieces(pair.First, CradleOf(pair.First), pair.Second))],
        };
    }

    private static IEnumerable<CradleStrips> Pieces(PanelLine line, Cradle? cradle, int made) =>
        (cradle?.Strips ?? []).Select(strip => new CradleStrips(line.Mark, strip.Length, strip.Count, (long)strip.Count * made));

    private static Money? Strips(Order order, Batch batch, (ImmutableArray<string> Marks, Func<PanelLine, Cradle?> Cradle) weak, CancellationToken cancellation)
    {
        var (marks, cradleOf) = weak;
        if (order.Strips.IsEmpty)
        {
            return null;
        }

        var braced = order with { Panels = [.. order.Panels.Select(line => marks.Contains(line.Mark) ? line with { Cradle = true } : line)] };
        var plan = StripPlanner.Plan(braced, batch.Made, line => marks.Contains(line.Mark) ? cradleOf(line) : CradleDesign.Of(order, line), cancellation);
        return plan.Complete ? plan.Spent - batch.Strips.Spent : null;
    }

    private static Money? Thicker(Order order, Batch batch, ImmutableArray<string> marks, CancellationToken cancellation)
    {
        var thick = order with { Panels = [.. order.Panels.Select(line => marks.Contains(line.Mark) ? OnStiffBoard(order, line) : line)] };
        if (thick.Panels.Zip(order.Panels).Any(pair => marks.Contains(pair.First.Mark) && pair.First.Thickness is null))
        {
            return null;
        }

        var outcome = BoardPlanner.Plan(thick, batch.Made, ready: [], new Search(null, default, cancellation)).Outcome;
        return outcome.Complete ? outcome.Spent - batch.Boards.Outcome.Spent : null;
    }

    // Without a thickness: no board is stiff enough.
    private static PanelLine OnStiffBoard(Order order, PanelLine line)
    {
        var board = order.Boards
            .Where(board => BoardFit.IsOfKind(line, board) && (board.OnHand > 0 || board.ForSale != 0) && Holds(order, line, board))
            .MinBy(board => board.Price.Minor / (board.Width * board.Height).SquareMetres);
        return line with { Thickness = board?.Thickness };
    }

    private static bool Holds(Order order, PanelLine line, BoardSupply board)
    {
        var plate = LoadedPlate.Of((Metres(line.Width), Metres(line.Height)), board, Coverings.MostOn(order, line), order.Strength);
        return plate.SagUnderHand(Metres(board.Thickness)) <= plate.Short / (double)order.Strength.Limit;
    }

    private static double Metres(Length length) => (double)length.Millimetres / 1000;
}
