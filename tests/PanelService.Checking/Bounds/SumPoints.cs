// Problem: at which coordinates can the edge of a piece lie when everything is pushed to the origin?
// Idea:    all sums of extents, no more of a piece than its demand; for every place the fewest copies of the piece at
//          hand that reach it.
// Source:  Herz, IBM J. Res. Dev. 16 (1972); written again for this checker.
// Cost:    places × pieces.
namespace PanelService.Checking.Bounds;

/// <summary>The sums of extents along one axis, rising from 0.</summary>
internal static class SumPoints
{
    /// <summary>Lists them.</summary>
    /// <param name="extents">Per piece: its extents along the axis (one or two), and how often it may be used.</param>
    /// <param name="limit">The largest sum of interest.</param>
    public static long[] Of(IReadOnlyList<(long[] Extents, int Most)> extents, long limit)
    {
        long unit = extents.SelectMany(e => e.Extents).Aggregate(0L, Divisor);
        if (unit == 0)
        {
            return [0];
        }

        int places = checked((int)(limit / unit)) + 1;
        var reached = new bool[places];
        reached[0] = true;
        foreach (var (ways, most) in extents)
        {
            AddPiece(reached, [.. ways.Select(way => way / unit)], most);
        }

        return [.. Enumerable.Range(0, places).Where(place => reached[place]).Select(place => place * unit)];
    }

    private static void AddPiece(bool[] reached, long[] ways, int most)
    {
        var copies = new int[reached.Length];
        for (int place = 0; place < reached.Length; place++)
        {
            int fewest = reached[place] ? 0 : int.MaxValue;
            foreach (long way in ways)
            {
                int before = place >= way ? copies[place - way] : int.MaxValue;
                fewest = before < most ? Math.Min(fewest, before + 1) : fewest;
            }

            copies[place] = fewest;
            reached[place] = fewest != int.MaxValue;
        }
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}
