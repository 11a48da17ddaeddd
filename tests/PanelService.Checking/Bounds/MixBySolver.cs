// Problem: LeastMix, where thousands of each of several stocks are in play.
// Idea:    the same question put to an integer solver. Everything it is given is whole numbers below 2⁶¹; larger ones are
//          left out, which only allows more.
// Source:  CP-SAT of OR-Tools.
using Google.OrTools.Sat;

namespace PanelService.Checking.Bounds;

/// <summary>Cheapest counts by an integer solver.</summary>
internal static class MixBySolver
{
    /// <summary>Looks for the cheapest counts that are not forbidden.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="known">What is known.</param>
    /// <param name="below">Only cheaper ones are of interest.</param>
    /// <returns>Counts, null where there are none; and whether the solver came to its end.</returns>
    public static (int[]? Counts, bool Ended) Below(BoundCase problem, KnownFacts known, long below)
    {
        var model = new CpModel();
        long pieces = Math.Min(problem.PieceCount, int.MaxValue / 2);
        IntVar[] counts = [.. problem.Stocks.Select(stock => model.NewIntVar(0, Math.Min(stock.Limit ?? pieces, pieces), ""))];
        foreach (var (_, caps, needed) in known.Inequalities)
        {
            if (needed < long.MaxValue / 4 && caps.All(cap => (Int128)cap * pieces * caps.Length < long.MaxValue / 4))
            {
                model.Add(LinearExpr.WeightedSum(counts, caps) >= (long)needed);
            }
        }

        foreach (int[] most in known.Impossible)
        {
            model.AddBoolOr(counts.Select((count, s) => More(model, count, most[s])));
        }

        var price = LinearExpr.WeightedSum(counts, problem.Stocks.Select(stock => stock.Price));
        model.Add(price <= below - 1);
        model.Minimize(price);
        using var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1,max_deterministic_time:20" };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => ([.. counts.Select(count => (int)solver.Value(count))], true),
            CpSolverStatus.Infeasible => (null, true),
            _ => (null, false),
        };
    }

    private static BoolVar More(CpModel model, IntVar count, int than)
    {
        var more = model.NewBoolVar("");
        model.Add(count >= than + 1).OnlyEnforceIf(more);
        return more;
    }
}
