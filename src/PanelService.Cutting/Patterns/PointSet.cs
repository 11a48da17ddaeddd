// Problem: at which coordinates can a cut be worth making?
// Idea:    push every piece towards the origin; then each edge lies at a sum of piece sizes. Only these "normal
//          points" matter, and of each piece no more than its demand can stand in one row.
// Source:  Herz, IBM J. Res. Dev. 16 (1972); Christofides and Whitlock, Operations Research 25 (1977).
// Cost:    one bit set per axis in units of the sizes' common divisor; (extent / divisor / 64) words per added piece.
// Not:     the smallest possible set. Reduced raster points are fewer for one sheet size, but a set made for the
//          whole sheet is not known to serve every rectangle inside it, and one grid serves many sheet sizes here.
using System.Numerics;

namespace PanelService.Cutting.Patterns;

/// <summary>The normal points of one axis, rising, without 0.</summary>
internal sealed class PointSet
{
    private readonly long[] _points;

    private PointSet(long[] points) => _points = points;

    /// <summary>How many there are.</summary>
    public int Count => _points.Length;

    /// <summary>The points.</summary>
    public ReadOnlySpan<long> Points => _points;

    /// <summary>The index of the largest point that is at most <paramref name="extent"/>; −1 where there is none.</summary>
    /// <param name="extent">Any extent.</param>
    public int Floor(long extent)
    {
        int at = Array.BinarySearch(_points, extent);
        return at >= 0 ? at : ~at - 1;
    }

    /// <summary>Where a tile ends: no piece is so narrow that one of its points depends on another.</summary>
    /// <param name="first">The tile's first point.</param>
    /// <param name="count">Only so many points.</param>
    /// <param name="most">The most points of a tile.</param>
    public int EndOfTile(int first, int count, int most)
    {
        int end = first + 1;
        while (end < count && end - first < most && _points[end] - _points[first] < _points[0])
        {
            end++;
        }

        return end;
    }

    /// <summary>All sums of piece extents up to a limit.</summary>
    /// <param name="extents">Per piece: the one or two extents it can have along the axis, and how many there are.</param>
    /// <param name="limit">The largest sum of interest.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public static PointSet Of(
        IReadOnlyList<(long First, long? Second, int Demand)> extents, long limit, CancellationToken cancellation = default)
    {
        long divisor = 0;
        foreach (var (first, second, _) in extents)
        {
            divisor = (long)BigInteger.GreatestCommonDivisor(divisor, first);
            divisor = second is { } other ? (long)BigInteger.GreatestCommonDivisor(divisor, other) : divisor;
        }

        if (divisor == 0)
        {
            return new PointSet([]);
        }

        var sums = new BitRow(checked((int)(limit / divisor)) + 1);
        sums.Set(0);
        foreach (var (first, second, demand) in extents)
        {
            cancellation.ThrowIfCancellationRequested();
            Add(sums, first / divisor, second / divisor, demand);
        }

        return new PointSet([.. sums.Ones().Where(at => at > 0).Select(at => at * divisor)]);
    }

    /// <summary>The last point of every interval, and the points kept.</summary>
    /// <param name="kept">Points that stay.</param>
    /// <param name="interval">The length of an interval.</param>
    public PointSet Thinned(IEnumerable<long> kept, long interval)
    {
        var points = new List<long>(kept);
        for (int i = 0; i < _points.Length; i++)
        {
            if (i + 1 == _points.Length || _points[i + 1] / interval != _points[i] / interval)
            {
                points.Add(_points[i]);
            }
        }

        points.Sort();
        return new PointSet([.. points.Distinct()]);
    }

    private static void Add(BitRow sums, long first, long? second, int demand)
    {
        for (int copy = 0; copy < demand; copy++)
        {
            if (!sums.OrShifted(first, second))
            {
                return;
            }
        }
    }
}
