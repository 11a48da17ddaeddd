using System.Collections.Immutable;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>
/// A finished graph in arrays, for asking thousands of times: can all sheets be cut at these settings? One pass over the
/// shapes from small to large answers it, some microseconds for an ordinary batch.
/// </summary>
internal sealed class SplitTable
{
    private readonly int[] _first;
    private readonly bool[] _done;
    private readonly int[] _roots;
    private readonly (int Near, int Far, int NearSetting, int FarSetting)[] _splits;

    /// <summary>Reads a graph.</summary>
    /// <param name="graph">The graph, finished.</param>
    /// <param name="roots">The sheets.</param>
    /// <param name="allowed">The settings whose splits are read; null: all.</param>
    public SplitTable(CutGraph graph, ImmutableArray<CutShape> roots, bool[]? allowed = null)
    {
        Settings = graph.Settings.Count;
        _done = [.. graph.Shapes.Select(shape => shape.IsDone)];
        _roots = [.. roots.Select(root => root.Index).Distinct().Where(root => !_done[root])];
        _first = new int[graph.Shapes.Count + 1];
        var splits = new List<(int, int, int, int)>();
        for (int i = 0; i < graph.Shapes.Count; i++)
        {
            _first[i] = splits.Count;
            splits.AddRange(graph.Shapes[i].Splits
                .Where(split => allowed is null || Has(allowed, split.NearSetting) || Has(allowed, split.FarSetting))
                .Select(split => (IndexOf(split.Near), IndexOf(split.Far), split.NearSetting, split.FarSetting)));
        }

        _first[^1] = splits.Count;
        _splits = [.. splits];
    }

    /// <summary>How many settings the graph knows.</summary>
    public int Settings { get; }

    /// <summary>How much one pass looks at.</summary>
    public int Work => _splits.Length + _done.Length;

    /// <summary>How many shapes there are.</summary>
    public int Shapes => _done.Length;

    /// <summary>How often each setting could be used.</summary>
    public int[] Uses()
    {
        int[] uses = new int[Settings];
        foreach (var (_, _, near, far) in _splits)
        {
            if (near >= 0)
            {
                uses[near]++;
            }

            if (far >= 0)
            {
                uses[far]++;
            }
        }

        return uses;
    }

    /// <summary>A mark for each of some settings.</summary>
    /// <param name="settings">Which.</param>
    /// <param name="all">How many settings there are.</param>
    public static bool[] Marked(int[] settings, int all)
    {
        bool[] on = new bool[all];
        foreach (int setting in settings)
        {
            on[setting] = true;
        }

        return on;
    }

    /// <summary>Whether every sheet can be cut up at some settings, in whatever order.</summary>
    /// <param name="settings">The settings.</param>
    public bool CanCut(int[] settings) => CanCut(Marked(settings, Settings), new bool[Shapes]);

    /// <summary>Whether every sheet can be cut up at some settings, in whatever order.</summary>
    /// <param name="on">Which settings.</param>
    /// <param name="solved">Room for one mark a shape.</param>
    public bool CanCut(bool[] on, bool[] solved)
    {
        for (int shape = 0; shape < _done.Length; shape++)
        {
            bool isSolved = _done[shape];
            for (int i = _first[shape]; !isSolved && i < _first[shape + 1]; i++)
            {
                var split = _splits[i];
                isSolved = (Has(on, split.NearSetting) || Has(on, split.FarSetting)) && Is(solved, split.Near) && Is(solved, split.Far);
            }

            solved[shape] = isSolved;
        }

        return AllRoots(solved);
    }

    /// <summary>No shape is cut yet but those that need no cut.</summary>
    public bool[] Start() => [.. _done];

    /// <summary>Goes one step back in time: what can be cut up when this setting comes before all that follow.</summary>
    /// <param name="setting">The setting.</param>
    /// <param name="solved">What can be cut up by what follows; what can be now is added.</param>
    /// <returns>How many shapes were added.</returns>
    public int Before(int setting, bool[] solved)
    {
        int added = 0;
        for (int shape = 0; shape < solved.Length; shape++)
        {
            for (int i = _first[shape]; !solved[shape] && i < _first[shape + 1]; i++)
            {
                var split = _splits[i];
                if ((split.NearSetting == setting || split.FarSetting == setting) && Is(solved, split.Near) && Is(solved, split.Far))
                {
                    solved[shape] = true;
                    added++;
                }
            }
        }

        return added;
    }

    /// <summary>Per setting in how many ways it would at once make some shape ready.</summary>
    /// <param name="solved">What can be cut up by what follows.</param>
    public int[] Ready(bool[] solved)
    {
        int[] ready = new int[Settings];
        for (int shape = 0; shape < solved.Length; shape++)
        {
            for (int i = _first[shape]; !solved[shape] && i < _first[shape + 1]; i++)
            {
                var split = _splits[i];
                if (Is(solved, split.Near) && Is(solved, split.Far))
                {
                    Count(ready, split.NearSetting);
                    Count(ready, split.FarSetting);
                }
            }
        }

        return ready;
    }

    /// <summary>Whether every sheet is among what can be cut up.</summary>
    public bool AllRoots(bool[] solved) => Array.TrueForAll(_roots, root => solved[root]);

    private static void Count(int[] counts, int setting)
    {
        if (setting >= 0)
        {
            counts[setting]++;
        }
    }

    private static bool Has(bool[] on, int setting) => setting >= 0 && on[setting];

    private static bool Is(bool[] solved, int shape) => shape < 0 || solved[shape];

    private static int IndexOf(CutShape? shape) => shape is null or { IsDone: true } ? -1 : shape.Index;
}
