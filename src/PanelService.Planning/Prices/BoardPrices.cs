using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Prices;

/// <summary>Boards that cost less each in larger numbers.</summary>
internal static class BoardPrices
{
    /// <summary>Whether there is any such board.</summary>
    public static bool Vary(Order order) => order.Boards.Any(board => !board.PriceFrom.IsEmpty);

    /// <summary>Plans at the cheapest choice of levels.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size.</param>
    /// <param name="search">When to stop; a run at one choice bounds nothing, so nobody is told.</param>
    public static BoardPlan Cheapest(Order order, CutRequest request, Search search)
    {
        ImmutableArray<int> varying = [.. Enumerable.Range(0, order.Boards.Length).Where(i => PriceLevels.Of(order.Boards[i]).Vary)];
        return PriceLevelSearch<BoardPlan>.Cheapest(
            [.. varying.Select(i => PriceLevels.Of(order.Boards[i]))],
            choice => Run(order, request, varying.Zip(choice.Levels).ToDictionary(pair => order.Boards[pair.First].Id, pair => pair.Second), search.Quietly()),
            MostRuns.Of(order.Effort),
            search.Cancellation);
    }

    /// <summary>What the boards cut cost, each sort bought the cheapest way.</summary>
    /// <param name="patterns">What is cut.</param>
    public static Money Cost(ImmutableArray<BoardPattern> patterns) => patterns
        .GroupBy(pattern => pattern.Stock)
        .Aggregate(Money.Zero, (sum, group) => sum + Cost(group.Key, group.Sum(pattern => pattern.Copies)));

    private static Money Cost(BoardStock stock, int count) => stock.Source == Source.OnHand
        ? stock.Price * count
        : PriceLevels.Of(stock.Board).Cheapest(count).Cost;

    private static BoardPlan Run(Order order, CutRequest request, Dictionary<string, PaidLevel> levels, Search search)
    {
        var plan = BoardPlanner.Run(order, request, [.. BoardStock.AllOf(order).SelectMany(stock => OffersOf(stock, levels))], search);
        var paid = levels.Values.Aggregate(Money.Zero, (sum, level) => sum + (level.Price * level.Count));
        return plan with
        {
            Outcome = plan.Outcome with
            {
                Spent = Cost(plan.Patterns) + ReadyOffer.Cost(request, plan.Outcome.Ready),
                LeastPossible = plan.Outcome.LeastPossible + paid,
            },
        };
    }

    private static IEnumerable<BoardOffer> OffersOf(BoardStock stock, Dictionary<string, PaidLevel> levels)
    {
        if (stock.Source == Source.OnHand || !levels.TryGetValue(stock.Board.Id, out var level))
        {
            return [new BoardOffer(stock, stock.ToStock())];
        }

        var all = stock.ToStock();
        var paid = new BoardOffer(stock, all with { Price = 0, Limit = level.Count });
        var more = new BoardOffer(stock, all with { Price = level.Price.Minor, Limit = all.Limit - level.Count });
        return new[] { paid, more }.Where(offer => offer.Stock.Limit is null or > 0);
    }
}
