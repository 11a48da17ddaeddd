using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Liquids;

/// <summary>
/// Which adhesive and which primer, how much of it, and in what containers. Lines that name one get that one;
/// all others share the one that makes the whole cheapest. Every alternative is tried, so the choice is exact.
/// </summary>
internal static class LiquidPlanner
{
    /// <summary>Plans the liquids for the panels made.</summary>
    /// <param name="order">The order.</param>
    /// <param name="made">How many of each line are made.</param>
    public static LiquidPlan Plan(Order order, ImmutableArray<int> made)
    {
        var adhesives = Cover(order.Adhesives, isAdhesive: true, Demands(order, made, Surface.Cloth, line => line.Adhesive));
        var primers = Cover(order.Primers, isAdhesive: false, Demands(order, made, Surface.Primed, line => line.Primer));
        return new LiquidPlan(
            [.. adhesives.Uses, .. primers.Uses],
            adhesives.LeastPossible + primers.LeastPossible,
            [.. adhesives.Warnings, .. primers.Warnings]);
    }

    private static ImmutableArray<LiquidDemand> Demands(
        Order order, ImmutableArray<int> made, Surface surface, Func<PanelLine, string?> named) =>
        [
            .. order.Panels.Zip(made)
                .Where(pair => pair.First.Surface == surface && !pair.First.MountLater && pair.Second > 0)
                .Select(pair => new LiquidDemand(pair.First.Mark, named(pair.First), pair.First.Area * pair.Second)),
        ];

    private static LiquidPlan Cover(ImmutableArray<LiquidSupply> liquids, bool isAdhesive, ImmutableArray<LiquidDemand> demands)
    {
        if (demands.IsEmpty)
        {
            return new LiquidPlan([], Money.Zero, []);
        }

        if (!demands.Any(d => d.Named is null))
        {
            return ToPlan(Assign(liquids, isAdhesive, demands, any: null), isAdhesive);
        }

        var covering = liquids
            .Select(any => Assign(liquids, isAdhesive, demands, any.Id))
            .Where(plan => plan.All(a => a.Covers))
            .ToList();
        return covering.Count > 0
            ? Cheapest(covering, isAdhesive)
            : WithoutAny(liquids, isAdhesive, demands);
    }

    private static LiquidPlan Cheapest(List<ImmutableArray<LiquidAssignment>> covering, bool isAdhesive)
    {
        var best = ToPlan(covering.MinBy(Spent), isAdhesive);
        return best with { LeastPossible = covering.Min(plan => Sum(plan, a => a.LeastPossible)) };
    }

    /// <summary>No liquid covers the lines that name none: a warning, and nothing is counted for them.</summary>
    private static LiquidPlan WithoutAny(
        ImmutableArray<LiquidSupply> liquids, bool isAdhesive, ImmutableArray<LiquidDemand> demands)
    {
        var named = ToPlan(Assign(liquids, isAdhesive, [.. demands.Where(d => d.Named is not null)], any: null), isAdhesive);
        return named with { Warnings = [LiquidWarnings.None(isAdhesive, demands.Where(d => d.Named is null)), .. named.Warnings] };
    }

    private static ImmutableArray<LiquidAssignment> Assign(
        ImmutableArray<LiquidSupply> liquids, bool isAdhesive, ImmutableArray<LiquidDemand> demands, string? any) =>
        [
            .. liquids
                .Select(liquid => (Liquid: liquid, Demands: demands.Where(d => (d.Named ?? any) == liquid.Id).ToImmutableArray()))
                .Where(pair => !pair.Demands.IsEmpty)
                .Select(pair => LiquidAssignment.Of(pair.Liquid, isAdhesive, pair.Demands, liquids.Length)),
        ];

    private static LiquidPlan ToPlan(ImmutableArray<LiquidAssignment> assignments, bool isAdhesive) => new(
        [.. assignments.Select(a => a.Use)],
        Sum(assignments, a => a.LeastPossible),
        [.. assignments.Where(a => !a.Covers).Select(a => LiquidWarnings.Short(isAdhesive, a.Use))]);

    private static Money Spent(ImmutableArray<LiquidAssignment> assignments) => Sum(assignments, a => a.Use.Spent);

    private static Money Sum(ImmutableArray<LiquidAssignment> assignments, Func<LiquidAssignment, Money> part) =>
        assignments.Aggregate(Money.Zero, (sum, a) => sum + part(a));
}
