// Problem: lengths rounded down to a unit lose half a unit each, and a cap computed with them is larger than the true one.
// Idea:    take a length one unit larger as long as no set of lengths that fits the axis comes to more units than the axis had
//          before. Whether one does is looked up in a table of the most units in every length, made anew for each trial.
// Source:  written for this checker; the idea is that of conservative scales (Belov and others, OR Spectrum 35, 2013, from memory).
// Cost:    (places × lengths) for each trial: some tenths of a second an axis.
namespace PanelService.Checking.Bounds;

/// <summary>Lengths in units, none of which let less onto an axis than truly fits.</summary>
internal sealed class RaisedLengths
{
    private const long MostPlaces = 30_000;

    private readonly long _step;
    private readonly long[] _most;

    /// <summary>Makes them.</summary>
    /// <param name="lengths">The lengths that occur.</param>
    /// <param name="whole">The axis.</param>
    /// <param name="unit">The unit.</param>
    public RaisedLengths(IEnumerable<long> lengths, long whole, long unit)
    {
        long[] all = [.. lengths.Distinct().OrderDescending()];
        _step = Math.Max(all.Aggregate(0L, Divisor), (whole / MostPlaces) + 1);
        int[] places = [.. all.Select(length => (int)(length / _step))];
        long[] units = [.. all.Select(length => length / unit)];
        int last = (int)(whole / _step);
        _most = Most(places, units, last);
        for (bool raised = true; raised;)
        {
            raised = false;
            for (int i = 0; i < units.Length; i++)
            {
                units[i]++;
                long[] trial = units[i] > 1 && places[i] > 0 ? Most(places, units, last) : [long.MaxValue];
                if (trial[^1] <= _most[^1])
                {
                    (_most, raised) = (trial, true);
                }
                else
                {
                    units[i]--;
                }
            }
        }
    }

    /// <summary>The most units that fit a length.</summary>
    /// <param name="length">Any length up to the axis.</param>
    public long Of(long length) => _most[Math.Min(length / _step, _most.Length - 1)];

    private static long[] Most(int[] places, long[] units, int last)
    {
        var most = new long[last + 1];
        for (int i = 0; i < places.Length; i++)
        {
            for (int at = places[i]; places[i] > 0 && at <= last; at++)
            {
                most[at] = Math.Max(most[at], most[at - places[i]] + units[i]);
            }
        }

        return most;
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}
