using System.Collections.Immutable;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Wishes;

/// <summary>
/// How many wishes can be glued or primed with what is left anyway. A wish is never a reason to spend: what is on
/// hand with a value of its own is left alone, and nothing is bought.
/// </summary>
internal static class FreeLiquids
{
    /// <summary>Lowers what is asked for to what the free liquids cover, the most worth first.</summary>
    /// <param name="order">The order.</param>
    /// <param name="uses">The liquids of the batch.</param>
    public static ImmutableArray<int> AtMost(Order order, ImmutableArray<LiquidUse> uses)
    {
        var most = order.Wishes.Select(wish => wish.AtMost).ToArray();
        foreach (var (surface, isAdhesive) in new[] { (Surface.Cloth, true), (Surface.Primed, false) })
        {
            var supplies = isAdhesive ? order.Adhesives : order.Primers;
            var free = supplies.IsEmpty ? null : FreeOf(order, supplies, uses, isAdhesive);
            Lower(most, order, surface, free);
        }

        return [.. most];
    }

    /// <summary>Adds what the wishes made take to the liquids; nothing more is bought.</summary>
    /// <param name="order">The order.</param>
    /// <param name="uses">The liquids of the batch.</param>
    /// <param name="counts">Per wish: how many are made.</param>
    public static ImmutableArray<LiquidUse> Take(Order order, ImmutableArray<LiquidUse> uses, ImmutableArray<int> counts)
    {
        var adhesives = Take(order, uses, counts, Surface.Cloth, isAdhesive: true);
        var primers = Take(order, uses, counts, Surface.Primed, isAdhesive: false);
        return [.. adhesives, .. primers];
    }

    private static IEnumerable<LiquidUse> Take(
        Order order, ImmutableArray<LiquidUse> uses, ImmutableArray<int> counts, Surface surface, bool isAdhesive)
    {
        var own = uses.Where(use => use.IsAdhesive == isAdhesive).ToList();
        var wishes = order.Wishes.Zip(counts).Where(pair => pair.First.Surface == surface && pair.Second > 0).ToList();
        var supplies = isAdhesive ? order.Adhesives : order.Primers;
        if (wishes.Count == 0 || supplies.IsEmpty)
        {
            return own;
        }

        var from = FreeOf(order, supplies, uses, isAdhesive);
        var shares = wishes.Select(pair => new LiquidShare(
            pair.First.Mark,
            LiquidDemand.VolumeFor(pair.First.Width * pair.First.Height * pair.Second, from.Liquid)));
        return own.Any(use => use.Liquid.Id == from.Liquid.Id)
            ? own.Select(use => use.Liquid.Id == from.Liquid.Id ? With(use, shares) : use)
            : own.Append(With(from, shares));
    }

    private static LiquidUse With(LiquidUse use, IEnumerable<LiquidShare> shares)
    {
        var all = use.Shares.AddRange(shares);
        var needed = all.Aggregate(default(Volume), (sum, share) => sum + share.Volume);
        return use with
        {
            Shares = all,
            Needed = needed,
            FromHand = Volume.Min(needed, use.Liquid.OnHand),
            Left = use.Left - (needed - use.Needed),
        };
    }

    private static void Lower(int[] most, Order order, Surface surface, LiquidUse? free)
    {
        if (free is null)
        {
            // Where the order has no such liquid at all, lines are made without one, and so are wishes.
            return;
        }

        var left = FreeVolume(free);
        foreach (int i in Enumerable.Range(0, most.Length).OrderByDescending(i => order.Wishes[i].Worth))
        {
            var wish = order.Wishes[i];
            if (wish.Surface == surface)
            {
                var each = LiquidDemand.VolumeFor(wish.Width * wish.Height, free.Liquid);
                most[i] = (int)Math.Min(most[i], Math.Floor(left.Millilitres / each.Millilitres));
                left -= each * most[i];
            }
        }
    }

    /// <summary>
    /// The liquid of the lines that name none, since all that name none share one; where there is no such line, the one with the
    /// most to spare, and one the batch does not use yet is as good.
    /// </summary>
    private static LiquidUse FreeOf(Order order, ImmutableArray<LiquidSupply> supplies, ImmutableArray<LiquidUse> uses, bool isAdhesive)
    {
        var nameless = order.Panels.Where(line => (isAdhesive ? line.Adhesive : line.Primer) is null).Select(line => line.Mark).ToHashSet();
        return uses.FirstOrDefault(use => use.IsAdhesive == isAdhesive && use.Shares.Any(share => nameless.Contains(share.Mark)))
            ?? supplies
                .Select(supply => uses.FirstOrDefault(use => use.IsAdhesive == isAdhesive && use.Liquid.Id == supply.Id) ?? Unused(supply, isAdhesive))
                .MaxBy(FreeVolume)!;
    }

    private static Volume FreeVolume(LiquidUse use) =>
        use.FromHand < use.Liquid.OnHand && use.Liquid.Value > Money.Zero ? default : use.Left;

    private static LiquidUse Unused(LiquidSupply supply, bool isAdhesive) => new()
    {
        Liquid = supply,
        IsAdhesive = isAdhesive,
        Needed = default,
        FromHand = default,
        Bought = [],
        Left = supply.OnHand,
        Shares = [],
    };
}
