using PanelService.Planning.Days;

namespace PanelService.Planning.Tests.Days;

/// <summary>What every schedule keeps: nothing before what it needs, hands and press never over their number, never outside working hours.</summary>
internal static class ScheduleLimits
{
    public static void AssertKept(BenchProblem problem, int[] starts)
    {
        for (int job = 0; job < starts.Length; job++)
        {
            Assert.True(IsKept(problem, starts, job), $"job {job + 1} at {starts[job]}");
        }
    }

    /// <summary>Whether a job's place among those before it breaks nothing.</summary>
    public static bool IsKept(BenchProblem problem, int[] starts, int number)
    {
        var job = problem.Jobs[number];
        int start = starts[number];
        return job.After.All(before => starts[before - 1] + problem.Jobs[before - 1].Hands + problem.Jobs[before - 1].Wait <= start)
            && job.AfterHands.All(before => starts[before - 1] + problem.Jobs[before - 1].Hands <= start)
            && problem.Calendar.Windows().Any(day => day.From <= start && start + job.Hands <= day.To)
            && MostAtOnce(problem, starts, number, other => (starts[other], starts[other] + problem.Jobs[other].Hands)) <= problem.Hands
            && (!job.TakesSpace || MostAtOnce(problem, starts, number, other => problem.Jobs[other].TakesSpace
                ? (starts[other], starts[other] + problem.Jobs[other].Hands + problem.Jobs[other].Wait)
                : (0, 0)) <= problem.Spaces);
    }

    // Most at once within a job's own time: looked at where one of those up to it begins.
    private static int MostAtOnce(BenchProblem problem, int[] starts, int number, Func<int, (int From, int To)> time)
    {
        var (from, to) = time(number);
        var all = Enumerable.Range(0, number + 1).Select(time).Where(other => other.From < to && other.To > from).ToList();
        return all.Select(one => Math.Max(one.From, from)).Max(at => all.Count(other => other.From <= at && other.To > at));
    }
}
