// Problem: of all ways of cutting cloth at the same cost, the one that keeps the largest remnants.
// Idea:    the question asked of boards (LeftoverPlanner), without kerf and edges: the cloths the plan uses, each as often as it
//          does, and every remnant that costs nothing.
// Source:  see LeftoverPlanner.
// Cost:    see there; nothing where a plan has no cloth.
// Not:     other lengths of cloth sold by the step that cost the same together.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Cutting.Leftovers;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>Larger leftovers of cloth, where that costs nothing.</summary>
internal static class ClothLeftovers
{
    /// <summary>Looks for the same plan with larger leftovers.</summary>
    /// <param name="order">The order.</param>
    /// <param name="plan">A whole plan without ready-made panels.</param>
    /// <param name="request">How many of each line at what size: the patterns hold them.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>A plan that costs the same out of the same cloths, but for remnants that cost nothing.</returns>
    public static ClothPlan Gather(Order order, ClothPlan plan, CutRequest request, CancellationToken cancellation)
    {
        ImmutableArray<ClothStock> used = [.. plan.Patterns.Select(pattern => pattern.Stock).Distinct()];
        ImmutableArray<ClothStock> stocks =
        [
            .. used,
            .. FreeRemnants(order).Where(stock => !used.Contains(stock)),
        ];
        var task = CutTask.Of([.. stocks.Select(stock => StockOf(stock, plan))], request, ClothPlanner.Material(order, stocks));
        if (!plan.LineOf.SequenceEqual(task.LineOf))
        {
            return plan;
        }

        ImmutableArray<PatternUse> patterns = [.. plan.Patterns.Select(pattern => new PatternUse(stocks.IndexOf(pattern.Stock), pattern.Block, pattern.Copies))];
        long spent = PriceOf(patterns);
        var result = new CuttingResult(patterns, spent, spent, [.. new int[task.LineOf.Length]], plan.Outcome.StoppedEarly);
        var gathered = LeftoverPlanner.Gather(task.Problem, result, stock => stocks[stock].ToFrame(order.Bench), cancellation);
        return ReferenceEquals(gathered, result) || PriceOf(gathered.Patterns) != spent
            ? plan
            : plan with { Patterns = ClothPlanner.PatternsOf(gathered.Patterns, stocks) };

        long PriceOf(ImmutableArray<PatternUse> uses) => uses.Sum(use => use.Copies * stocks[use.Stock].Price.Minor);
    }

    /// <summary>The remnants that cost nothing; none where there are so many that the plan was not made of all of them.</summary>
    private static IEnumerable<ClothStock> FreeRemnants(Order order) => ClothStocks.HasTooManyRemnants(order)
        ? []
        : ClothStocks.OfFixedLength(order).Where(stock => stock is { Remnant: not null } && stock.Price == Money.Zero);

    /// <summary>As often as the plan uses it; what costs nothing as often as it is there.</summary>
    private static Stock StockOf(ClothStock stock, ClothPlan plan) => new(
        stock.UsableWidth.Steps,
        stock.Length.Steps,
        stock.Price.Minor,
        stock.Price == Money.Zero ? stock.Limit : plan.Patterns.Where(pattern => pattern.Stock == stock).Sum(pattern => pattern.Copies));
}
