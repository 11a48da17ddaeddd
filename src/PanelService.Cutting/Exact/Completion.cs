// Problem: how much can the rest of the sheet be worth when one rectangle of it is left out?
// Idea:    what lies beside a rectangle in the workpiece it was cut from, plus the rest of that workpiece: the programme
//          of ValueProgramme run backwards, from the whole sheet to its parts. A rectangle whose own best value and the
//          rest's together do not reach a known value cannot be part of a better pattern.
// Source:  Viswanathan and Bagchi, Operations Research 41 (1993); Young-Gun, Seong and Kang, OR Letters 31 (2003).
// Cost:    as ValueProgramme without the vector unit, less what is cut off.
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Exact;

/// <summary>For every rectangle of a grid, the most that the rest of the sheet can be worth.</summary>
internal sealed class Completion
{
    private readonly Grid _grid;
    private readonly int[] _rest;

    /// <summary>Computes it.</summary>
    /// <param name="programme">A filled programme.</param>
    /// <param name="atLeast">Only what reaches this value in all is of interest.</param>
    /// <param name="cancellation">Ends it half-way.</param>
    public Completion(ValueProgramme programme, long atLeast, CancellationToken cancellation)
    {
        _grid = programme.Grid;
        _rest = new int[_grid.X.Count * _grid.Y.Count];
        Array.Fill(_rest, -1);
        _rest[^1] = 0;
        for (int i = _grid.X.Count - 1; i >= 0; i--)
        {
            cancellation.ThrowIfCancellationRequested();
            for (int j = _grid.Y.Count - 1; j >= 0; j--)
            {
                int rest = Rest(i, j);
                if (rest >= 0 && rest + (long)programme.At(i, j) >= atLeast)
                {
                    Pass(programme, i, j, rest, atLeast);
                }
                else
                {
                    _rest[(i * _grid.Y.Count) + j] = -1;
                }
            }
        }
    }

    /// <summary>The most the rest can be worth; −1 where the rectangle is of no interest.</summary>
    /// <param name="i">The index of its width.</param>
    /// <param name="j">The index of its height.</param>
    public int Rest(int i, int j) => _rest[(i * _grid.Y.Count) + j];

    private void Pass(ValueProgramme programme, int i, int j, int rest, long atLeast)
    {
        Raise(i - 1, j, rest);
        Raise(i, j - 1, rest);
        long room = rest - atLeast;
        var near = _grid.CutsX.Near(i);
        var far = _grid.CutsX.Far(i);
        for (int cut = 0; cut < near.Length; cut++)
        {
            int a = programme.At(near[cut], j);
            int b = programme.At(far[cut], j);
            if (a + b + room >= 0)
            {
                Raise(near[cut], j, rest + b);
                Raise(far[cut], j, rest + a);
            }
        }

        near = _grid.CutsY.Near(j);
        far = _grid.CutsY.Far(j);
        for (int cut = 0; cut < near.Length; cut++)
        {
            int a = programme.At(i, near[cut]);
            int b = programme.At(i, far[cut]);
            if (a + b + room >= 0)
            {
                Raise(i, near[cut], rest + b);
                Raise(i, far[cut], rest + a);
            }
        }
    }

    private void Raise(int i, int j, int rest)
    {
        if (i >= 0 && j >= 0)
        {
            int at = (i * _grid.Y.Count) + j;
            _rest[at] = Math.Max(_rest[at], rest);
        }
    }
}
