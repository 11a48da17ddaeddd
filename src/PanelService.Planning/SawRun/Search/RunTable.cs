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
    private readonly int[] _from;
    private int[] _steps = [];

    /// <summary>Reads a graph.</summary>
    /// <param name="graph">The graph, finished.</param>
    /// <param name="roots">The sheets.</param>
    /// <param name="settings">The settings a run may have; a run names them by their place here.</param>
    public RunTable(CutGraph graph, ImmutableArray<CutShape> roots, int[] settings)
    {
        Settings = settings.Length;
        _from = new int[Settings + 1];
        int[] places = PlacesIn(settings, graph.Settings.Count);

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
        return Serve(new OneRun(_from, _steps, run.Count - 1));
    }

    /// <summary>How many times over some settings have to come, always in the same order, until all sheets are cut up.</summary>
    /// <param name="settings">The settings, at which all sheets can be cut up.</param>
    public int TimesOver(int[] settings)
    {
        if (_roots.Length == 0)
        {
            return 1;
        }

        var rounds = new Rounds(PlacesIn(settings, Settings), settings.Length);
        return Serve(rounds)
            ? rounds.From(_roots.Min(root => _latest[root]))
            : throw new ArgumentException("At these settings a sheet cannot be cut up.", nameof(settings));
    }

    /// <summary>
    /// Whether all sheets can be cut up when some settings come in this order and no more often, all others in between and as often as
    /// one likes. Where not, a run has some of these more often: that is what bounds of its length are made of.
    /// </summary>
    /// <param name="rare">The settings that come seldom, in order.</param>
    public bool ServesWithRare(ReadOnlySpan<int> rare) => Serve(new AmongOthers(rare));

    /// <summary>Per setting its place in a list; -1: it is not there.</summary>
    private static int[] PlacesIn(int[] settings, int all)
    {
        int[] places = new int[all];
        Array.Fill(places, -1);
        for (int i = 0; i < settings.Length; i++)
        {
            places[settings[i]] = i;
        }

        return places;
    }

    private bool Serve<TTimes>(TTimes times)
        where TTimes : struct, ITimes, allows ref struct
    {
        for (int shape = 0; shape < _latest.Length; shape++)
        {
            int latest = Never;
            for (int i = _first[shape]; latest < times.End && i < _first[shape + 1]; i++)
            {
                var split = _splits[i];
                int until = Math.Min(split.Near < 0 ? times.End : _latest[split.Near], split.Far < 0 ? times.End : _latest[split.Far]);
                int at = until == Never ? Never : Math.Max(
                    split.NearSetting < 0 ? Never : times.Last(split.NearSetting, until),
                    split.FarSetting < 0 ? Never : times.Last(split.FarSetting, until));
                if (at > latest)
                {
                    (latest, _way[shape]) = (at, i);
                }
            }

            _latest[shape] = latest;
        }

        return Array.TrueForAll(_roots, root => _latest[root] != Never);
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

    /// <summary>Notes per setting the steps at which it comes.</summary>
    private void Note(List<int> run)
    {
        Array.Clear(_from);
        foreach (int setting in run)
        {
            _from[setting + 1]++;
        }

        for (int setting = 0; setting < Settings; setting++)
        {
            _from[setting + 1] += _from[setting];
        }

        // Filled from behind, each end becomes the start of its own.
        _steps = _steps.Length < run.Count ? new int[run.Count] : _steps;
        for (int step = run.Count - 1; step >= 0; step--)
        {
            _steps[--_from[run[step] + 1]] = step;
        }

        Array.Copy(_from, 1, _from, 0, Settings);
        _from[Settings] = run.Count;
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

    /// <summary>When settings come.</summary>
    private interface ITimes
    {
        /// <summary>The last time there is.</summary>
        int End { get; }

        /// <summary>The last time that a setting comes up to then, or <see cref="Never"/>.</summary>
        int Last(int setting, int until);
    }

    /// <summary>A run by the steps of each of its settings: few for each, so that from behind they are soon found.</summary>
    private readonly struct OneRun(int[] from, int[] steps, int end) : ITimes
    {
        public int End => end;

        public int Last(int setting, int until)
        {
            int i = from[setting + 1] - 1;
            while (i >= from[setting] && steps[i] > until)
            {
                i--;
            }

            return i >= from[setting] ? steps[i] : Never;
        }
    }

    /// <summary>Settings that come again and again in the same order, as often as there are numbers for.</summary>
    private readonly struct Rounds(int[] places, int count) : ITimes
    {
        public int End { get; } = (((int.MaxValue / count) - 1) * count) - 1;

        public int Last(int setting, int until) =>
            places[setting] < 0 ? Never : until - ((until - places[setting] + count) % count);

        /// <summary>How many rounds there are from a time to the end.</summary>
        public int From(int time) => (End - time + count) / count;
    }

    /// <summary>Even times are for the settings that come as often as one likes, odd ones for the rare in their order.</summary>
    private readonly ref struct AmongOthers(ReadOnlySpan<int> rare) : ITimes
    {
        private readonly ReadOnlySpan<int> _rare = rare;

        public int End => 2 * _rare.Length;

        public int Last(int setting, int until)
        {
            if (!_rare.Contains(setting))
            {
                return until - (until % 2);
            }

            int time = until % 2 == 0 ? until - 1 : until;
            while (time > 0 && _rare[time / 2] != setting)
            {
                time -= 2;
            }

            return time > 0 ? time : Never;
        }
    }
}
