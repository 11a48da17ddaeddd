// Problem: no schedule is over before when, nights and days off counted on the way to the end as well?
// Idea:    suppose that all is over by some moment. Then each job has a latest start, which follows backwards through what waits
//          for it and through the working hours. Jobs that must lie between two moments need their hand-minutes there; where
//          the hours between hold fewer, nothing is over by then. The soonest end that is not refuted so is a bound.
// Source:  destructive bounds: Klein and Scholl, European Journal of Operational Research 112, 1999; interval energy: Baptiste,
//          Le Pape and Nuijten, Constraint-Based Scheduling, 2001.
// Cost:    for each end tried the jobs times their earliest starts, of which some hundred thousand pairs are looked at.
// Not:     the end of the best schedule: a job may be parted in the reckoning, and the press counts by its waits alone.
namespace PanelService.Planning.Days;

/// <summary>A lower bound of the end, by what cannot be.</summary>
internal sealed class DeadlineBound
{
    private const int MostPairs = 400_000;

    private readonly BenchProblem _problem;
    private readonly HandHours _hours;
    private readonly int[] _froms;

    private DeadlineBound(BenchProblem problem, HandHours hours)
    {
        (_problem, _hours) = (problem, hours);
        int[] heads = [.. problem.Heads.Distinct().Order()];
        int every = Math.Max(1, (int)((long)heads.Length * problem.Jobs.Length / MostPairs));
        _froms = [.. heads.Where((_, i) => i % every == 0)];
    }

    /// <summary>No schedule is over sooner.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="hours">What hands can do.</param>
    /// <param name="least">A bound known.</param>
    /// <param name="most">The end of a schedule known.</param>
    public static int Of(BenchProblem problem, HandHours hours, int least, int most)
    {
        // What refutes an end refutes every sooner one.
        var bound = new DeadlineBound(problem, hours);
        while (least < most)
        {
            int middle = least + ((most - least) / 2);
            (least, most) = bound.Refutes(middle) ? (middle + 1, most) : (least, middle);
        }

        return least;
    }

    private bool Refutes(int end)
    {
        if (LatestStarts(end) is not { } latest)
        {
            return true;
        }

        int[] byDue = [.. Enumerable.Range(0, latest.Length).OrderBy(job => latest[job] + _problem.Jobs[job].Hands)];
        return _froms.Any(from => IsTooMuch(from, byDue, latest));
    }

    private int[]? LatestStarts(int end)
    {
        var latest = new int[_problem.Jobs.Length];
        for (int i = latest.Length - 1; i >= 0; i--)
        {
            var job = _problem.Jobs[i];
            int due = end - job.Wait;
            foreach (int next in _problem.Followers[i])
            {
                due = Math.Min(due, latest[next] - (_problem.Jobs[next].After.Contains(job.Number) ? job.Wait : 0));
            }

            latest[i] = _problem.Calendar.FitBefore(due, job.Hands);
            if (latest[i] < _problem.Heads[i])
            {
                return null;
            }
        }

        return latest;
    }

    private bool IsTooMuch(int from, int[] byDue, int[] latest)
    {
        long work = 0;
        int counted = from;
        long room = 0;
        foreach (int job in byDue)
        {
            if (_problem.Heads[job] < from)
            {
                continue;
            }

            work += _problem.Jobs[job].Hands;
            int due = latest[job] + _problem.Jobs[job].Hands;
            if (work > room && due > counted)
            {
                (counted, room) = (due, _hours.Between(from, due));
            }

            if (work > room)
            {
                return true;
            }
        }

        return false;
    }
}
