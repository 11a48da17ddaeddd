// Problem: do stocks of which so many are used hold other pieces as well, or the same ones at other sizes?
// Idea:    those stocks cost nothing and further ones something: a plan at no price is one out of them alone, and a bound above
//          nothing says that there is none, mostly long before all are tried.
// Source:  ours.
// Cost:    one run of the engine with a tenth of a second's work at the most.
// Not:     a plan wherever there is one.
using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>Plans out of the stocks that another plan uses.</summary>
public static class SameStocksPlanner
{
    // About 100 ms; what is found at all is mostly found in a tenth of it.
    private const long Units = 100_000;

    /// <summary>Looks for a plan.</summary>
    /// <param name="problem">What is to be cut, and from what; its prices and limits count for nothing.</param>
    /// <param name="counts">How many of each of its stocks may be used.</param>
    /// <param name="cancellation">Ends it with nothing.</param>
    /// <returns>The patterns of a plan that makes everything; empty: none was found.</returns>
    public static ImmutableArray<PatternUse> Plan(CuttingProblem problem, ImmutableArray<int> counts, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        int[] used = [.. Enumerable.Range(0, counts.Length).Where(stock => counts[stock] > 0)];
        if (used.Length == 0 || cancellation.IsCancellationRequested)
        {
            return [];
        }

        var asked = problem with
        {
            Stocks =
            [
                .. used.Select(stock => problem.Stocks[stock] with { Price = 0, Limit = counts[stock] }),
                .. used.Select(stock => problem.Stocks[stock] with { Price = 1, Limit = null }),
            ],
            Pieces = [.. problem.Pieces.Select(piece => piece with { On = [.. used.Concat(used).Select(stock => piece.On[stock])] })],
        };
        var found = CuttingPlanner.Plan(asked, Units, cancellation);
        return found.Complete && found.Spent == 0 && !found.StoppedEarly
            ? [.. found.Patterns.Select(use => use with { Stock = used[use.Stock] })]
            : [];
    }
}
