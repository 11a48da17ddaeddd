// Problem: the settings are chosen; in which order are they set, coming back to one as seldom as possible?
// Idea:    seen from the end: what can be cut up by the settings that follow only grows when one more is put before
//          them, so a sequence is judged in one pass a step, without choosing any cut. A first one takes, from the end, what
//          makes the most shapes ready (once the work is done: what makes the most ready by itself, all settings looked at in one
//          pass); then settings are moved and exchanged at random and every one that can be spared is dropped.
// Cost:    a pass a step for each sequence tried; limited by the work they do.
// Not:     the shortest; no sequence is shorter than the number of settings.
namespace PanelService.Planning.SawRun.Search;

/// <summary>Puts settings in an order.</summary>
internal sealed class RunSequence
{
    private readonly SplitTable _table;
    private readonly int[] _settings;
    private readonly Xorshift _random = new(2463534242);
    private readonly CancellationToken _cancellation;
    private long _work;

    private RunSequence(SplitTable table, int[] settings, long work, CancellationToken cancellation)
    {
        _table = table;
        _settings = settings;
        _work = work;
        _cancellation = cancellation;
    }

    /// <summary>Looks for a short sequence.</summary>
    /// <param name="table">The graph, with the splits at these settings.</param>
    /// <param name="settings">Settings at which all sheets can be cut up.</param>
    /// <param name="work">How much may be looked at.</param>
    /// <param name="cancellation">Ends it with what was found.</param>
    /// <returns>The settings in the order of the run.</returns>
    public static int[] Find(SplitTable table, int[] settings, long work, CancellationToken cancellation) =>
        new RunSequence(table, settings, work, cancellation).Find();

    private bool Spent => _work <= 0 || _cancellation.IsCancellationRequested;

    private int[] Find()
    {
        var sequence = Spare(First());
        var best = sequence;
        while (!Spent && best.Count > _settings.Length)
        {
            var next = Moved(sequence);
            if (Serves(next))
            {
                sequence = Spare(next);
                best = sequence.Count < best.Count ? sequence : best;
            }
        }

        return [.. best];
    }

    private List<int> First()
    {
        var fromEnd = new List<int>();
        bool[] solved = _table.Start();
        while (!_table.AllRoots(solved))
        {
            int setting = Spent ? Readiest(solved) : _settings.MaxBy(one => Added(one, solved));
            fromEnd.Add(setting);
            _work -= _table.Work;
            _ = _table.Before(setting, solved);
        }

        fromEnd.Reverse();
        return fromEnd;
    }

    private int Readiest(bool[] solved)
    {
        int[] ready = _table.Ready(solved);
        return _settings.MaxBy(setting => ready[setting]);
    }

    private int Added(int setting, bool[] solved)
    {
        _work -= _table.Work;
        return _table.Before(setting, [.. solved]);
    }

    private List<int> Moved(List<int> sequence)
    {
        var next = sequence.ToList();
        int from = _random.Below(next.Count);
        int setting = next[from];
        if (_random.Below(3) == 0)
        {
            int other = _random.Below(next.Count);
            (next[from], next[other]) = (next[other], next[from]);
            return next;
        }

        next.RemoveAt(from);
        next.Insert(_random.Below(next.Count + 1), setting);
        return next;
    }

    /// <summary>Drops every step that can be spared, in random order, as long as there is work left.</summary>
    private List<int> Spare(List<int> sequence)
    {
        var places = Enumerable.Range(0, sequence.Count).Where(i => sequence.Count(s => s == sequence[i]) > 1).ToList();
        _random.Shuffle(places);
        foreach (int place in places)
        {
            if (Spent)
            {
                return sequence;
            }

            int setting = sequence[place];
            if (sequence.Count(s => s == setting) < 2)
            {
                continue;
            }

            var less = sequence.ToList();
            less.RemoveAt(place);
            if (Serves(less))
            {
                return Spare(less);
            }
        }

        return sequence;
    }

    private bool Serves(List<int> sequence)
    {
        bool[] solved = _table.Start();
        for (int i = sequence.Count - 1; i >= 0; i--)
        {
            _work -= _table.Work;
            _table.Before(sequence[i], solved);
        }

        return _table.AllRoots(solved);
    }
}
