using System.Collections.Immutable;

namespace PanelService.Checking.Bounds;

/// <summary>Checks the best value of one sheet.</summary>
public static class SheetValue
{
    // Penalties are in these parts of a worth.
    private const long Unit = 1024;
    private const int Steps = 400;

    /// <summary>Checks that no pattern within the demand is worth more than was found.</summary>
    /// <param name="problem">The case: one stock, and as many of each piece as count.</param>
    /// <param name="values">Per piece: the worth of one.</param>
    /// <param name="value">The value found: some pattern has it.</param>
    /// <returns>Right where the sheet's best value, computed again, is the same; not re-checked where only more than
    /// the demand allows reaches what the programme computes.</returns>
    public static BoundVerdict Check(BoundCase problem, ImmutableArray<long> values, long value)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var table = new CapTable(problem, [0], CapTable.Slow);
        if (!table.Exact || !table.Fill(values))
        {
            return BoundVerdict.NotRechecked("too many points");
        }

        long cap = table.Cap(0, values);
        if (cap == value)
        {
            return BoundVerdict.Right;
        }

        int[] counts = table.Pattern(0, values);
        long worth = counts.Select((count, i) => values[i] * Math.Min(count, problem.Pieces[i].Demand)).Sum();
        if (cap < value || worth > value)
        {
            return BoundVerdict.Wrong($"the best value is between {worth} and {cap}, not {value}");
        }

        cap = Penalized(problem, table, values, value);
        return cap == value || new CoverSearch(problem, [[0]], new KnownFacts()).Cap(0, values) == value
            ? BoundVerdict.Right
            : BoundVerdict.NotRechecked($"{value} is claimed, {cap} is all that was found to be the most");
    }

    /// <summary>
    /// What no pattern within the demand is worth more than: a piece is worth less by a penalty, and the penalty for as
    /// many as may be used is given back. True for any penalties; they rise where the best pattern holds too many.
    /// Held and Karp, Mathematical Programming 1 (1971).
    /// </summary>
    private static long Penalized(BoundCase problem, CapTable table, ImmutableArray<long> values, long value)
    {
        long[] penalty = new long[values.Length];
        long least = long.MaxValue;
        for (int step = 0; step < Steps && least / Unit > value; step++)
        {
            long[] net = [.. values.Select((worth, i) => (worth * Unit) - penalty[i])];
            if (!table.Fill(net))
            {
                break;
            }

            long bound = table.Cap(0, net) + penalty.Select((one, i) => one == 0 ? 0 : one * problem.Pieces[i].Demand).Sum();
            least = Math.Min(least, bound);
            int[] counts = table.Pattern(0, net);
            long[] over = [.. counts.Select((count, i) => (long)count - problem.Pieces[i].Demand)];
            long length = over.Select((d, i) => d < 0 && penalty[i] == 0 ? 0 : d * d).Sum();
            if (length == 0)
            {
                break;
            }

            for (int i = 0; i < penalty.Length; i++)
            {
                penalty[i] = Math.Clamp(penalty[i] + ((bound - (value * Unit)) * over[i] / length), 0, values[i] * Unit);
            }
        }

        return least / Unit;
    }
}
