// Problem: how much can a length of cloth hold, counted in worths of pieces, per unit of its length?
// Idea:    each thread across it meets pieces whose extents across add up to no more than the usable width; a piece that
//          lies along for h units is worth its worth over h to each thread it meets. The best thread is an unbounded
//          knapsack; widths are rounded down to a grid, which can only let more in.
// Source:  the bar relaxation of strip packing (Scheithauer 1999).
// Cost:    lines × grid.
using System.Collections.Immutable;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth.Bounds;

/// <summary>The most that one thread of a cloth can meet.</summary>
internal static class ThreadKnapsack
{
    private const int Grid = 2048;

    /// <summary>The best thread's worth per unit of length; infinite where a piece is too narrow for the grid.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="worths">Per piece: what one is worth, 0 or more.</param>
    /// <param name="cloth">The cloth.</param>
    /// <param name="usable">The usable width.</param>
    public static double BestThread(
        ImmutableArray<ClothPieces> pieces, ImmutableArray<double> worths, ClothSupply cloth, long usable)
    {
        var best = new double[Grid + 1];
        var items = pieces
            .SelectMany((piece, i) => piece.WaysOn(cloth, usable).Select(way => (Size: GridSize(way.Across, usable), Value: worths[i] / way.Along)))
            .Where(item => item.Value > 0)
            .ToArray();
        if (items.Any(item => item.Size == 0))
        {
            // Narrower than the grid's mesh: any number would lie side by side.
            return double.PositiveInfinity;
        }

        for (int room = 1; room <= Grid; room++)
        {
            best[room] = best[room - 1];
            foreach (var (size, value) in items)
            {
                if (size <= room)
                {
                    best[room] = Math.Max(best[room], best[room - size] + value);
                }
            }
        }

        return best[Grid];
    }

    private static int GridSize(long across, long usable) => (int)((Int128)across * Grid / usable);
}
