// Problem: few settings at which all sheets can be cut up.
// Idea:    whether a set of settings serves is monotone: more never hurt. From all of them the ones used least are dropped
//          first, each tried once; what is left cannot spare any. Then again and again a few at random
//          are added and the others dropped in random order; a set that is no larger is gone on from. At last settings that
//          are no panel's size give way to such as are, where the set then still serves: panels cut between fence and blade match.
// Cost:    one pass over the graph for each drop tried; the passes are limited by the work they do.
// Not:     the fewest; SettingsBound says how far from it.
namespace PanelService.Planning.SawRun.Search;

/// <summary>Looks for few settings that serve.</summary>
internal sealed class FewSettings
{
    private const int MostAlike = 12;

    // Over all sets found; each is a pass over the graph.
    private const int MostSwaps = 400;

    private readonly SplitTable _table;
    private readonly bool[] _solved;
    private readonly Xorshift _random = new(88172645463325252);
    private readonly CancellationToken _cancellation;
    private readonly List<int[]> _best = [];
    private readonly int[] _panels;
    private long _work;
    private int _swaps = MostSwaps;

    private FewSettings(SplitTable table, int[] panels, long work, CancellationToken cancellation)
    {
        _table = table;
        _panels = panels;
        _solved = new bool[table.Shapes];
        _work = work;
        _cancellation = cancellation;
    }

    /// <summary>Looks.</summary>
    /// <param name="table">The graph.</param>
    /// <param name="panels">Per setting: how many panels measure just that, in width or height.</param>
    /// <param name="work">How much may be looked at.</param>
    /// <param name="cancellation">Ends it with what was found.</param>
    /// <returns>Several sets of the smallest size found, those for the most panels first, each rising; empty where even all
    /// settings do not serve.</returns>
    public static List<int[]> Find(SplitTable table, int[] panels, long work, CancellationToken cancellation)
    {
        var search = new FewSettings(table, panels, work, cancellation);
        return [.. search.Find()
            .Select(search.Matching)
            .DistinctBy(set => string.Join(',', set))
            .OrderByDescending(set => set.Sum(setting => panels[setting]))];
    }

    private List<int[]> Find()
    {
        bool[] on = new bool[_table.Settings];
        Array.Fill(on, true);
        if (!Serves(on))
        {
            return [];
        }

        int[] uses = _table.Uses();
        Drop(on, [.. Enumerable.Range(0, on.Length).OrderBy(setting => uses[setting])]);
        Keep(on);
        while (_work > 0 && _best[0].Length > 1 && !_cancellation.IsCancellationRequested)
        {
            bool[] next = [.. on];
            Vary(next);
            if (next.Count(one => one) <= _best[0].Length)
            {
                on = next;
                Keep(on);
            }
        }

        return _best;
    }

    /// <summary>The set with settings for few panels exchanged for such as are for more, as far as it still serves.</summary>
    private int[] Matching(int[] set)
    {
        bool[] on = new bool[_table.Settings];
        Array.ForEach(set, setting => on[setting] = true);
        foreach (int panel in Enumerable.Range(0, on.Length).Where(setting => _panels[setting] > 0 && !on[setting]).OrderByDescending(setting => _panels[setting]))
        {
            int[] lesser = [.. Chosen(on).Where(setting => _panels[setting] < _panels[panel]).OrderBy(setting => _panels[setting])];
            on[panel] = true;
            on[panel] = Array.Exists(lesser, setting => CanSpare(on, setting));
        }

        return Chosen(on);
    }

    private bool CanSpare(bool[] on, int setting)
    {
        on[setting] = false;
        bool spared = _swaps-- > 0 && !_cancellation.IsCancellationRequested && Serves(on);
        on[setting] = !spared;
        return spared;
    }

    private static int[] Chosen(bool[] on) => [.. Enumerable.Range(0, on.Length).Where(setting => on[setting])];

    private void Vary(bool[] on)
    {
        var before = Chosen(on);
        int more = 1 + _random.Below(4);
        var added = new List<int>();
        for (int i = 0; i < more; i++)
        {
            int setting = _random.Below(on.Length);
            if (!on[setting])
            {
                on[setting] = true;
                added.Add(setting);
            }
        }

        _random.Shuffle(before);
        Drop(on, [.. before, .. added]);
    }

    private void Drop(bool[] on, IEnumerable<int> settings)
    {
        foreach (int setting in settings)
        {
            // A stop keeps what serves so far.
            on[setting] = _cancellation.IsCancellationRequested;
            if (!on[setting] && !Serves(on))
            {
                on[setting] = true;
            }
        }
    }

    private bool Serves(bool[] on)
    {
        _work -= _table.Work;
        return _table.CanCut(on, _solved);
    }

    private void Keep(bool[] on)
    {
        int[] settings = Chosen(on);
        if (_best.Count > 0 && settings.Length < _best[0].Length)
        {
            _best.Clear();
        }

        if (_best.Count < MostAlike && !_best.Exists(known => known.AsSpan().SequenceEqual(settings)))
        {
            _best.Add(settings);
        }
    }
}
