using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Liquids;

/// <summary>One liquid with the demands it is to cover, and the containers that do.</summary>
/// <param name="Use">What is used and bought.</param>
/// <param name="LeastPossible">What covering the demands with this liquid costs at the least.</param>
/// <param name="Covers">Whether there is enough of it.</param>
internal sealed record LiquidAssignment(LiquidUse Use, Money LeastPossible, bool Covers)
{
    /// <summary>Covers demands with one liquid: on hand first, then the cheapest containers.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <param name="isAdhesive">Whether it is an adhesive.</param>
    /// <param name="demands">What it is to cover.</param>
    /// <param name="alternatives">How many liquids are chosen among: they share the work that one may take.</param>
    public static LiquidAssignment Of(LiquidSupply liquid, bool isAdhesive, ImmutableArray<LiquidDemand> demands, int alternatives)
    {
        var shares = demands.Select(d => new LiquidShare(d.Mark, d.VolumeOf(liquid))).ToImmutableArray();
        var needed = shares.Aggregate(default(Volume), (sum, share) => sum + share.Volume);
        var fromHand = needed <= liquid.OnHand ? needed : liquid.OnHand;
        var choice = ContainerChooser.Choose(liquid.Containers, needed - fromHand, ContainerChooser.NodeLimit / Math.Max(1, alternatives));
        var bought = choice?.Bought ?? [];
        var use = new LiquidUse
        {
            Liquid = liquid,
            IsAdhesive = isAdhesive,
            Needed = needed,
            FromHand = fromHand,
            Bought = bought,
            Left = LeftAfter(liquid.OnHand, needed, bought),
            Shares = shares,
        };
        return new LiquidAssignment(use, use.OnHandCost + (choice?.LeastCost ?? Money.Zero), choice is not null);
    }

    private static Volume LeftAfter(Volume onHand, Volume needed, ImmutableArray<ContainerCount> bought)
    {
        var all = bought.Aggregate(onHand, (sum, b) => sum + (b.Container.Volume * b.Count));
        return all > needed ? all - needed : default;
    }
}
