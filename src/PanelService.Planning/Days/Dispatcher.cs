// Problem: a first schedule of jobs with precedence, hands, spaces of the press and working hours; and, of given starts,
//          the same order moved as early as it goes.
// Idea:    always take the job that can start soonest; of several, the one before the longest way to the end. Starts then
//          never fall, so that who is free is known from the times hands and spaces get free alone. Where asked to fill the
//          day, of those the first that leaves a rest of the day which others of them can fill: sums as bits.
// Source:  parallel schedule generation: Kolisch, European Journal of Operational Research 90, 1996.
// Cost:    square of the number of jobs.
// Not:     the soonest end: it never waits for something better.
using System.Numerics;

namespace PanelService.Planning.Days;

/// <summary>Lays jobs one after the other. Lives for one problem; every call begins anew.</summary>
internal sealed class Dispatcher(BenchProblem problem)
{
    private readonly int[] _hands = new int[problem.Hands];
    private readonly int[] _spaces = new int[problem.Spaces];

    /// <summary>Lays by rule.</summary>
    /// <param name="rank">Per job: of jobs that can start at the same time, the lowest goes first.</param>
    /// <param name="fills">Whether a job is passed over that would leave the day a rest which no others fill.</param>
    /// <returns>Per job its start; null where the horizon is passed.</returns>
    public int[]? ByRank(IReadOnlyList<long> rank, bool fills = false)
    {
        var starts = Begin();
        var missing = problem.Jobs.Select(job => job.After.Length + job.AfterHands.Length).ToArray();
        var open = Enumerable.Range(0, starts.Length).Where(job => missing[job] == 0).ToList();
        while (open.Count > 0)
        {
            int at = 0;
            var best = (Start: int.MaxValue, Rank: long.MaxValue);
            for (int i = 0; i < open.Count; i++)
            {
                var here = (Earliest(open[i], starts), rank[open[i]]);
                (best, at) = here.CompareTo(best) < 0 ? (here, i) : (best, at);
            }

            at = fills ? Filling(open, starts, rank, best.Start) ?? at : at;
            int job = open[at];
            open[at] = open[^1];
            open.RemoveAt(open.Count - 1);
            if (!Take(job, best.Start, starts))
            {
                return null;
            }

            foreach (int next in problem.Followers[job])
            {
                if (--missing[next] == 0)
                {
                    open.Add(next);
                }
            }
        }

        return starts;
    }

    /// <summary>Lays in the order of given starts, each as early as it goes: none comes later than given.</summary>
    public int[] Earlier(int[] given)
    {
        var starts = Begin();
        foreach (int job in Enumerable.Range(0, given.Length).OrderBy(job => given[job]).ThenBy(job => job))
        {
            Take(job, Earliest(job, starts), starts);
        }

        return starts;
    }

    private int? Filling(List<int> open, int[] starts, IReadOnlyList<long> rank, int start)
    {
        int left = problem.Calendar.Left(start);
        int[] ready = [.. Enumerable.Range(0, open.Count).Where(i => Earliest(open[i], starts) == start).OrderByDescending(i => rank[open[i]]).ThenByDescending(i => open[i])];
        if (ready.Sum(i => (long)problem.Jobs[open[i]].Hands) <= left)
        {
            return null;
        }

        var within = (BigInteger.One << (left + 1)) - 1;
        var before = new BigInteger[ready.Length];
        var reached = BigInteger.One;
        for (int k = 0; k < ready.Length; k++)
        {
            before[k] = reached;
            reached |= (reached << problem.Jobs[open[ready[k]]].Hands) & within;
        }

        // The first in rank that is part of a fullest day together with others behind it.
        int most = (int)reached.GetBitLength() - 1;
        for (int k = ready.Length - 1; k >= 0; k--)
        {
            int rest = most - problem.Jobs[open[ready[k]]].Hands;
            if (rest >= 0 && !(before[k] >> rest).IsEven)
            {
                return ready[k];
            }
        }

        return null;
    }

    private int[] Begin()
    {
        Array.Clear(_hands);
        Array.Clear(_spaces);
        return new int[problem.Jobs.Length];
    }

    private int Earliest(int number, int[] starts)
    {
        var job = problem.Jobs[number];
        int from = _hands.Min();
        from = job.TakesSpace ? Math.Max(from, _spaces.Min()) : from;
        foreach (int before in job.After)
        {
            from = Math.Max(from, starts[before - 1] + problem.Jobs[before - 1].Hands + problem.Jobs[before - 1].Wait);
        }

        foreach (int before in job.AfterHands)
        {
            from = Math.Max(from, starts[before - 1] + problem.Jobs[before - 1].Hands);
        }

        return problem.Calendar.Fit(from, job.Hands);
    }

    private bool Take(int number, int start, int[] starts)
    {
        var job = problem.Jobs[number];
        starts[number] = start;
        Occupy(_hands, start + job.Hands);
        if (job.TakesSpace)
        {
            Occupy(_spaces, start + job.Hands + job.Wait);
        }

        return start + job.Hands + job.Wait <= problem.Calendar.Horizon;
    }

    private static void Occupy(int[] free, int until) => free[Array.IndexOf(free, free.Min())] = until;
}
