// Problem: how much can a good hold per unit of its length, however long it is?
// Idea:    each thread across it meets pieces whose extents across add up to no more than the width; a piece that lies
//          along for h units is worth its worth over h to each thread it meets. The best thread is an unbounded
//          knapsack over the widths' normal points: any part of a thread that a plan can hold ends at one of them.
// Source:  the bar relaxation of strip packing (Scheithauer 1999).
// Cost:    points × shapes. Floating point, rounded up by far more than its error.
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>The most that one thread across a width can meet.</summary>
internal static class ThreadRate
{
    // Sums of a few hundred doubles are right to far more digits than this.
    private const double Safe = 1 + 1e-9;

    /// <summary>No length L of this width holds more than L times this.</summary>
    /// <param name="grid">Points and shapes; sizes may be rounded down, which lets more in.</param>
    /// <param name="values">Value of one of each piece.</param>
    /// <param name="width">The width.</param>
    public static double Of(Grid grid, int[] values, long width)
    {
        var points = grid.X.Points;
        int last = grid.Column(width);
        double[] best = new double[Math.Max(1, last + 1)];
        for (int i = 0; i <= last; i++)
        {
            best[i] = i > 0 ? best[i - 1] : 0;
            for (int s = 0; s < grid.Shapes.Length; s++)
            {
                var shape = grid.Shapes[s];
                if (shape.Width <= points[i])
                {
                    int rest = grid.X.Floor(points[i] - shape.Width);
                    best[i] = Math.Max(best[i], ((double)values[shape.Piece] / grid.Heights[s]) + (rest < 0 ? 0 : best[rest]));
                }
            }
        }

        double tiny = grid.Tiny.Select(one => values[one.Piece] / one.Area).DefaultIfEmpty(0).Max() * width;
        return (best[^1] + tiny) * Safe;
    }
}
