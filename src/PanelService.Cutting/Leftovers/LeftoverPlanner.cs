// Problem: of all plans of the same price, the one that leaves the largest piece of a dear stock whole.
// Idea:    take one of the stocks used away and offer parts of it instead, full along one side and some sixteenths along the
//          other, at the price of their size, while everything else the plan uses costs nothing more. The cheapest plan
//          of that problem that takes one part leaves the most of the stock. Nothing forbids the engine two parts of it: two of
//          one way are joined to one as wide as both, and where they are of both ways, each way is asked for by itself. Then
//          the same once more with sixteenths of the last sixteenth (PartSearch). Stock by stock, the dearest first; what was
//          found for one holds for the next.
// Source:  cutting stock with usable leftovers: Cherri, Arenales and Yanasse, EJOR 196 (2009), there by rules of thumb.
// Cost:    two short runs of the engine for each kind of stock looked at, the second where the first came to its end; two more
//          for each of them where parts of both ways are the cheapest.
// Not:     leftovers that reach across the stock neither way: those are as they come. Of 80 drawn orders of up to seven panels
//          held against brute force none could leave a larger strip, and 23 a piece of another kind that is worth more, an eighth
//          in the median. Nor finer than 256ths, or than sixteenths where the first run's work did not do; one leftover for each
//          kind of stock, not the best sum of many.
using System.Collections.Immutable;

namespace PanelService.Cutting.Leftovers;

/// <summary>Makes the largest leftover of a plan larger at no price.</summary>
public static class LeftoverPlanner
{
    private const int MostStocks = 2;

    /// <summary>Looks for a plan of the same price with a larger leftover.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="result">The plan; every piece in it.</param>
    /// <param name="smallestKept">A leftover is worth something where this fits into it, either way round.</param>
    /// <param name="cancellation">Ends it; what was found so far stands.</param>
    /// <returns>A plan of the same price and counts of stocks; <paramref name="result"/> itself where none leaves more.</returns>
    public static CuttingResult Gather(
        CuttingProblem problem, CuttingResult result, (long Width, long Height) smallestKept, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(result);
        if (!result.Complete || result.StoppedEarly)
        {
            return result;
        }

        int[] dearest =
        [
            .. result.Patterns.Select(use => use.Stock).Distinct()
                .Where(s => problem.Stocks[s].Price > 0)
                .OrderByDescending(s => problem.Stocks[s].Price).ThenBy(s => s)
                .Take(MostStocks),
        ];
        var best = result;
        var kept = ImmutableArray<Part>.Empty;
        foreach (int stock in dearest.TakeWhile(_ => !best.StoppedEarly))
        {
            var search = new PartSearch(problem, new Target(stock, smallestKept, kept), cancellation);
            best = search.Gather(best);
            kept = kept.Add(search.LargestOf(best));
        }

        return best;
    }
}
