using System.Collections.Immutable;
using PanelService.Cutting.Lengths;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting;

/// <summary>The least price of cutting all pieces from sheets and from goods sold by length, with a plan and a bound.</summary>
public static class LengthPlanner
{
    // Counts of goods that stay open for long want as much as this for a plan or a proof; most orders take a hundredth of it.
    private const int WorkOfLengths = 2;

    /// <summary>Plans.</summary>
    /// <param name="problem">What is to be cut from what.</param>
    /// <param name="effort">How much work the search may do.</param>
    /// <param name="below">A plan of this price is known: only cheaper ones are looked for.</param>
    /// <param name="progress">Told whenever the plan or the bound gets better; null: nobody listens.</param>
    /// <param name="cancellation">Ends the search and keeps the best plan so far.</param>
    /// <returns>The same result for the same problem and effort, unless cancelled; no plan where none below the price
    /// known was found.</returns>
    public static LengthResult Plan(
        LengthProblem problem,
        Effort effort,
        long below = long.MaxValue,
        IProgress<CuttingProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var goods = new GoodsModel(problem);
        if (goods.Pieces < problem.Pieces.Sum(piece => (long)piece.Demand))
        {
            // Something fits nowhere.
            return new LengthResult([], long.MaxValue, LeastPossible: 0, StoppedEarly: false);
        }

        var work = new WorkMeter(WorkOfLengths * CuttingPlanner.WorkFor(effort), cancellation);
        var search = new LengthSearch(goods, below, work, progress);
        try
        {
            search.Run();
        }
        catch (OperationCanceledException) when (work.Stopped)
        {
            // The best plan so far stands; what was being computed is dropped half-way.
        }

        var result = search.Best is null
            ? new LengthResult([], long.MaxValue, search.Bound, work.Stopped)
            : new LengthResult(UsesOf(goods, search.Best), search.Spent, search.Bound, work.Stopped);
        return result with { Proof = search.Proof };
    }

    private static ImmutableArray<LengthUse> UsesOf(GoodsModel goods, List<FilledGood> plan)
    {
        var model = goods.Model;
        var (patterns, _) = model.Translate(plan.Select(filled => new PatternUse(filled.Good, filled.Block, 1)));
        return [.. patterns.Select(use => new LengthUse(use.Stock, goods.StepsOf(use), use.Block, use.Copies))];
    }
}
