using PanelService.Planning.Days;

namespace PanelService.Planning.Tests.Days;

/// <summary>The soonest end of a handful of jobs, by trying every start on the hour. Shares nothing with the scheduler but the jobs.</summary>
internal sealed class ByForce(BenchProblem problem)
{
    private const int Step = 60;

    private readonly int[] _starts = new int[problem.Jobs.Length];
    private int _best;

    /// <summary>Tries.</summary>
    /// <param name="known">An end that is known to be possible.</param>
    public int SoonestEnd(int known)
    {
        _best = known;
        Place(0, 0);
        return _best;
    }

    private void Place(int number, int end)
    {
        if (number == problem.Jobs.Length)
        {
            _best = Math.Min(_best, end);
            return;
        }

        var job = problem.Jobs[number];
        for (int start = 0; start + job.Hands + job.Wait < _best; start += Step)
        {
            _starts[number] = start;
            if (ScheduleLimits.IsKept(problem, _starts, number))
            {
                Place(number + 1, Math.Max(end, start + job.Hands + job.Wait));
            }
        }
    }
}
