// Problem: coarse grids are only as good as they are fine, and fine ones are dear (Grid).
// Idea:    the table of ValueProgramme in sixteen bits: 32 sums at a time, in half the memory. A row's cells stay in registers
//          while all cuts are tried on them. Sums stop at the largest number instead of running over, so that a table too large
//          for its numbers shows in its last cell.
// Source:  as ValueProgramme.
// Cost:    a third of its time where an axis has some hundreds of points and more: 2.8·10⁹ cell visits in 0.15 s instead of 0.5.
// Not:     for values of more than sixteen bits: what a sheet is worth is told to a sixty-thousandth of it.
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace PanelService.Cutting.Patterns;

/// <summary>The best values of all rectangles of a grid, in sixteen bits.</summary>
internal sealed class NarrowTable
{
    /// <summary>Of a sheet that holds no more pieces than this each can be worth so much that rounding hardly matters.</summary>
    public const int MostPieces = 500;

    /// <summary>The most that a sheet may be worth, with room for every piece's value to be rounded up.</summary>
    public const int Room = ushort.MaxValue - (2 * MostPieces);

    private const int Lanes = 32;

    // Cells that a row keeps in registers: four vectors.
    private const int Held = 4 * Lanes;

    private readonly Grid _grid;
    private readonly int _stride;
    private readonly ushort[] _best;
    private readonly ushort[] _tile;
    private int _rows;
    private int _length;

    /// <summary>Makes room for a grid.</summary>
    /// <param name="grid">The points and shapes.</param>
    public NarrowTable(Grid grid)
    {
        _grid = grid;
        _stride = (grid.Y.Count + Held - 1) / Held * Held;
        _best = new ushort[checked(grid.X.Count * _stride)];
        _tile = new ushort[_stride * Lanes];
    }

    /// <summary>The best value at two points; <see cref="ushort.MaxValue"/>: it is that or more.</summary>
    /// <param name="i">The index of the point along the width.</param>
    /// <param name="j">The index of the point along the height.</param>
    [MethodImpl(Compiling.InPlace)]
    public int At(int i, int j) => _best[(i * _stride) + j];

    /// <summary>Fills the table.</summary>
    /// <param name="shapesByColumn">Which shapes are as wide as each point.</param>
    /// <param name="values">The value of one of each piece.</param>
    /// <param name="columns">How many points along the width.</param>
    /// <param name="rows">How many points along the height.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public void Fill(int[][] shapesByColumn, int[] values, int columns, int rows, CancellationToken cancellation)
    {
        _rows = rows;
        _length = Math.Min(_stride, (rows + Held - 1) / Held * Held);
        for (int first = 0, end; first < columns; first = end)
        {
            end = _grid.X.EndOfTile(first, columns, Lanes);
            for (int i = first; i < end; i++)
            {
                Start(i, first, shapesByColumn, values);
                CutAcrossWidth(i);
                cancellation.ThrowIfCancellationRequested();
            }

            CutAcrossHeight(first, end);
        }
    }

    /// <summary>What a column has without a cut: single pieces, and the last column of the tile before.</summary>
    private void Start(int i, int firstOfTile, int[][] shapesByColumn, int[] values)
    {
        var row = _best.AsSpan(i * _stride, _length);
        if (firstOfTile == 0)
        {
            row.Clear();
        }
        else
        {
            _best.AsSpan((firstOfTile - 1) * _stride, _length).CopyTo(row);
        }

        for (int column = firstOfTile; column <= i; column++)
        {
            foreach (int index in shapesByColumn[column])
            {
                int value = values[_grid.Shapes[index].Piece];
                for (int j = _grid.Corners[index].Row; j < _rows && row[j] < value; j++)
                {
                    row[j] = (ushort)value;
                }
            }
        }
    }

    [MethodImpl(Compiling.AtOnce)]
    private void CutAcrossWidth(int i)
    {
        ref ushort all = ref MemoryMarshal.GetArrayDataReference(_best);
        ref ushort row = ref Unsafe.Add(ref all, i * _stride);
        var near = _grid.CutsX.Near(i);
        var far = _grid.CutsX.Far(i);
        for (int j = 0; j < _length; j += Held)
        {
            ref ushort cells = ref Unsafe.Add(ref row, j);
            var first = Vector512.LoadUnsafe(ref cells);
            var second = Vector512.LoadUnsafe(ref cells, Lanes);
            var third = Vector512.LoadUnsafe(ref cells, 2 * Lanes);
            var fourth = Vector512.LoadUnsafe(ref cells, 3 * Lanes);
            for (int cut = 0; cut < near.Length; cut++)
            {
                ref ushort a = ref Unsafe.Add(ref all, (near[cut] * _stride) + j);
                ref ushort b = ref Unsafe.Add(ref all, (far[cut] * _stride) + j);
                first = Vector512.Max(first, Vector512.AddSaturate(Vector512.LoadUnsafe(ref a), Vector512.LoadUnsafe(ref b)));
                second = Vector512.Max(second, Vector512.AddSaturate(Vector512.LoadUnsafe(ref a, Lanes), Vector512.LoadUnsafe(ref b, Lanes)));
                third = Vector512.Max(third, Vector512.AddSaturate(Vector512.LoadUnsafe(ref a, 2 * Lanes), Vector512.LoadUnsafe(ref b, 2 * Lanes)));
                fourth = Vector512.Max(fourth, Vector512.AddSaturate(Vector512.LoadUnsafe(ref a, 3 * Lanes), Vector512.LoadUnsafe(ref b, 3 * Lanes)));
            }

            first.StoreUnsafe(ref cells);
            second.StoreUnsafe(ref cells, Lanes);
            third.StoreUnsafe(ref cells, 2 * Lanes);
            fourth.StoreUnsafe(ref cells, 3 * Lanes);
        }
    }

    /// <summary>Every cut across the height of up to 32 columns at once, on a transposed copy of them.</summary>
    private void CutAcrossHeight(int first, int end)
    {
        for (int i = first; i < end; i++)
        {
            var row = _best.AsSpan(i * _stride, _rows);
            for (int j = 0; j < row.Length; j++)
            {
                _tile[(j * Lanes) + i - first] = row[j];
            }
        }

        CutTile();
        for (int i = first; i < end; i++)
        {
            var row = _best.AsSpan(i * _stride, _rows);
            for (int j = 0; j < row.Length; j++)
            {
                row[j] = _tile[(j * Lanes) + i - first];
            }
        }
    }

    [MethodImpl(Compiling.AtOnce)]
    private void CutTile()
    {
        ref ushort tile = ref MemoryMarshal.GetArrayDataReference(_tile);
        var best = Vector512<ushort>.Zero;
        for (int j = 0; j < _rows; j++)
        {
            best = Vector512.Max(best, Vector512.LoadUnsafe(ref tile, (nuint)(j * Lanes)));
            var near = _grid.CutsY.Near(j);
            var far = _grid.CutsY.Far(j);
            for (int cut = 0; cut < near.Length; cut++)
            {
                var sum = Vector512.AddSaturate(
                    Vector512.LoadUnsafe(ref tile, (nuint)(near[cut] * Lanes)), Vector512.LoadUnsafe(ref tile, (nuint)(far[cut] * Lanes)));
                best = Vector512.Max(best, sum);
            }

            best.StoreUnsafe(ref tile, (nuint)(j * Lanes));
        }
    }
}
