// Problem: so many settings do; which of them in which order, coming back to one as seldom as possible?
// Idea:    a run serves or not (RunTable), and more steps never hurt. All settings again and again in some order serve at last;
//          of that the steps that one way of cutting needs are kept, and every one that can be spared is dropped. Then
//          again and again some steps are put in at random and all are tried to be dropped in random order; a run that is no
//          longer, at no more settings, is gone on from.
//          Where no run of these settings is shorter (RareSettings), it ends at once.
// Cost:    a pass over what is left of the graph at these settings for each drop tried; limited by the work they do.
// Not:     the shortest; no run is shorter than the number of settings, and FewestSteps says more.
using System.Collections.Immutable;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>Puts settings in an order.</summary>
internal sealed class RunSequence
{
    // Asking how short runs can be takes a pass for each two settings, both ways, and no stop is heard meanwhile.
    private const int MostAsked = 12;
    private const long MostLookedAt = 100_000_000;

    private readonly RunTable _table;
    private readonly int[] _settings;
    private readonly Xorshift _random = new(2463534242);
    private readonly CancellationToken _cancellation;
    private long _work;

    private RunSequence(RunTable table, int[] settings, long work, CancellationToken cancellation)
    {
        _table = table;
        _settings = settings;
        _work = work;
        _cancellation = cancellation;
    }

    /// <summary>Looks for a short run.</summary>
    /// <param name="graph">The graph, finished.</param>
    /// <param name="roots">The sheets.</param>
    /// <param name="sets">Sets of settings, all as large, at each of which all sheets can be cut up.</param>
    /// <param name="work">How much may be looked at.</param>
    /// <param name="cancellation">Ends it with what was found.</param>
    /// <returns>The settings in the order of the run.</returns>
    public static int[] Find(CutGraph graph, ImmutableArray<CutShape> roots, IReadOnlyList<int[]> sets, long work, CancellationToken cancellation)
    {
        int[] all = [.. sets.SelectMany(set => set).Distinct().Order()];
        var search = new RunSequence(new RunTable(graph, roots, all), all, work, cancellation);
        int Least() => sets.Min(set => new RareSettings(new RunTable(graph, roots, set)).LeastSteps);
        return search.Find([.. sets.Select(set => set.Select(setting => Array.BinarySearch(all, setting)).ToArray())], Least);
    }

    private bool Spent => _work <= 0 || _cancellation.IsCancellationRequested;

    private int[] Find(int[][] sets, Func<int> leastSteps)
    {
        int most = sets[0].Length;
        List<int>? best = null;
        foreach (int[] set in sets.TakeWhile(_ => best is null || !Spent))
        {
            var run = First(set);
            best = best is null || run.Count < best.Count ? run : best;
        }

        bool isSoonAsked = sets.Length <= MostAsked && (long)sets.Length * most * most * _table.Work <= MostLookedAt;
        int least = best!.Count == most || Spent || !isSoonAsked ? most : leastSteps();
        while (!Spent && best.Count > least)
        {
            var next = Varied(best);
            if (next.Count <= best.Count && next.Distinct().Count() <= most)
            {
                best = next;
            }
        }

        return [.. best.Select(place => _settings[place])];
    }

    private List<int> First(int[] set)
    {
        _work -= _table.Work;
        List<int> run = [.. Enumerable.Repeat(set, _table.TimesOver(set)).SelectMany(once => once)];
        return Serves(run)
            ? Spare(_table.Needed(run))
            : throw new InvalidOperationException("So many times over, these settings were said to serve.");
    }

    private List<int> Varied(List<int> run)
    {
        var next = run.ToList();
        for (int more = 1 + _random.Below(4); more > 0; more--)
        {
            int setting = _random.Below(8) == 0 ? _random.Below(_table.Settings) : run[_random.Below(run.Count)];
            next.Insert(_random.Below(next.Count + 1), setting);
        }

        return Spare(next);
    }

    /// <summary>Drops every step that can be spared, in random order, as long as there is work left.</summary>
    private List<int> Spare(List<int> run)
    {
        int[] order = [.. Enumerable.Range(0, run.Count)];
        _random.Shuffle(order);
        bool[] dropped = new bool[run.Count];
        foreach (int step in order.TakeWhile(_ => !Spent))
        {
            dropped[step] = true;
            dropped[step] = Serves([.. run.Where((_, i) => !dropped[i])]);
        }

        return [.. run.Where((_, i) => !dropped[i])];
    }

    private bool Serves(List<int> run)
    {
        _work -= _table.Work;
        return _table.Serves(run);
    }
}
