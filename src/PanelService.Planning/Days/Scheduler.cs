using PanelService.Cutting;

namespace PanelService.Planning.Days;

/// <summary>
/// The least end: schedules laid by several rules against four bounds, and CP-SAT where they do not meet. Work is
/// counted, never timed.
/// </summary>
internal static class Scheduler
{
    // Past this the solver's model is too large to gain anything in the time given.
    private const int MostJobsForSolver = 250;
    private const int MostJobsForSteady = 100;
    private const int MostJobsForAllRules = 1000;
    private const int MostShaken = 60;
    private const long MostPairsShaken = 1_500_000;
    private const int Seed = 1;

    /// <summary>Schedules.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="effort">How much work.</param>
    /// <param name="cancellation">Ends the search; the first schedule then stands.</param>
    /// <returns>The starts, null where no schedule ends within the horizon, and what none ends before.</returns>
    public static (int[]? Starts, int Least) Find(BenchProblem problem, Effort effort, CancellationToken cancellation)
    {
        var hours = new HandHours(problem);
        int least = ScheduleBound.Of(problem, hours);
        if (First(problem, least) is not { } starts)
        {
            return (null, least);
        }

        least = DeadlineBound.Of(problem, hours, least, problem.FinishOf(starts));
        starts = effort == Effort.Quick ? starts : Shaken(problem, starts, least, cancellation);

        if (problem.FinishOf(starts) == least || effort == Effort.Quick || problem.Jobs.Length > MostJobsForSolver || cancellation.IsCancellationRequested)
        {
            return (starts, least);
        }

        (starts, least) = ScheduleModel.Find(problem, starts, least, WorkFor(effort, problem), cancellation);
        return (new Dispatcher(problem).Earlier(starts), least);
    }

    // A large batch's first schedule is within a hundredth of its bound, and the solver slow.
    private static double WorkFor(Effort effort, BenchProblem problem) =>
        effort == Effort.Thorough ? 8 : problem.Jobs.Length > MostJobsForSteady ? 0.15 : 0.5;

    private static int[]? First(BenchProblem problem, int least)
    {
        var dispatcher = new Dispatcher(problem);
        int[]? best = null;
        bool[] ways = problem.Jobs.Length <= MostJobsForAllRules ? [false, true] : [false];
        foreach (var (rank, fills) in Ranks(problem).SelectMany(rank => ways.Select(fills => (rank, fills))))
        {
            var starts = dispatcher.ByRank(rank, fills);
            best = starts is not null && (best is null || problem.FinishOf(starts) < problem.FinishOf(best)) ? starts : best;
            if (best is not null && problem.FinishOf(best) == least)
            {
                break;
            }
        }

        return best;
    }

    /// <summary>Rules with their ranks stretched by chance, the days filled: near the bound a few minutes are lost or won so.</summary>
    private static int[] Shaken(BenchProblem problem, int[] best, int least, CancellationToken cancellation)
    {
        var random = new Random(Seed);
        var dispatcher = new Dispatcher(problem);
        long[][] ranks = [.. Ranks(problem)];
        long tries = Math.Min(MostShaken, MostPairsShaken / Math.Max(1, (long)problem.Jobs.Length * problem.Jobs.Length));
        for (int i = 0; i < tries && problem.FinishOf(best) > least && !cancellation.IsCancellationRequested; i++)
        {
            long[] rank = [.. ranks[i % ranks.Length].Select(one => (long)(one * (1 + (random.NextDouble() / 2))))];
            var starts = dispatcher.ByRank(rank, fills: true);
            best = starts is not null && problem.FinishOf(starts) < problem.FinishOf(best) ? starts : best;
        }

        return best;
    }

    // The longest way to the end first; what goes into the press first; as the jobs are numbered.
    private static IEnumerable<long[]> Ranks(BenchProblem problem)
    {
        yield return [.. problem.Tails.Select(tail => -(long)tail)];
        if (problem.Jobs.Length <= MostJobsForAllRules)
        {
            yield return [.. problem.Tails.Select((tail, i) => problem.Jobs[i].TakesSpace ? -1_000_000L - tail : -(long)tail)];
            yield return [.. problem.Jobs.Select((job, i) => (-1000L * problem.Tails[i]) - job.Wait)];
            yield return [.. problem.Jobs.Select(job => (long)job.Number)];
            yield return [.. problem.Jobs.Select((job, i) => (-1000L * problem.Tails[i]) + job.Hands)];
        }
    }
}
