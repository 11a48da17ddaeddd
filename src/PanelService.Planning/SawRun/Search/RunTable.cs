using System.Collections.Immutable;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>
/// The part of a finished graph that runs at some settings can come through, in arrays, for asking thousands of times: does
/// this run cut all sheets up? One pass over the shapes from small to large tells of each the last step at which it may still be
/// there, and of that a split need only know its parts and the last time before that its setting comes.
/// </summary>
internal sealed class RunTable
{
    private const int Never = -1;

    private readonly int[] _first;
    private readonly int[] _roots;
    private readonly (int Near, int Far, int NearSetting, int FarSetting)[] _splits;
    private readonly int[] _latest;
    private readonly int[] _way;
    private int[] _before = [];

    /// <summary>Reads a graph.</summary>
    /// <param name="graph">The graph, finished.</param>
    /// <param name="roots">The sheets.</param>
    /// <param name="settings">The settings a run may have; a run names them by their place here.</param>
    public RunTable(CutGraph graph, ImmutableArray<CutShape> roots, int[] settings)
    {
        Settings = settings.Length;
        int[] places = new int[graph.Settings.Count];
        Array.Fill(places, -1);
        for (int i = 0; i < settings.Length; i++)
        {
            places[settings[i]] = i;
        }

        int PlaceOf(int setting) => setting < 0 ? -1 : places[setting];
        var ways = Ways(graph, split => PlaceOf(split.NearSetting) >= 0 || PlaceOf(split.FarSetting) >= 0);
        int[] numbers = Reached(graph, roots, ways);
        _latest = new int[numbers.DefaultIfEmpty(-1).Max() + 1];
        _way = new int[_latest.Length];
        _first = new int[_latest.Length + 1];
        var splits = new List<(int, int, int, int)>();
        foreach (var shape in graph.Shapes.Where(shape => numbers[shape.Index] >= 0))
        {
            _first[numbers[shape.Index]] = splits.Count;
            splits.AddRange(ways[shape.Index]!
                .Select(split => (NumberOf(split.Near), NumberOf(split.Far), PlaceOf(split.NearSetting), PlaceOf(split.FarSetting)))
                .Distinct());
        }

        _first[^1] = splits.Count;
        _splits = [.. splits];
        _roots = [.. roots.Where(root => !root.IsDone).Select(root => numbers[root.Index]).Distinct()];
        int NumberOf(CutShape? shape) => shape is null or { IsDone: true } ? -1 : numbers[shape.Index];
    }

    /// <summary>How many settings there are.</summary>
    public int Settings { get; }

    /// <summary>How much one pass looks at.</summary>
    public int Work => _splits.Length + _latest.Length;

    /// <summary>Whether a run cuts all sheets up.</summary>
    /// <param name="graph">The graph, finished.</param>
    /// <param name="roots">The sheets.</param>
    /// <param name="run">The graph's settings, in order.</param>
    public static bool CanCut(CutGraph graph, ImmutableArray<CutShape> roots, int[] run)
    {
        int[] settings = [.. run.Distinct()];
        return new SplitTable(graph, roots).CanCut(settings)
            && new RunTable(graph, roots, settings).Serves([.. run.Select(setting => Array.IndexOf(settings, setting))]);
    }

    /// <summary>Whether a run cuts all sheets up.</summary>
    /// <param name="run">Its settings, in order.</param>
    public bool Serves(List<int> run)
    {
        Note(run);
        int across = run.Count + 1;
        for (int shape = 0; shape < _latest.Length; shape++)
        {
            int latest = Never;
            for (int i = _first[shape]; i < _first[shape + 1]; i++)
            {
                var split = _splits[i];
                int until = Math.Min(split.Near < 0 ? run.Count - 1 : _latest[split.Near], split.Far < 0 ? run.Count - 1 : _latest[split.Far]);
                int at = Math.Max(
                    split.NearSetting < 0 ? Never : _before[(split.NearSetting * across) + until + 1],
                    split.FarSetting < 0 ? Never : _before[(split.FarSetting * across) + until + 1]);
                if (at > latest)
                {
                    (latest, _way[shape]) = (at, i);
                }
            }

            _latest[shape] = latest;
        }

        return Array.TrueForAll(_roots, root => _latest[root] != Never);
    }

