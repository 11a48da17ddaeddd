// Problem: how long a cloth can be of any use at all?
// Idea:    lay all pieces that fit its width on shelves, the longest first. What any plan cuts from one length of it is
//          some of those pieces, and leaving pieces out of the shelves makes them no longer. So a length beyond the
//          shelves' end is never needed, and every longer stock may be looked at as just so long.
// Source:  next fit by decreasing height: Coffman, Garey, Johnson and Tarjan, SIAM J. Comput. 9, 1980.
// Cost:    linear in the lines: equal pieces are laid row by row at once.
using System.Collections.Immutable;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth;

/// <summary>The length on which all pieces that a cloth can serve lie on shelves.</summary>
internal static class ShelfLength
{
    /// <summary>The length in steps of <see cref="Measures.Length"/>; 0 where the cloth serves nothing.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="cloth">The cloth.</param>
    /// <param name="usable">The usable width.</param>
    public static long Of(ImmutableArray<ClothPieces> pieces, ClothSupply cloth, long usable)
    {
        var laid = pieces
            .Select(piece => (Ways: piece.WaysOn(cloth, usable).ToList(), piece.Count))
            .Where(piece => piece.Ways.Count > 0)
            .Select(piece => (Way: piece.Ways.MinBy(way => way.Along), piece.Count))
            .OrderByDescending(piece => piece.Way.Along);
        long length = 0;
        long left = 0;
        foreach (var (way, count) in laid)
        {
            long onThisShelf = Math.Min(count, left / way.Across);
            left -= onThisShelf * way.Across;
            long perShelf = usable / way.Across;
            long rest = count - onThisShelf;
            if (rest > 0)
            {
                long shelves = (rest + perShelf - 1) / perShelf;
                length += shelves * way.Along;
                left = usable - ((rest - ((shelves - 1) * perShelf)) * way.Across);
            }
        }

        return length;
    }
}
