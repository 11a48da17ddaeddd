// Problem: with several stock prices, rounding the relaxation's bound up to a whole cent is weak: no mix of whole
//          sheets may cost just that.
// Idea:    every value vector says Σ z(s) n(s) ≥ Σ d p for the counts n of any plan. The cheapest whole counts that
//          meet all those inequalities at once are a bound, and the true price is never below.
// Source:  surrogate constraints (Glover 1975) on the counts of Gilmore and Gomory's several stock lengths.
// Cost:    a small integer programme of one variable per stock; bounded by deterministic time, and then still a bound.
using Google.OrTools.Sat;

namespace PanelService.Cutting.Search;

/// <summary>The cheapest whole counts of stocks that no known inequality forbids.</summary>
internal static class PriceMix
{
    private const int MostInequalities = 24;

    /// <summary>Computes the bound.</summary>
    /// <param name="model">The model.</param>
    /// <param name="inequalities">Value vectors with their best pattern values; the last ones are used.</param>
    /// <param name="demand">What is to be covered.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <param name="below">A plan of this price is known: nothing above it is of interest.</param>
    /// <param name="work">Where its work is counted.</param>
    /// <returns>A true bound, at most <paramref name="below"/>.</returns>
    public static long Bound(
        Model model, IReadOnlyList<DualVector> inequalities, int[] demand, StockBox box, long below, WorkMeter work)
    {
        var programme = new CpModel();
        var counts = new IntVar[model.Stocks.Length];
        for (int s = 0; s < counts.Length; s++)
        {
            counts[s] = programme.NewIntVar(box.Least[s], MostOf(model, s, box, demand, below), "");
        }

        foreach (var vector in inequalities.Skip(inequalities.Count - MostInequalities))
        {
            var covered = vector.Covered(demand);
            if (covered < long.MaxValue / 4)
            {
                programme.Add(LinearExpr.WeightedSum(counts, vector.Best) >= (long)covered);
            }
        }

        var price = LinearExpr.WeightedSum(counts, Enumerable.Range(0, counts.Length).Select(s => model.Stock(s).Price));
        programme.Minimize(price);
        using var solver = new CpSolver
        {
            StringParameters = "num_workers:1,random_seed:1,max_deterministic_time:0.05",
        };
        using var stop = work.Cancellation.Register(solver.StopSearch);
        var status = solver.Solve(programme);
        work.Spend(1000);
        return status switch
        {
            CpSolverStatus.Infeasible => below,
            CpSolverStatus.Optimal or CpSolverStatus.Feasible or CpSolverStatus.Unknown =>
                Math.Min(below, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6)),
            _ => 0,
        };
    }

    /// <summary>More than this of a stock no plan needs that is not dearer than <paramref name="below"/>.</summary>
    private static int MostOf(Model model, int stock, StockBox box, int[] demand, long below)
    {
        long most = Math.Min(box.Most[stock], demand.Sum(d => (long)d));
        long price = model.Stock(stock).Price;
        return (int)(price > 0 && below < long.MaxValue ? Math.Min(most, below / price) : most);
    }
}
