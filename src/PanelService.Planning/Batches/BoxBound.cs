using System.Collections.Immutable;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;
using PanelService.Planning.Strips;

namespace PanelService.Planning.Batches;

/// <summary>What is known of the decisions in a box.</summary>
/// <param name="LeastPossible">None of them makes the batch cheaper than this.</param>
/// <param name="ByBoards">What the boards alone would have bought; null where they were not complete.</param>
/// <param name="ByCloth">What the cloth alone would have bought; null where it was not complete.</param>
internal sealed record BoxBound(Money LeastPossible, ImmutableArray<int>? ByBoards, ImmutableArray<int>? ByCloth)
{
    /// <summary>
    /// Bounds a box. Each material is planned by itself, with ready-made panels at its part of their price: whatever is
    /// bought within the box, each material's cost with its part is at least its own bound, and the parts add up.
    /// </summary>
    /// <param name="order">The order.</param>
    /// <param name="box">The decisions.</param>
    /// <param name="boardShare">The boards' share of prices, see <see cref="PriceParts"/>.</param>
    /// <param name="search">When to stop.</param>
    public static BoxBound Of(Order order, BuyBox box, decimal boardShare, Search search)
    {
        var parts = order.Panels.Select(line => line.ShopPrice is null ? default : PriceParts.Of(line, order, boardShare)).ToImmutableArray();
        ImmutableArray<int> counts = [.. order.Panels.Select((line, i) => line.Wanted - box.Least[i])];
        var boards = BoardPlanner.Plan(order, counts, Offers(box, parts, part => part.Board), search).Outcome;
        var cloth = ClothPlanner.Plan(order, counts, Offers(box, parts, part => part.Cloth), search).Outcome;
        var bought = order.Panels.Select((line, i) => (line.ShopPrice ?? Money.Zero) * box.Least[i]).Aggregate(Money.Zero, (a, b) => a + b);
        return new BoxBound(
            boards.LeastPossible + cloth.LeastPossible + Liquids(order, box, parts) + Strips(order, box, search) + bought,
            TakenBy(boards, box),
            TakenBy(cloth, box));
    }

    private static ImmutableArray<ReadyOffer?> Offers(BuyBox box, ImmutableArray<PriceParts> parts, Func<PriceParts, Money> part) =>
        [.. parts.Select((price, i) => box.Most[i] > box.Least[i] ? new ReadyOffer(part(price), box.Most[i] - box.Least[i]) : null)];

    private static ImmutableArray<int>? TakenBy(CutOutcome outcome, BuyBox box) =>
        outcome.Complete ? [.. box.Least.Zip(outcome.Ready, (least, more) => least + more)] : null;

    // What must be made takes its strips; what else is made, none for less than nothing.
    private static Money Strips(Order order, BuyBox box, Search search) =>
        StripPlanner.Plan(order, [.. order.Panels.Select((line, i) => line.Wanted - box.Most[i])], search.Cancellation).LeastPossible;

    /// <summary>At least what must be made takes; at least what the parts given to the liquids say.</summary>
    private static Money Liquids(Order order, BuyBox box, ImmutableArray<PriceParts> parts)
    {
        var mustBeMade = LiquidPlanner.Plan(order, [.. order.Panels.Select((line, i) => line.Wanted - box.Most[i])]).LeastPossible;
        decimal byParts = PriceParts.LeastOf(order.Adhesives, Given(order, box, parts, Surface.Cloth))
            + PriceParts.LeastOf(order.Primers, Given(order, box, parts, Surface.Primed));
        return mustBeMade.Minor >= byParts ? mustBeMade : new Money((long)Math.Floor(byParts));
    }

    private static decimal Given(Order order, BuyBox box, ImmutableArray<PriceParts> parts, Surface surface) => order.Panels
        .Select((line, i) => line.Surface != surface
            ? 0
            : (line.Wanted - box.Least[i]) * (box.Most[i] > box.Least[i] ? parts[i].Liquid.Minor : PriceParts.LeastLiquid(line, order)))
        .Sum();
}