    /// <summary>
    /// Whether all sheets can be cut up when some settings come in this order and no more often, all others in between and as often as
    /// one likes. Where not, a run has some of these more often: that is what bounds of its length are made of.
    /// </summary>
    /// <param name="rare">The settings that come seldom, in order.</param>
    public bool ServesWithRare(ReadOnlySpan<int> rare)
    {
        // Even times are for the others, odd ones for the rare in their order.
        int end = 2 * rare.Length;
        for (int shape = 0; shape < _latest.Length; shape++)
        {
            int latest = Never;
            for (int i = _first[shape]; latest < end && i < _first[shape + 1]; i++)
            {
                var split = _splits[i];
                int until = Math.Min(split.Near < 0 ? end : _latest[split.Near], split.Far < 0 ? end : _latest[split.Far]);
                latest = Math.Max(latest, Math.Max(LastTime(split.NearSetting, until, rare), LastTime(split.FarSetting, until, rare)));
            }

            _latest[shape] = latest;
        }

        return Array.TrueForAll(_roots, root => _latest[root] != Never);
    }

    private static int LastTime(int setting, int until, ReadOnlySpan<int> rare)
    {
        if (setting < 0 || until == Never || !rare.Contains(setting))
        {
            return setting < 0 || until == Never ? Never : until - (until % 2);
        }

        int time = until % 2 == 0 ? until - 1 : until;
        while (time > 0 && rare[time / 2] != setting)
        {
            time -= 2;
        }

        return time > 0 ? time : Never;
    }

    /// <summary>Of a run that serves, as just asked, the steps that one way of cutting everything up needs.</summary>
    /// <param name="run">The run.</param>
    public List<int> Needed(List<int> run)
    {
        bool[] needed = new bool[run.Count];
        bool[] seen = new bool[_latest.Length];
        foreach (int root in _roots)
        {
            seen[root] = true;
        }

        for (int shape = _latest.Length - 1; shape >= 0; shape--)
        {
            if (seen[shape])
            {
                needed[_latest[shape]] = true;
                var split = _splits[_way[shape]];
                See(split.Near);
                See(split.Far);
            }
        }

        return [.. run.Where((_, step) => needed[step])];

        void See(int part)
        {
            if (part >= 0)
            {
                seen[part] = true;
            }
        }
    }

    /// <summary>Notes per setting and step when the setting comes last up to there.</summary>
    private void Note(List<int> run)
    {
        int across = run.Count + 1;
        if (_before.Length < across * Settings)
        {
            _before = new int[across * Settings];
        }

        for (int setting = 0; setting < Settings; setting++)
        {
            int last = Never;
            _before[setting * across] = Never;
            for (int step = 0; step < run.Count; step++)
            {
                last = run[step] == setting ? step : last;
                _before[(setting * across) + step + 1] = last;
            }
        }
    }

    /// <summary>Per shape the splits at some settings that leave what can be cut up at them; null: the shape cannot be.</summary>
    private static List<CutSplit>?[] Ways(CutGraph graph, Func<CutSplit, bool> isAllowed)
    {
        var ways = new List<CutSplit>?[graph.Shapes.Count];
        foreach (var shape in graph.Shapes.Where(shape => !shape.IsDone))
        {
            List<CutSplit> own = [.. shape.Splits.Where(split => isAllowed(split) && CanBeCut(split.Near) && CanBeCut(split.Far))];
            ways[shape.Index] = own.Count > 0 ? own : null;
        }

        return ways;

        bool CanBeCut(CutShape? part) => part is null || part.IsDone || ways[part.Index] is not null;
    }

    /// <summary>New numbers for the shapes that the sheets may come to, still from small to large; -1 for the others.</summary>
    private static int[] Reached(CutGraph graph, ImmutableArray<CutShape> roots, List<CutSplit>?[] ways)
    {
        bool[] reached = new bool[graph.Shapes.Count];
        foreach (var root in roots.Where(root => !root.IsDone))
        {
            reached[root.Index] = ways[root.Index] is not null
                ? true
                : throw new ArgumentException("At these settings a sheet cannot be cut up.", nameof(ways));
        }

        for (int shape = graph.Shapes.Count - 1; shape >= 0; shape--)
        {
            foreach (var part in reached[shape] ? ways[shape]!.SelectMany(split => new[] { split.Near, split.Far }).OfType<CutShape>() : [])
            {
                reached[part.Index] |= !part.IsDone;
            }
        }

        int next = 0;
        return [.. reached.Select(one => one ? next++ : -1)];
    }
}
