using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Strips;

namespace PanelService.Planning.Prices;

/// <summary>Strips that cost less each in larger numbers.</summary>
internal static class StripPrices
{
    /// <summary>Whether there are any such strips.</summary>
    public static bool Vary(Order order) => order.Strips.Any(strip => PriceLevels.Of(strip).Vary);

    /// <summary>How many strips of one length are bought to be cut.</summary>
    public static int CountOf(StripSupply strip, ImmutableArray<StripLayout> layouts) =>
        layouts.Where(layout => layout.Source == Source.Bought && layout.Strip.Id == strip.Id).Sum(layout => layout.Copies);

    /// <summary>Plans at the cheapest choice of levels.</summary>
    /// <param name="order">The order.</param>
    /// <param name="run">Plans out of some stocks, at their prices.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static StripPlan Cheapest(Order order, Func<ImmutableArray<StripStock>, StripPlan> run, CancellationToken cancellation)
    {
        ImmutableArray<StripSupply> varying = [.. order.Strips.Where(strip => PriceLevels.Of(strip).Vary)];
        return PriceLevelSearch<StripPlan>.Cheapest(
            [.. varying.Select(strip => PriceLevels.Of(strip))],
            choice => Run(order, run, varying.Zip(choice.Levels).ToDictionary(pair => pair.First.Id, pair => pair.Second)),
            MostRuns.Of(order.Effort),
            cancellation);
    }

    private static StripPlan Run(Order order, Func<ImmutableArray<StripStock>, StripPlan> run, Dictionary<string, PaidLevel> levels)
    {
        var plan = run([.. StripStock.AllOf(order).SelectMany(stock => AtLevel(stock, levels)).Where(stock => stock.Limit is null or > 0)]);
        var paid = levels.Values.Aggregate(Money.Zero, (sum, level) => sum + (level.Price * level.Count));
        return plan with
        {
            Outcome = plan.Outcome with { Spent = Cost(order, plan.Layouts), LeastPossible = plan.Outcome.LeastPossible + paid },
        };
    }

    // Those paid for whatever is cut, and any more at the level's price.
    private static IEnumerable<StripStock> AtLevel(StripStock stock, Dictionary<string, PaidLevel> levels) =>
        stock.Source == Source.OnHand || !levels.TryGetValue(stock.Strip.Id, out var level)
            ? [stock]
            : [stock with { Price = Money.Zero, Limit = level.Count }, stock with { Price = level.Price, Limit = stock.Limit - level.Count }];

    private static Money Cost(Order order, ImmutableArray<StripLayout> layouts) =>
        order.Strips.Select(strip => PriceLevels.Of(strip).Cheapest(CountOf(strip, layouts)).Cost)
            .Concat(layouts.Where(layout => layout.Source == Source.OnHand).Select(layout => layout.CostEach * layout.Copies))
            .Aggregate(Money.Zero, (sum, cost) => sum + cost);
}
