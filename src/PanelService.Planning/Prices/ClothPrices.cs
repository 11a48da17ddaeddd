using System.Collections.Immutable;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Prices;

/// <summary>Cloth that costs less by the step or the roll in larger numbers.</summary>
internal static class ClothPrices
{
    /// <summary>Whether there is any such cloth.</summary>
    public static bool Vary(Order order) => order.Cloths.Any(cloth => cloth.Sale is { PriceFrom.IsEmpty: false });

    /// <summary>Plans at the cheapest choice of levels.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size.</param>
    /// <param name="search">When to stop; a run at one choice bounds nothing, so nobody is told.</param>
    public static ClothPlan Cheapest(Order order, CutRequest request, Search search)
    {
        ImmutableArray<int> varying =
            [.. Enumerable.Range(0, order.Cloths.Length).Where(i => order.Cloths[i].Sale is { } sale && PriceLevels.Of(sale).Vary)];
        return PriceLevelSearch<ClothPlan>.Cheapest(
            [.. varying.Select(i => PriceLevels.Of(order.Cloths[i].Sale!))],
            choice => Run(order, request, (varying, choice), search.Quietly()),
            MostRuns.Of(order.Effort),
            search.Cancellation);
    }

    /// <summary>What patterns cost in a run at one choice of levels, what is paid for apart.</summary>
    /// <param name="order">The order of the run.</param>
    /// <param name="patterns">What is cut.</param>
    public static Money InRun(Order order, ImmutableArray<ClothPattern> patterns) => order.Cloths
        .Where(cloth => cloth.Sale is { Paid: > 0 })
        .Aggregate(Plain(patterns), (sum, cloth) => sum - (PriceOf(cloth.Sale!) * Math.Min(cloth.Sale!.Paid, CountOf(cloth, patterns))));

    /// <summary>The order with nothing paid for: its plans cost as much or more, and its bounds hold.</summary>
    public static Order Unpaid(Order order) => order.Cloths.Any(cloth => cloth.Sale is { Paid: > 0 })
        ? order with { Cloths = [.. order.Cloths.Select(cloth => cloth.Sale is { } sale ? cloth with { Sale = sale with { Paid = 0 } } : cloth)] }
        : order;

    /// <summary>What the cloth cut costs, each bought the cheapest way.</summary>
    /// <param name="order">The order.</param>
    /// <param name="patterns">What is cut.</param>
    public static Money Cost(Order order, ImmutableArray<ClothPattern> patterns) => order.Cloths
        .Where(cloth => cloth.Sale is not null)
        .Select(cloth => PriceLevels.Of(cloth.Sale!).Cheapest(CountOf(cloth, patterns)).Cost)
        .Aggregate(Plain([.. patterns.Where(pattern => pattern.Stock.Remnant is not null)]), (sum, cost) => sum + cost);

    /// <summary>How many steps or rolls of a cloth are bought to be cut.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="patterns">What is cut.</param>
    public static int CountOf(ClothSupply cloth, ImmutableArray<ClothPattern> patterns) => patterns
        .Where(pattern => pattern.Stock.Remnant is null && pattern.Stock.Cloth.Id == cloth.Id)
        .Sum(pattern => pattern.Copies * (pattern.Stock.Steps ?? 1));

    private static Money Plain(ImmutableArray<ClothPattern> patterns) =>
        patterns.Aggregate(Money.Zero, (sum, pattern) => sum + (pattern.Stock.Price * pattern.Copies));

    private static Money PriceOf(ClothSale sale) => sale switch
    {
        SaleByLength length => length.Price,
        SaleByRoll roll => roll.Price,
        _ => Money.Zero,
    };

    private static ClothPlan Run(Order order, CutRequest request, (ImmutableArray<int> Varying, LevelChoice Choice) at, Search search)
    {
        var cloths = order.Cloths.ToBuilder();
        foreach (var (i, level) in at.Varying.Zip(at.Choice.Levels))
        {
            cloths[i] = cloths[i] with { Sale = AtLevel(cloths[i].Sale!, level) };
        }

        var run = order with { Cloths = cloths.ToImmutable() };
        var plan = ClothPlanner.Run(run, request, search);
        if (!plan.Outcome.Complete)
        {
            return plan;
        }

        // With nothing paid for the bound is of all that is bought, and no less than what is paid for.
        var paid = at.Choice.Paid;
        var least = plan.PaidApart ? plan.Outcome.LeastPossible + paid : Greater(plan.Outcome.LeastPossible, paid);
        var patterns = plan.Patterns.Select(pattern => pattern with { Stock = OfOrder(order, pattern.Stock) }).ToImmutableArray();
        return plan with
        {
            Patterns = patterns,
            Outcome = plan.Outcome with
            {
                Spent = Cost(order, patterns) + ReadyOffer.Cost(request, plan.Outcome.Ready),
                LeastPossible = least,
            },
        };
    }

    /// <summary>A stock with its cloth as the order has it, at the price of one.</summary>
    public static ClothStock OfOrder(Order order, ClothStock stock)
    {
        var cloth = order.Cloths.First(cloth => cloth.Id == stock.Cloth.Id);
        return (stock.Remnant, cloth.Sale) switch
        {
            ({ } remnant, _) => ClothStock.Of(cloth, remnant),
            (_, SaleByLength sale) => ClothStock.Of(cloth, sale, stock.Steps!.Value),
            (_, SaleByRoll sale) => ClothStock.Of(cloth, sale),
            _ => throw new InvalidOperationException("Cloth that is not for sale was bought."),
        };
    }

    private static ClothSale AtLevel(ClothSale sale, PaidLevel level) => sale switch
    {
        SaleByLength length => length with { Price = level.Price, PriceFrom = [], Paid = level.Count },
        SaleByRoll roll => roll with { Price = level.Price, PriceFrom = [], Paid = level.Count },
        _ => sale,
    };

    private static Money Greater(Money a, Money b) => a >= b ? a : b;
}
