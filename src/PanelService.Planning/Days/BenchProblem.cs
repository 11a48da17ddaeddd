using System.Collections.Immutable;

namespace PanelService.Planning.Days;

/// <summary>Jobs to be scheduled. A job's number is its place, from 1; what it waits for stands before it.</summary>
internal sealed class BenchProblem
{
    /// <summary>States the problem.</summary>
    /// <param name="jobs">The jobs.</param>
    /// <param name="calendar">When hands work.</param>
    /// <param name="hands">How many pairs.</param>
    /// <param name="spaces">How many stacks stand under weight at once.</param>
    public BenchProblem(ImmutableArray<BenchJob> jobs, WorkCalendar calendar, int hands, int spaces)
    {
        (Jobs, Calendar, Hands, Spaces) = (jobs, calendar, hands, spaces);
        var followers = jobs.Select(_ => new List<int>()).ToArray();
        foreach (var job in jobs)
        {
            foreach (int before in job.After.Concat(job.AfterHands))
            {
                followers[before - 1].Add(job.Number - 1);
            }
        }

        Followers = [.. followers.Select(list => list.ToImmutableArray())];
        Tails = TailsOf();
        Heads = HeadsOf();
    }

    /// <summary>The jobs.</summary>
    public ImmutableArray<BenchJob> Jobs { get; }

    /// <summary>When hands work.</summary>
    public WorkCalendar Calendar { get; }

    /// <summary>How many pairs of hands.</summary>
    public int Hands { get; }

    /// <summary>How many spaces.</summary>
    public int Spaces { get; }

    /// <summary>Per job, by place: those that wait for it.</summary>
    public ImmutableArray<ImmutableArray<int>> Followers { get; }

    /// <summary>Per job: from its start to the end of all at the least.</summary>
    public ImmutableArray<int> Tails { get; }

    /// <summary>Per job: its earliest start, were hands and spaces without limit.</summary>
    public ImmutableArray<int> Heads { get; }

    /// <summary>When all is over.</summary>
    public int FinishOf(int[] starts) => Jobs.Select((job, i) => starts[i] + job.Hands + job.Wait).DefaultIfEmpty(0).Max();

    private ImmutableArray<int> TailsOf()
    {
        var tails = new int[Jobs.Length];
        for (int i = Jobs.Length - 1; i >= 0; i--)
        {
            var job = Jobs[i];
            tails[i] = job.Hands + job.Wait;
            foreach (int next in Followers[i])
            {
                bool whole = Jobs[next].After.Contains(job.Number);
                tails[i] = Math.Max(tails[i], (whole ? job.Hands + job.Wait : job.Hands) + tails[next]);
            }
        }

        return [.. tails];
    }

    private ImmutableArray<int> HeadsOf()
    {
        var heads = new int[Jobs.Length];
        for (int i = 0; i < heads.Length; i++)
        {
            var job = Jobs[i];
            int from = job.After.Select(before => heads[before - 1] + Jobs[before - 1].Hands + Jobs[before - 1].Wait)
                .Concat(job.AfterHands.Select(before => heads[before - 1] + Jobs[before - 1].Hands))
                .DefaultIfEmpty(0).Max();
            heads[i] = Calendar.Fit(from, job.Hands);
        }

        return [.. heads];
    }
}
