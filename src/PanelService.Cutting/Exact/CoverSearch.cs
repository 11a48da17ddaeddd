// Problem: which of the patterns given, from given counts of stocks, hold every piece at least as often as wanted?
// Idea:    whatever a pattern is worth less than its stock's best, and whatever it holds too much, is taken from what
//          there is to waste. Choose for the type or the stock that the fewest patterns are left for; give up a branch as
//          soon as a type cannot find room any more or a stock has no pattern left. All types of a pattern are compared at once.
// Source:  as ExactCover: Knuth, "Dancing links" (2000); the waste is the reduced cost of Baldacci, Christofides and
//          Mingozzi, Mathematical Programming 115 (2008).
// Cost:    about two million nodes a second for some hundred patterns; exponential in the worst case, so it ends with the work given.
// Not:     for more than 32 types or 255 of one.
using System.Numerics;
using System.Runtime.Intrinsics;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Searches a choice of patterns that covers a demand from given counts of stocks.</summary>
internal sealed class CoverSearch
{
    /// <summary>The most types of piece.</summary>
    public const int MostTypes = 32;

    private const int MostOfType = byte.MaxValue;

    // Node work per unit of WorkMeter, and how often it is told.
    private const int StepsOfUnit = 200;
    private const int StepsAtOnce = 20_000;
    private const int StepsOfNode = 10;

    private readonly Column[] _columns;
    private readonly Vector256<byte>[] _counts;
    private readonly long[] _loss;
    private readonly int[] _values;
    private readonly long[] _best;
    private readonly WorkMeter _work;
    private readonly List<int> _chosen = [];
    private int[] _left = [];
    private int[] _usable;
    private long _steps;
    private long _spent;

    /// <summary>Prepares a search.</summary>
    /// <param name="columns">The patterns to choose from.</param>
    /// <param name="vector">The worth of one of each type, and the most that a pattern of each stock is worth.</param>
    /// <param name="work">Where work is counted.</param>
    public CoverSearch(IReadOnlyList<Column> columns, DualVector vector, WorkMeter work)
    {
        (_values, _best, _work) = (vector.Values, vector.Best, work);
        var ordered = columns.Select(c => (Column: c, Loss: Math.Max(0, vector.Loss(c)))).OrderBy(c => c.Loss).ToArray();
        _columns = [.. ordered.Select(c => c.Column)];
        _loss = [.. ordered.Select(c => c.Loss)];
        _counts = [.. _columns.Select(c => Packed(c.Counts))];
        _usable = [.. Enumerable.Range(0, _columns.Length)];
    }

    /// <summary>A search gives up after so much work.</summary>
    public long MostUnits { get; init; } = 75_000;

    /// <summary>Whether a demand is within its reach.</summary>
    /// <param name="demand">How many of each type.</param>
    public static bool Holds(int[] demand) => demand.Length <= MostTypes && demand.All(d => d <= MostOfType);

    /// <summary>Searches.</summary>
    /// <param name="demand">How many of each type are wanted; <see cref="Holds"/> it.</param>
    /// <param name="counts">How many of each stock there are.</param>
    /// <param name="spare">How much may be wasted in all.</param>
    /// <returns>Whether there is a cover; null where it gave up.</returns>
    public bool? Solve(int[] demand, int[] counts, long spare)
    {
        _left = [.. counts];
        _chosen.Clear();
        _spent = 0;
        return Search(Packed(demand), spare, 0, _columns.Length);
    }

    /// <summary>The cover that the last search found.</summary>
    public List<ColumnUse> Uses() => [.. _chosen.GroupBy(c => c).Select(same => new ColumnUse(_columns[same.Key], same.Count()))];

    private static Vector256<byte> Packed(int[] counts)
    {
        Span<byte> bytes = stackalloc byte[MostTypes];
        bytes.Clear();
        for (int t = 0; t < counts.Length; t++)
        {
            bytes[t] = (byte)Math.Min(MostOfType, counts[t]);
        }

        return Vector256.Create((ReadOnlySpan<byte>)bytes);
    }

    /// <param name="open">What is still wanted.</param>
    /// <param name="spare">What may still be wasted.</param>
    /// <param name="from">Where the patterns to choose from begin in the list of the usable ones.</param>
    /// <param name="count">How many these are.</param>
    private bool? Search(Vector256<byte> open, long spare, int from, int count)
    {
        if (open == Vector256<byte>.Zero)
        {
            return true;
        }

        if (!Spend(count))
        {
            return null;
        }

        int start = from + count;
        int usable = Filter(open, spare, from, count);
        return Branch(open, spare, start, usable) is { } choice && (choice.Type >= 0 || choice.Stock >= 0)
            ? Try(choice, open, spare, (start, usable))
            : false;
    }

    private bool Spend(int count)
    {
        _steps += StepsOfNode + count;
        if (_steps > StepsAtOnce)
        {
            _work.Spend(_steps / StepsOfUnit);
            _spent += _steps / StepsOfUnit;
            _steps = 0;
        }

        return !_work.Exhausted && _spent <= MostUnits;
    }

