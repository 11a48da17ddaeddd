// Problem: all pieces of a batch on shelves of one cloth, also where there are millions of them.
// Idea:    first fit by decreasing height, line by line instead of piece by piece: equal pieces go on the first shelves with
//          room until they are all laid, so that equal shelves stay together and are counted, not listed.
// Source:  Coffman, Garey, Johnson and Tarjan, SIAM J. Comput. 9, 1980.
// Cost:    lines × sorts of shelves; a line adds three sorts at most.
// Not:     a good plan for mixed sizes: what is left above lower pieces of a shelf is lost.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth;

/// <summary>Lays pieces on shelves.</summary>
internal static class Shelves
{
    /// <summary>The shelves, the highest first; null where a piece does not fit the cloth's width.</summary>
    /// <param name="pieces">The pieces, numbered as in the patterns.</param>
    /// <param name="cloth">The cloth.</param>
    /// <param name="usable">The usable width in steps of length.</param>
    /// <param name="upright">Whether pieces stand on the shelf, narrow; else they lie, low.</param>
    public static List<Shelf>? Of(ImmutableArray<ClothPieces> pieces, ClothSupply cloth, long usable, bool upright)
    {
        if (pieces.Any(piece => piece.Count > 0 && !piece.WaysOn(cloth, usable).Any()))
        {
            return null;
        }

        var lines = pieces
            .Select((piece, number) => (number, piece))
            .Where(line => line.piece.Count > 0)
            .Select(line => (line.number, line.piece, Way: WayOf(line.piece.WaysOn(cloth, usable), upright)))
            .OrderByDescending(line => line.Way.Along);
        var shelves = new List<Shelf>();
        foreach (var (number, piece, way) in lines)
        {
            var block = new PieceBlock(number, Turned: way.Across != piece.Width);
            AddNew(shelves, block, way, usable, FillUp(shelves, block, way.Across, piece.Count));
        }

        return shelves;
    }

    private static (long Across, long Along) WayOf(IEnumerable<(long Across, long Along)> ways, bool upright) =>
        upright ? ways.MinBy(way => way.Across) : ways.MinBy(way => way.Along);

    // What finds no room on the shelves there are.
    private static int FillUp(List<Shelf> shelves, PieceBlock piece, long across, int count)
    {
        for (int i = 0; i < shelves.Count && count > 0; i++)
        {
            var shelf = shelves[i];
            int each = (int)Math.Min(count, shelf.Left / across);
            if (each == 0)
            {
                continue;
            }

            // So many get as much as they hold, one the rest, and the others stay as they are.
            int full = Math.Min(shelf.Copies, count / each);
            count -= full * each;
            int last = full < shelf.Copies ? count : 0;
            count -= last;
            Replace(shelves, i, [
                shelf.With(piece, across, each, full),
                shelf.With(piece, across, last, last > 0 ? 1 : 0),
                shelf with { Copies = shelf.Copies - full - (last > 0 ? 1 : 0) },
            ]);
        }

        return count;
    }

    private static void Replace(List<Shelf> shelves, int index, ReadOnlySpan<Shelf> parts)
    {
        shelves.RemoveAt(index);
        foreach (var part in parts)
        {
            if (part.Copies > 0)
            {
                shelves.Insert(index++, part);
            }
        }
    }

    private static void AddNew(List<Shelf> shelves, PieceBlock piece, (long Across, long Along) way, long usable, int count)
    {
        if (count == 0)
        {
            return;
        }

        int each = (int)Math.Min(count, usable / way.Across);
        var empty = new Shelf(way.Along, usable, [], 1);
        shelves.Add(empty.With(piece, way.Across, each, count / each));
        if (count % each > 0)
        {
            shelves.Add(empty.With(piece, way.Across, count % each, 1));
        }
    }
}
