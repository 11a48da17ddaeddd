// Problem: the cheapest whole plan from the patterns known.
// Idea:    an integer programme: how often each pattern, demand covered, stocks within their box, the price between the bound
//          known and the best plan's; or without a price, where any cover from given counts will do.
// Source:  the covering programme of Gilmore and Gomory, Operations Research 9 (1961), in whole numbers; CP-SAT of OR-Tools
//          does the search: one worker, one seed, deterministic time.
// Cost:    milliseconds for a hundred patterns; bounded by the deterministic time given.
// Not:     the cheapest over patterns not in the pool.
using Google.OrTools.Sat;

namespace PanelService.Cutting.Search;

/// <summary>Whole plans over a pool of columns.</summary>
internal static class PoolProgramme
{
    private const string Briefly = ",cp_model_probing_level:0,max_presolve_iterations:1,cut_level:0";

    /// <summary>Looks for a plan cheaper than the best known.</summary>
    /// <param name="model">The model.</param>
    /// <param name="columns">The columns to choose from.</param>
    /// <param name="request">Demand, box, known bounds and the time allowed.</param>
    /// <param name="work">Where its work is counted.</param>
    /// <returns>A cheaper plan; null where none was found.</returns>
    public static List<ColumnUse>? Improve(Model model, IReadOnlyList<Column> columns, PoolRequest request, WorkMeter work)
    {
        var (programme, copies) = Covering(columns, request.Demand, request.Box, work);
        var price = LinearExpr.WeightedSum(copies, columns.Select(c => model.Stock(c.Stock).Price));
        programme.AddLinearConstraint(price, request.Bound, request.Below - 1);
        programme.Minimize(price);
        return Solve(programme, copies, columns, request.Effort, work).Uses;
    }

    /// <summary>Looks for any cover from given counts of stocks.</summary>
    /// <param name="columns">The columns to choose from.</param>
    /// <param name="demand">What is to be covered.</param>
    /// <param name="counts">At most so many of each stock.</param>
    /// <param name="effort">How far it goes.</param>
    /// <param name="work">Where its work is counted.</param>
    public static CoverAnswer Cover(
        IReadOnlyList<Column> columns, int[] demand, int[] counts, PoolEffort effort, WorkMeter work)
    {
        var (programme, copies) = Covering(columns, demand, new StockBox(new int[counts.Length], counts), work);
        return Solve(programme, copies, columns, effort, work);
    }

    private static (CpModel Programme, IntVar[] Copies) Covering(
        IReadOnlyList<Column> columns, int[] demand, StockBox box, WorkMeter work)
    {
        var programme = new CpModel();
        var copies = columns.Select(c => programme.NewIntVar(0, MostCopies(c, demand, box), "")).ToArray();
        for (int t = 0; t < demand.Length; t++)
        {
            work.Cancellation.ThrowIfCancellationRequested();
            programme.Add(LinearExpr.WeightedSum(copies, columns.Select(c => (long)c.Counts[t])) >= demand[t]);
        }

        for (int s = 0; s < box.Most.Length; s++)
        {
            if (box.Most[s] != StockBox.Unlimited || box.Least[s] > 0)
            {
                var used = LinearExpr.Sum(copies.Where((_, c) => columns[c].Stock == s));
                programme.AddLinearConstraint(used, box.Least[s], box.Most[s]);
            }
        }

        return (programme, copies);
    }

    private static CoverAnswer Solve(
        CpModel programme, IntVar[] copies, IReadOnlyList<Column> columns, PoolEffort effort, WorkMeter work)
    {
        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"num_workers:1,random_seed:1,max_deterministic_time:{effort.DeterministicTime},symmetry_level:0,linearization_level:2{(effort.AtOnce ? Briefly : "")}"),
        };
        using var stop = work.Cancellation.Register(solver.StopSearch);

        // A stop that came before the solver runs does not reach it.
        work.Cancellation.ThrowIfCancellationRequested();
        var status = solver.Solve(programme);
        work.Spend((long)(1000 + (1_000_000 * (solver.Response?.DeterministicTime ?? 0))));
        return status switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => new CoverAnswer(
                true, [.. copies.Select((variable, c) => new ColumnUse(columns[c], (int)solver.Value(variable))).Where(use => use.Copies > 0)]),
            CpSolverStatus.Infeasible => new CoverAnswer(false, null),
            _ => new CoverAnswer(null, null),
        };
    }

    private static int MostCopies(Column column, int[] demand, StockBox box)
    {
        int most = 1;
        for (int t = 0; t < demand.Length; t++)
        {
            if (column.Counts[t] > 0)
            {
                most = Math.Max(most, ((demand[t] - 1) / column.Counts[t]) + 1);
            }
        }

        return Math.Min(most, box.Most[column.Stock]);
    }
}

/// <summary>What a pool programme is asked.</summary>
/// <param name="Demand">What is to be covered.</param>
/// <param name="Box">How many of each stock may be used.</param>
/// <param name="Bound">No plan costs less.</param>
/// <param name="Below">Only plans cheaper than this are wanted.</param>
/// <param name="Effort">How far it goes.</param>
internal sealed record PoolRequest(int[] Demand, StockBox Box, long Bound, long Below, PoolEffort Effort);

/// <summary>How far a pool programme goes.</summary>
/// <param name="DeterministicTime">The most deterministic time, about a second each.</param>
/// <param name="AtOnce">Whether it begins at once: preparing and cutting planes take more of a short time than they save, but of
/// many sheets of a few formats they decide more.</param>
internal readonly record struct PoolEffort(double DeterministicTime, bool AtOnce);

/// <summary>Whether patterns cover a demand.</summary>
/// <param name="Covered">Whether they do; null where that was not found out.</param>
/// <param name="Uses">The cover found; null: none.</param>
internal sealed record CoverAnswer(bool? Covered, List<ColumnUse>? Uses);