    /// <summary>Puts the patterns that may still be used behind those they come from.</summary>
    private int Filter(Vector256<byte> open, long spare, int from, int count)
    {
        int start = from + count;
        if (_usable.Length < start + count)
        {
            Array.Resize(ref _usable, 2 * (start + count));
        }

        int end = start;
        for (int at = from; at < start && _loss[_usable[at]] <= spare; at++)
        {
            int column = _usable[at];
            if (_left[_columns[column].Stock] > 0 && Waste(column, open) <= spare)
            {
                _usable[end++] = column;
            }
        }

        return end - start;
    }

    /// <summary>What using a pattern wastes: what it is worth less than the best, and what it holds too much.</summary>
    private long Waste(int column, Vector256<byte> open)
    {
        long waste = _loss[column];
        var over = Vector256.SubtractSaturate(_counts[column], open);
        for (uint some = Some(over); some != 0; some &= some - 1)
        {
            int t = BitOperations.TrailingZeroCount(some);
            waste += (long)over[t] * _values[t];
        }

        return waste;
    }

    private static uint Some(Vector256<byte> counts) => ~Vector256.Equals(counts, Vector256<byte>.Zero).ExtractMostSignificantBits();

    /// <summary>The type or the stock with the fewest usable patterns; null where one of them has none.</summary>
    private Choice? Branch(Vector256<byte> open, long spare, int start, int usable)
    {
        Span<int> ofStock = stackalloc int[_left.Length];
        Span<Vector256<byte>> most = stackalloc Vector256<byte>[_left.Length];
        Span<int> ofType = stackalloc int[MostTypes];
        ofStock.Clear();
        most.Clear();
        ofType.Clear();
        foreach (int column in _usable.AsSpan(start, usable))
        {
            int s = _columns[column].Stock;
            ofStock[s]++;
            most[s] = Vector256.Max(most[s], _counts[column]);
            for (uint holds = Some(_counts[column]); holds != 0; holds &= holds - 1)
            {
                ofType[BitOperations.TrailingZeroCount(holds)]++;
            }
        }

        return HaveRoom(open, most) ? Fewest(open, spare, ofStock, ofType) : null;
    }

    /// <summary>Whether every type finds room were each stock filled with the most of it that any of its patterns holds.</summary>
    private bool HaveRoom(Vector256<byte> open, Span<Vector256<byte>> most)
    {
        var low = Vector256<ushort>.Zero;
        var high = Vector256<ushort>.Zero;
        for (int s = 0; s < _left.Length; s++)
        {
            ushort sheets = (ushort)Math.Min(_left[s], MostOfType);
            var (first, second) = Vector256.Widen(most[s]);
            low = Vector256.AddSaturate(low, first * sheets);
            high = Vector256.AddSaturate(high, second * sheets);
        }

        var (openLow, openHigh) = Vector256.Widen(open);
        return !Vector256.LessThanAny(low, openLow) && !Vector256.LessThanAny(high, openHigh);
    }

    private Choice? Fewest(Vector256<byte> open, long spare, Span<int> ofStock, Span<int> ofType)
    {
        var choice = new Choice(-1, -1);
        int fewest = int.MaxValue;
        for (int s = 0; s < _left.Length; s++)
        {
            // A stock left empty wastes all that it could be worth: where that is too much it has to be used.
            if (_left[s] > 0 && _best[s] > spare && ofStock[s] < fewest)
            {
                (choice, fewest) = (new Choice(-1, s), ofStock[s]);
            }
        }

        for (int t = 0; t < _values.Length; t++)
        {
            if (open[t] > 0 && ofType[t] < fewest)
            {
                (choice, fewest) = (new Choice(t, -1), ofType[t]);
            }
        }

        return fewest == 0 ? null : choice;
    }

    private bool? Try(Choice choice, Vector256<byte> open, long spare, (int Start, int Count) usable)
    {
        var (start, count) = usable;
        for (int at = start; at < start + count;)
        {
            int column = _usable[at];
            if (!(choice.Type >= 0 ? _counts[column][choice.Type] > 0 : _columns[column].Stock == choice.Stock))
            {
                at++;
                continue;
            }

            _left[_columns[column].Stock]--;
            _chosen.Add(column);
            bool? found = Search(Vector256.SubtractSaturate(open, _counts[column]), spare - Waste(column, open), start, count);
            if (found is not false)
            {
                return found;
            }

            _left[_columns[column].Stock]++;
            _chosen.RemoveAt(_chosen.Count - 1);

            // Everything with this pattern was tried: the other branches do without it.
            count--;
            Array.Copy(_usable, at + 1, _usable, at, start + count - at);
        }

        return false;
    }

    /// <summary>What is chosen a pattern for: a type that it must hold, or a stock that it is of.</summary>
    private readonly record struct Choice(int Type, int Stock);
}
