// Problem: how many rectangles of one size come out of a rectangle by guillotine cuts?
// Idea:    cut by cut: the best of two parts added, over all cuts at sums of the size's sides; each rectangle is first
//          shrunk to the largest such sums, so that few different ones are ever looked at.
// Source:  Herz 1972 (normal points); the recursion of Gilmore and Gomory 1966.
// Cost:    different rectangles × cuts: microseconds for an offcut; past a number of sums only rows and columns are tried.
// Not:     the most where there are too many sums: then it is a number that surely fits.
namespace PanelService.Planning.Spare;

/// <summary>Counts pieces of one size.</summary>
internal sealed class OneSizePacking
{
    private const int MostSums = 60;

    private readonly (long Width, long Height)[] _ways;
    private readonly Dictionary<(long Width, long Height), int> _known = [];
    private readonly long[] _across;
    private readonly long[] _along;

    private OneSizePacking((long Width, long Height)[] ways, long width, long height)
    {
        _ways = ways;
        _across = Sums([.. ways.Select(way => way.Width).Distinct()], width);
        _along = Sums([.. ways.Select(way => way.Height).Distinct()], height);
    }

    /// <summary>Counts.</summary>
    /// <param name="room">The rectangle, grown by one kerf each way.</param>
    /// <param name="ways">The sizes of the piece as it may lie, grown by one kerf each way; one or two.</param>
    public static int Count((long Width, long Height) room, (long Width, long Height)[] ways)
    {
        var packing = new OneSizePacking(ways, room.Width, room.Height);
        return packing._across.Length > MostSums || packing._along.Length > MostSums
            ? ways.Max(way => (int)(room.Width / way.Width * (room.Height / way.Height)))
            : packing.Best(room.Width, room.Height);
    }

    private int Best(long width, long height)
    {
        var at = (Width: Shrunk(_across, width), Height: Shrunk(_along, height));
        if (!_ways.Any(way => way.Width <= at.Width && way.Height <= at.Height))
        {
            return 0;
        }

        if (_known.TryGetValue(at, out int known))
        {
            return known;
        }

        int best = 1;
        foreach (long cut in _across.TakeWhile(cut => cut * 2 <= at.Width))
        {
            best = Math.Max(best, Best(cut, at.Height) + Best(at.Width - cut, at.Height));
        }

        foreach (long cut in _along.TakeWhile(cut => cut * 2 <= at.Height))
        {
            best = Math.Max(best, Best(at.Width, cut) + Best(at.Width, at.Height - cut));
        }

        _known.Add(at, best);
        return best;
    }

    private static long Shrunk(long[] sums, long length) => sums.LastOrDefault(sum => sum <= length);

    private static long[] Sums(long[] sides, long most)
    {
        var sums = new SortedSet<long>(sides.Where(side => side <= most));
        var open = new Queue<long>(sums);
        while (open.TryDequeue(out long sum) && sums.Count <= MostSums)
        {
            foreach (long side in sides)
            {
                if (sum + side <= most && sums.Add(sum + side))
                {
                    open.Enqueue(sum + side);
                }
            }
        }

        return [.. sums];
    }
}
