// Problem: the least end of jobs with precedence, hands, spaces of the press and working hours; proven, or with a bound.
// Idea:    an interval per job; hands and spaces cumulative; starts only where the work fits into a day's hours, and
//          only between what its head and tail leave open under the end known. Minimise the end.
// Source:  CP-SAT of OR-Tools does the search: one worker, a fixed seed, deterministic time, a hint from the best schedule known.
// Cost:    milliseconds where the bound meets the first schedule; else up to the time given.
// Not:     a proof where the time given does not do: then the bound is the best one reached.
using System.Globalization;
using Google.OrTools.Sat;
using Google.OrTools.Util;

namespace PanelService.Planning.Days;

/// <summary>The least end by CP-SAT.</summary>
internal static class ScheduleModel
{
    /// <summary>Looks for a sooner end than known, and for a bound.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="known">A schedule.</param>
    /// <param name="least">A bound.</param>
    /// <param name="deterministicTime">How much work, about a second each.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <returns>The best schedule known, and what none ends before.</returns>
    public static (int[] Starts, int Least) Find(
        BenchProblem problem, int[] known, int least, double deterministicTime, CancellationToken cancellation)
    {
        int most = problem.FinishOf(known);
        var model = new CpModel();
        var end = model.NewIntVar(least, most, "end");
        var starts = problem.Jobs.Select((_, i) => model.NewIntVarFromDomain(Open(problem, i, most), "")).ToArray();
        AddOrder(problem, model, starts, end);
        AddLimits(problem, model, starts);
        for (int i = 0; i < starts.Length; i++)
        {
            model.AddHint(starts[i], known[i]);
        }

        model.Minimize(end);
        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_deterministic_time:{deterministicTime},symmetry_level:0"),
        };
        using var stop = cancellation.Register(solver.StopSearch);
        var status = solver.Solve(model);
        bool found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        int bound = status == CpSolverStatus.Unknown && solver.BestObjectiveBound < least ? least : Bound(solver);
        return (found ? [.. starts.Select(start => (int)solver.Value(start))] : known, Math.Clamp(bound, least, most));
    }

    // Whole numbers come out of the solver as they are; what is between two is rounded up.
    private static int Bound(CpSolver solver) => (int)Math.Ceiling(Math.Max(0, solver.BestObjectiveBound) - 1e-6);

    private static Domain Open(BenchProblem problem, int job, int most)
    {
        int first = problem.Heads[job], last = most - problem.Tails[job], hands = problem.Jobs[job].Hands;
        long[][] places = [.. problem.Calendar.Windows()
            .Select(window => new long[] { Math.Max(window.From, first), Math.Min(window.To - hands, last) })
            .Where(place => place[0] <= place[1])];
        return Domain.FromIntervals(places);
    }

    private static void AddOrder(BenchProblem problem, CpModel model, IntVar[] starts, IntVar end)
    {
        for (int i = 0; i < starts.Length; i++)
        {
            var job = problem.Jobs[i];
            model.Add(starts[i] + job.Hands + job.Wait <= end);
            foreach (int before in job.After)
            {
                model.Add(starts[i] >= starts[before - 1] + problem.Jobs[before - 1].Hands + problem.Jobs[before - 1].Wait);
            }

            foreach (int before in job.AfterHands)
            {
                model.Add(starts[i] >= starts[before - 1] + problem.Jobs[before - 1].Hands);
            }
        }
    }

    private static void AddLimits(BenchProblem problem, CpModel model, IntVar[] starts)
    {
        var hands = model.AddCumulative(problem.Hands);
        var spaces = model.AddCumulative(problem.Spaces);
        for (int i = 0; i < starts.Length; i++)
        {
            var job = problem.Jobs[i];
            hands.AddDemand(model.NewFixedSizeIntervalVar(starts[i], job.Hands, ""), 1);
            if (job.TakesSpace)
            {
                spaces.AddDemand(model.NewFixedSizeIntervalVar(starts[i], job.Hands + job.Wait, ""), 1);
            }
        }
    }
}
