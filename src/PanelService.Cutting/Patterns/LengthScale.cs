// Problem: whole numbers, small ones, that stand for the lengths along an axis so that whatever truly fits the axis fits in
//          these numbers, too: then what is computed with them is a bound. Lengths rounded down to a unit do, but every piece loses half
//          a unit by it, and a bound promises what they lose.
// Idea:    raise the rounded lengths again, one by one, as long as no set of lengths that truly fits comes to more than the whole
//          axis does: a knapsack over the true lengths tells. Mostly that wins back all that rounding lost. Of some units the one
//          under which the pieces are then longest, compared with the axis.
// Source:  conservative scales: Belov, Kartak, Rohling and Scheithauer, OR Spectrum 35 (2013), from memory.
// Cost:    lengths × axis for a unit, and the axis again for every step raised: some milliseconds.
// Not:     the best such scale, which would be a linear programme over all maximal sets; and not for sets within the demand only.
using System.Numerics;
using System.Runtime.CompilerServices;

namespace PanelService.Cutting.Patterns;

/// <summary>Turns lengths along an axis into small whole numbers that never add up to more than they truly do.</summary>
internal sealed class LengthScale
{
    // The knapsack's places: an axis in tenths of a millimetre has less.
    private const long MostPlaces = 32_000;

    // Units looked at, and by what part of the least they are larger at most: a fifth.
    private const int UnitsTried = 200;
    private const int LargerShare = 5;

    // Of the most promising lengths are raised: of 60 lengths under 40 units in some 10 ms, of very many under fewer.
    private const int MostUnitsRaised = 40;
    private const int FewestUnitsRaised = 6;
    private const int LengthsRaised = 2_400;

    private readonly long _base;
    private readonly int[] _most;

    private LengthScale(long first, int[] most) => (_base, _most) = (first, most);

    /// <summary>How many units a length is.</summary>
    /// <param name="length">The length, at most the axis.</param>
    public int Of(long length) => _most[(int)Math.Clamp(length / _base, 0, _most.Length - 1)];

    /// <summary>Makes a scale.</summary>
    /// <param name="lengths">The lengths along the axis that occur, and how much each counts for.</param>
    /// <param name="whole">The axis.</param>
    /// <param name="least">The least unit; the unit may be a fifth larger.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public static LengthScale Make(IReadOnlyList<(long Length, double Weight)> lengths, long whole, long least, CancellationToken cancellation)
    {
        long divisor = lengths.Aggregate(0L, (d, one) => (long)BigInteger.GreatestCommonDivisor(d, one.Length));
        long first = Math.Max(Math.Max(1, divisor), (whole + MostPlaces - 1) / MostPlaces);
        (int Length, double Weight)[] places = [.. lengths
            .GroupBy(l => l.Length / first)
            .Where(g => g.Key > 0)
            .Select(g => ((int)g.Key, g.Sum(l => l.Weight)))];
        int axis = (int)(whole / first);
        if (places.Length == 0)
        {
            return new LengthScale(first, [0]);
        }

        var best = (Share: -1.0, Most: Array.Empty<int>());
        var units = Enumerable.Range(0, UnitsTried)
            .Select(k => (least + (least * (double)k / (UnitsTried * LargerShare))) / first)
            .Distinct()
            .OrderByDescending(unit => Share(places, [.. places.Select(p => (int)(p.Length / unit))], axis, (int)(axis / unit)))
            .Take(Math.Clamp(LengthsRaised / places.Length, FewestUnitsRaised, MostUnitsRaised));
        foreach (double unit in units)
        {
            cancellation.ThrowIfCancellationRequested();
            var (sizes, most) = Raised(places, axis, unit);
            double share = Share(places, sizes, axis, most[^1]);
            best = share > best.Share ? (share, most) : best;
        }

        return new LengthScale(first, best.Most);
    }

    /// <summary>How long the pieces are in units, compared with the axis: 1 where they are as long as they truly are.</summary>
    private static double Share((int Length, double Weight)[] places, int[] sizes, int axis, int whole) =>
        places.Select((p, i) => p.Weight * sizes[i] / p.Length).Sum() / places.Sum(p => p.Weight) * axis / Math.Max(1, whole);

    private static (int[] Sizes, int[] Most) Raised((int Length, double Weight)[] places, int axis, double unit)
    {
        int[] sizes = [.. places.Select(p => (int)(p.Length / unit))];
        int[] most = new int[axis + 1];
        for (int i = 0; i < places.Length; i++)
        {
            Add(most, places[i].Length, sizes[i]);
        }

        int whole = most[axis];
        int[] order = [.. Enumerable.Range(0, places.Length).Where(i => sizes[i] > 0).OrderByDescending(i => places[i].Weight / places[i].Length)];
        for (bool any = true; any;)
        {
            any = false;
            foreach (int i in order)
            {
                if (MayGrow(most, places[i].Length, sizes[i] + 1, whole))
                {
                    Add(most, places[i].Length, ++sizes[i]);
                    any = true;
                }
            }
        }

        return (sizes, most);
    }

    /// <summary>Sets with one more length, as often as it fits.</summary>
    [MethodImpl(Compiling.AtOnce)]
    private static void Add(int[] most, int length, int size)
    {
        int at = length;
        if (length >= Vector<int>.Count)
        {
            var sizes = new Vector<int>(size);
            for (; at + Vector<int>.Count <= most.Length; at += Vector<int>.Count)
            {
                Vector.Max(new Vector<int>(most, at), new Vector<int>(most, at - length) + sizes).CopyTo(most, at);
            }
        }

        for (; at < most.Length; at++)
        {
            most[at] = Math.Max(most[at], most[at - length] + size);
        }
    }

    [MethodImpl(Compiling.AtOnce)]
    private static bool MayGrow(int[] most, int length, int size, int whole)
    {
        for (int copies = 1, left = most.Length - 1 - length; left >= 0; copies++, left -= length)
        {
            if ((copies * size) + most[left] > whole)
            {
                return false;
            }
        }

        return true;
    }
}
