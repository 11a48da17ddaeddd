// Problem: the most valuable guillotine pattern of one sheet that holds no more of each piece than its limit.
// Idea:    1. penalties on counts bring a bound close to the optimum (CountPenalty), and their patterns, cut back to
//             the limits, a first value;
//          2. the programme that carries counts fills the sheet once more (CappedProgramme);
//          3. ask for all patterns worth at least T (LabelProgramme), T first close below the bound, then lower and
//             lower: what is found first is the best there is. The smaller the gap, the fewer labels, so that the
//             last question costs about as much as all before it, and no good pattern has to be known beforehand.
// Source:  see the parts. The test set: Furini, Malaguti and Thomopulos, INFORMS JoC 28 (2016).
// Cost:    59 published sheets of up to 50 kinds: some milliseconds each, the worst three or four tenths of a second.
// Not:     always exact: where the labels grow too many or the work is done, value and bound stay apart.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Finds the best pattern within limits.</summary>
internal sealed class BoundedPattern
{
    private const int PenaltySteps = 80;
    private const int MostLabels = 500_000;
    private const long MostCappedWork = 4_000_000;

    private readonly Grid _grid;
    private readonly int[] _values;
    private readonly int[] _limits;
    private readonly WorkMeter _work;
    private readonly CountPenalty _penalty;
    private Block? _best;
    private long _value;
    private long _bound;

    private BoundedPattern(Grid grid, int[] values, int[] limits, WorkMeter work)
    {
        (_grid, _limits, _work) = (grid, limits, work);
        _values = [.. values.Select((v, i) => limits[i] > 0 && grid.Shapes.Any(s => s.Piece == i) ? v : 0)];
        _penalty = new CountPenalty(grid, _values, limits, work);
        _bound = _penalty.Bound / _penalty.Unit;
    }

    /// <summary>Solves.</summary>
    /// <param name="grid">The true points and shapes of the sheet, made with these limits as demands.</param>
    /// <param name="values">Value of one of each piece, 0 or more; no pattern's total may reach 2³¹.</param>
    /// <param name="limits">At most so many of each; 0: none.</param>
    /// <param name="work">The work allowed.</param>
    /// <returns>The best value found, its pattern (null: nothing of value fits), and a bound that no pattern exceeds;
    /// equal to the value unless the work was done before the end.</returns>
    public static BoundedAnswer Solve(Grid grid, ReadOnlySpan<int> values, ReadOnlySpan<int> limits, WorkMeter work)
    {
        if (grid.X.Count == 0 || grid.Y.Count == 0)
        {
            return new BoundedAnswer(0, null, 0);
        }

        var pattern = new BoundedPattern(grid, values.ToArray(), Trimmed(grid, limits), work);
        try
        {
            pattern.Run();
        }
        catch (OperationCanceledException) when (work.Stopped)
        {
            // What was found so far stands.
        }

        return new BoundedAnswer(pattern._value, pattern._best, Math.Max(pattern._value, pattern._bound));
    }

    /// <summary>Limits no larger than what the sheet's area holds.</summary>
    private static int[] Trimmed(Grid grid, ReadOnlySpan<int> limits)
    {
        int[] trimmed = limits.ToArray();
        double area = (double)grid.X.Points[^1] * grid.Y.Points[^1];
        foreach (var shape in grid.Shapes)
        {
            trimmed[shape.Piece] = (int)Math.Min(trimmed[shape.Piece], area / ((double)shape.Width * shape.Height));
        }

        return trimmed;
    }

    private void Run()
    {
        if (_grid.Work <= MostCappedWork)
        {
            _work.Spend(_grid.Work / 50);
            Take(CappedProgramme.Fill(_grid, _limits, _values, _work.Cancellation).Block);
        }

        _penalty.Lower(PenaltySteps, () => _value, Take);
        _bound = _penalty.Bound / _penalty.Unit;
        long gap = _bound - _value;
        for (int part = 8; part >= 1 && _value < _bound && !_work.Exhausted; part /= 2)
        {
            if (!Ask(Math.Min(_bound, _value + gap - (gap / part) + 1)))
            {
                return;
            }
        }
    }

    /// <summary>Takes what a pattern holds within the limits, if it is the best so far.</summary>
    private void Take(Block? block)
    {
        int[] room = [.. _limits];
        if (block is null || BlockMath.Prune(block, room) is not { } kept)
        {
            return;
        }

        long value = _values.Select((v, i) => (long)v * (_limits[i] - room[i])).Sum();
        if (value > _value)
        {
            (_value, _best) = (value, kept);
        }
    }

    /// <summary>Asks for the best pattern of at least a value; bound and value are equal if there is one.</summary>
    /// <param name="least">The value.</param>
    /// <returns>Whether an answer was found.</returns>
    private bool Ask(long least)
    {
        if (least <= _value)
        {
            return true;
        }

        var key = Key();
        long atLeast = (least * _penalty.Unit) - _penalty.GivenBack;
        var labels = new LabelProgramme(_penalty.Fill(), _penalty.Net, key, atLeast, _work);
        if (!labels.Run(MostLabels))
        {
            return false;
        }

        long most = (least - 1) * _penalty.Unit;
        foreach (var (index, net, counts) in labels.Whole())
        {
            long whole = net;
            for (int i = 0; i < _limits.Length; i++)
            {
                whole += (long)_penalty.Penalty[i] * (key.Counts(i) ? key.Count(counts, i) : _limits[i]);
            }

            most = Math.Max(most, whole);
            if (whole > _value * _penalty.Unit)
            {
                Take(labels.Trace(index));
            }
        }

        _bound = Math.Min(_bound, most / _penalty.Unit);
        return true;
    }

    /// <summary>Counts every piece the sheet could hold too often; where there are too many, those of the least penalty not.</summary>
    private CountKey Key()
    {
        int[] counted = [.. _limits];
        var key = new CountKey(counted);
        foreach (int i in Enumerable.Range(0, counted.Length).OrderBy(i => _penalty.Penalty[i]))
        {
            if (key.Complete)
            {
                break;
            }

            counted[i] = 0;
            key = new CountKey(counted);
        }

        return key;
    }
}

/// <summary>The best pattern found within limits.</summary>
/// <param name="Value">Its value.</param>
/// <param name="Block">How it lies; null where nothing of value fits.</param>
/// <param name="UpperBound">No pattern is worth more.</param>
internal sealed record BoundedAnswer(long Value, Block? Block, long UpperBound);
