// Problem: what costs nothing is used as it comes: a plan may cut into the largest piece on the rack where the smallest would have
//          done, or into three where one holds everything.
// Idea:    the pieces that lie on such stocks are planned once more, on stocks priced by the squares of their areas: several small
//          ones are rather used up than a large one cut into. What is paid for stays as it is.
// Source:  none; CuttingPlanner does it.
// Cost:    one run of a twentieth of a second and less.
// Not:     the largest kept first, strictly: many small stocks can outweigh a large one. Nor pieces moved between stocks that are paid for and stocks that cost nothing: LeftoverChoice and PartSearch do that.
using System.Collections.Immutable;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Leftovers;

/// <summary>Cuts into small stocks rather than large ones, of those that cost nothing.</summary>
internal static class SparedStocks
{
    // About 50 ms.
    private const long Units = 50_000;

    // What the largest stock costs.
    private const long Largest = 1_000_000;

    /// <summary>The same plan with less cut into.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="plan">A plan; every piece in it.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <returns>A plan of the same price; null: none cuts into less, or a stop was asked for.</returns>
    public static CuttingResult? Spare(CuttingProblem problem, CuttingResult plan, CancellationToken cancellation)
    {
        int[] free = [.. Enumerable.Range(0, problem.Stocks.Length).Where(s => IsFree(problem.Stocks[s]))];
        ImmutableArray<PatternUse> uses = [.. plan.Patterns.Where(use => free.Contains(use.Stock))];
        if (uses.IsEmpty || (uses is [{ Copies: 1 } only] && free.Min(s => AreaOf(problem.Stocks[s])) == AreaOf(problem.Stocks[only.Stock])))
        {
            return null;
        }

        int[] counts = new int[problem.Pieces.Length];
        foreach (var use in uses)
        {
            int[] own = BlockMath.Counts(use.Block, counts.Length);
            counts = [.. counts.Zip(own, (all, one) => all + (use.Copies * one))];
        }

        int[] kinds = [.. Enumerable.Range(0, counts.Length).Where(i => counts[i] > 0)];
        var priced = problem with
        {
            Stocks = [.. free.Select(s => problem.Stocks[s] with { Price = PriceOf(problem, free, s) })],
            Pieces = [.. kinds.Select(i => problem.Pieces[i] with { Demand = counts[i], On = [.. free.Select(s => problem.Pieces[i].On[s])] })],
        };
        var found = CuttingPlanner.Plan(priced, Units, cancellation);
        if (!found.Complete || found.StoppedEarly || found.Spent >= uses.Sum(use => use.Copies * PriceOf(problem, free, use.Stock)))
        {
            return null;
        }

        var spared = found.Patterns.Select(use => use with { Stock = free[use.Stock], Block = BlockMath.Renamed(use.Block, kinds) });
        return plan with { Patterns = [.. plan.Patterns.Where(use => !free.Contains(use.Stock)), .. spared] };
    }

    /// <summary>Whether a stock costs nothing.</summary>
    /// <param name="stock">The stock.</param>
    public static bool IsFree(Stock stock) => stock is { Price: 0, Limit: not 0 };

    private static double AreaOf(Stock stock) => (double)stock.Width * stock.Height;

    private static long PriceOf(CuttingProblem problem, int[] free, int stock) =>
        (long)Math.Ceiling(Largest * Math.Pow(AreaOf(problem.Stocks[stock]) / free.Max(s => AreaOf(problem.Stocks[s])), 2));
}
