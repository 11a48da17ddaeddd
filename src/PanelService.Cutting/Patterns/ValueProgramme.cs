// Problem: the most valuable guillotine pattern of unlimited copies, for a sheet and every rectangle inside it.
// Idea:    F(x, y) = best of a single piece, F(x1, y) + F(x − x1, y) and F(x, y1) + F(x, y − y1) over normal points.
// Source:  Gilmore and Gomory, Operations Research 14 (1966); Beasley, JORS 36 (1985); the points: see PointSet.
// Cost:    (cuts in x) × (points in y) + (cuts in y) × (points in x) additions, sixteen at a time. Rows closer together
//          than the narrowest piece do not depend on one another, so the cuts along y take sixteen rows at once from a
//          transposed tile instead of gathering. 48 × 96 in with twelve inch formats: under 2 ms.
// Not:     bounded counts: a pattern may hold more of a piece than is wanted (see CappedProgramme).
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace PanelService.Cutting.Patterns;

/// <summary>
/// The exact programme, in a table of 31 bits or a narrow one of 16 (<see cref="NarrowTable"/>). One instance is filled again for
/// each set of values; it is not thread-safe.
/// </summary>
internal sealed class ValueProgramme
{
    private const int Lanes = 16;

    /// <summary>A narrow table's visit takes this part of another's.</summary>
    public const int NarrowShare = 3;

    // So few rows of cuts are far less than a millisecond.
    private const int RowsOfLook = 64;

    private readonly Grid _grid;
    private readonly int _stride;
    private readonly int[] _best = [];
    private readonly int[] _tile = [];
    private readonly NarrowTable? _narrow;
    private readonly int[][] _shapesByColumn;
    private int[] _values = [];
    private int _rows;
    private int _length;
    private double _tinyDensity;

    /// <summary>Makes room for a grid.</summary>
    /// <param name="grid">The points and shapes.</param>
    /// <param name="narrow">Whether sixteen bits are enough for what the largest rectangle is worth.</param>
    public ValueProgramme(Grid grid, bool narrow = false)
    {
        _grid = grid;
        if (narrow)
        {
            _narrow = new NarrowTable(grid);
        }
        else
        {
            _stride = (grid.Y.Count + Lanes - 1) / Lanes * Lanes;
            _best = new int[checked(grid.X.Count * _stride)];
            _tile = new int[_stride * Lanes];
        }

        _shapesByColumn = new int[grid.X.Count][];
        var byColumn = Enumerable.Range(0, grid.Shapes.Length).ToLookup(s => grid.Corners[s].Column);
        for (int i = 0; i < grid.X.Count; i++)
        {
            _shapesByColumn[i] = [.. byColumn[i]];
        }
    }

    /// <summary>Whether the values outgrew a narrow table when it was last filled: then it is void.</summary>
    /// <param name="width">The largest width of interest, without the kerf.</param>
    /// <param name="height">The largest height of interest, without the kerf.</param>
    public bool IsOutgrown(long width, long height)
    {
        int i = _grid.Column(width + _grid.Kerf);
        int j = _grid.Row(height + _grid.Kerf);
        return _narrow is not null && i >= 0 && j >= 0 && At(i, j) == ushort.MaxValue;
    }

    /// <summary>The grid.</summary>
    public Grid Grid => _grid;

    /// <summary>Fills the whole table.</summary>
    /// <param name="values">The value of one of each piece, 0 or more; no pattern's value may reach 2³¹; of a narrow table no piece's 2¹⁶.</param>
    public long Fill(ReadOnlySpan<int> values) => Fill(values, long.MaxValue / 2, long.MaxValue / 2);

    /// <summary>Fills the table for rectangles up to a size; what was filled beyond it before is void.</summary>
    /// <param name="values">The value of one of each piece, 0 or more; no pattern's value may reach 2³¹; of a narrow table no piece's 2¹⁶.</param>
    /// <param name="width">The largest width of interest, without the kerf.</param>
    /// <param name="height">The largest height of interest, without the kerf.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <returns>Roughly how many cell visits that took.</returns>
    /// <exception cref="OperationCanceledException">A stop was asked for; the table is void.</exception>
    public long Fill(ReadOnlySpan<int> values, long width, long height, CancellationToken cancellation = default)
    {
        int[] worth = values.ToArray();
        _values = worth;
        _tinyDensity = _grid.Tiny.Select(tiny => worth[tiny.Piece] / tiny.Area).DefaultIfEmpty(0).Max();
        int columns = _grid.Column(width + _grid.Kerf) + 1;
        _rows = _grid.Row(height + _grid.Kerf) + 1;
        _length = Math.Min(_stride, (_rows + Lanes - 1) / Lanes * Lanes);
        long visits = (_grid.CutsX.CountBefore(columns) * _rows) + (_grid.CutsY.CountBefore(_rows) * columns) + ((long)columns * _rows);
        if (_narrow is not null)
        {
            _narrow.Fill(_shapesByColumn, worth, columns, _rows, cancellation);
            return visits / NarrowShare;
        }

        for (int first = 0, end; first < columns; first = end)
        {
            end = _grid.X.EndOfTile(first, columns, Lanes);
            for (int i = first; i < end; i++)
            {
                CutAcrossWidth(i, first);
                cancellation.ThrowIfCancellationRequested();
            }

            CutAcrossHeight(first, end, cancellation);
        }

        return visits;
    }

    /// <summary>The best value of a rectangle, sizes without the kerf.</summary>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    public int Value(long width, long height)
    {
        int i = _grid.Column(width + _grid.Kerf);
        int j = _grid.Row(height + _grid.Kerf);
        int found = i < 0 || j < 0 ? 0 : At(i, j);
        return found + (int)Math.Ceiling(_tinyDensity * (width + _grid.Kerf) * (height + _grid.Kerf));
    }

    /// <summary>A pattern of the best value of a rectangle (what is too small for the grid left out); null where that is 0.</summary>
    /// <param name="width">Width without the kerf.</param>
    /// <param name="height">Height without the kerf.</param>
    public Block? Pattern(long width, long height)
    {
        int i = _grid.Column(width + _grid.Kerf);
        int j = _grid.Row(height + _grid.Kerf);
        return i < 0 || j < 0 || At(i, j) == 0 ? null : Trace(i, j);
    }

    /// <summary>
    /// Patterns of a rectangle that differ in their first cut, the most valuable first: they cost no programme of their own.
    /// </summary>
    /// <param name="width">Width without the kerf.</param>
    /// <param name="height">Height without the kerf.</param>
    /// <param name="above">Only patterns worth more than this.</param>
    public IEnumerable<Block> Patterns(long width, long height, int above)
    {
        int i = _grid.Column(width + _grid.Kerf);
        int j = _grid.Row(height + _grid.Kerf);
        if (i < 0 || j < 0)
        {
            return [];
        }

        var cuts = new List<(int Worth, Axis Axis, int Near, int Far)>();
        AddCuts(cuts, Axis.X, _grid.CutsX, i, a => At(a, j));
        AddCuts(cuts, Axis.Y, _grid.CutsY, j, b => At(i, b));
        return cuts.Where(cut => cut.Worth > above)
            .OrderByDescending(cut => cut.Worth)
            .Select(cut => cut.Axis == Axis.X
                ? BlockMath.Join(Axis.X, Trace(cut.Far, j), Trace(cut.Near, j))
                : BlockMath.Join(Axis.Y, Trace(i, cut.Far), Trace(i, cut.Near)));
    }

    private static void AddCuts(
        List<(int Worth, Axis Axis, int Near, int Far)> cuts, Axis axis, CutTable table, int at, Func<int, int> worth)
    {
        var near = table.Near(at);
        var far = table.Far(at);
        for (int cut = 0; cut < near.Length; cut++)
        {
            var (a, b) = (worth(near[cut]), worth(far[cut]));
            if (a > 0 && b > 0)
            {
                cuts.Add((a + b, axis, near[cut], far[cut]));
            }
        }
    }

    /// <summary>The best value at two points.</summary>
    /// <param name="i">The index of the point along the width.</param>
    /// <param name="j">The index of the point along the height.</param>
    [MethodImpl(Compiling.InPlace)]
    public int At(int i, int j) => _narrow is { } narrow ? narrow.At(i, j) : _best[(i * _stride) + j];

    /// <summary>One column of the table: single pieces, the column before, and every cut across the width.</summary>
    [MethodImpl(Compiling.AtOnce)]
    private void CutAcrossWidth(int i, int firstOfTile)
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

        // The tile's other columns are not finished yet, so the shapes they bring are placed here too.
        for (int column = firstOfTile; column <= i; column++)
        {
            PlaceShapes(column, row);
        }

        ref int cells = ref MemoryMarshal.GetReference(row);
        ref int all = ref MemoryMarshal.GetArrayDataReference(_best);
        var near = _grid.CutsX.Near(i);
        var far = _grid.CutsX.Far(i);
        for (int cut = 0; cut < near.Length; cut++)
        {
            MaxOfSum(ref cells, ref Unsafe.Add(ref all, near[cut] * _stride), ref Unsafe.Add(ref all, far[cut] * _stride), _length);
        }
    }

    private void PlaceShapes(int column, Span<int> row)
    {
        foreach (int index in _shapesByColumn[column])
        {
            int value = _values[_grid.Shapes[index].Piece];
            for (int j = _grid.Corners[index].Row; j < _rows && row[j] < value; j++)
            {
                row[j] = value;
            }
        }
    }

    [MethodImpl(Compiling.AtOnce)]
    private static void MaxOfSum(ref int target, ref int a, ref int b, int length)
    {
        for (nuint j = 0; j < (nuint)length; j += Lanes)
        {
            var sum = Vector512.LoadUnsafe(ref a, j) + Vector512.LoadUnsafe(ref b, j);
            Vector512.Max(Vector512.LoadUnsafe(ref target, j), sum).StoreUnsafe(ref target, j);
        }
    }

    /// <summary>Every cut across the height of up to sixteen columns at once, on a transposed copy of them.</summary>
    [MethodImpl(Compiling.AtOnce)]
    private void CutAcrossHeight(int first, int end, CancellationToken cancellation)
    {
        int count = _rows;
        for (int i = first; i < end; i++)
        {
            int from = i * _stride;
            for (int j = 0; j < count; j++)
            {
                _tile[(j * Lanes) + i - first] = _best[from + j];
            }
        }

        CutTile(count, cancellation);
        for (int i = first; i < end; i++)
        {
            int to = i * _stride;
            for (int j = 0; j < count; j++)
            {
                _best[to + j] = _tile[(j * Lanes) + i - first];
            }
        }
    }

    [MethodImpl(Compiling.AtOnce)]
    private void CutTile(int count, CancellationToken cancellation)
    {
        ref int tile = ref MemoryMarshal.GetArrayDataReference(_tile);
        var best = Vector512<int>.Zero;
        for (int j = 0; j < count; j++)
        {
            if (j % RowsOfLook == 0)
            {
                cancellation.ThrowIfCancellationRequested();
            }

            best = Vector512.Max(best, Vector512.LoadUnsafe(ref tile, (nuint)(j * Lanes)));
            var near = _grid.CutsY.Near(j);
            var far = _grid.CutsY.Far(j);
            for (int cut = 0; cut < near.Length; cut++)
            {
                var sum = Vector512.LoadUnsafe(ref tile, (nuint)(near[cut] * Lanes))
                    + Vector512.LoadUnsafe(ref tile, (nuint)(far[cut] * Lanes));
                best = Vector512.Max(best, sum);
            }

            best.StoreUnsafe(ref tile, (nuint)(j * Lanes));
        }
    }

    /// <summary>Finds again, by comparing values, how a cell came by its best.</summary>
    private Block Trace(int i, int j)
    {
        int value = At(i, j);
        while (i > 0 && At(i - 1, j) == value)
        {
            i--;
        }

        while (j > 0 && At(i, j - 1) == value)
        {
            j--;
        }

        foreach (int index in _shapesByColumn[i])
        {
            var shape = _grid.Shapes[index];
            if (_values[shape.Piece] == value && _grid.Corners[index].Row <= j)
            {
                return new PieceBlock(shape.Piece, shape.Turned);
            }
        }

        return TraceCut(Axis.X, _grid.CutsX, i, i, j, value)
            ?? TraceCut(Axis.Y, _grid.CutsY, j, i, j, value)
            ?? throw new InvalidOperationException("A cell's value has no origin.");
    }

    private Block? TraceCut(Axis axis, CutTable cuts, int at, int i, int j, int value)
    {
        var near = cuts.Near(at);
        var far = cuts.Far(at);
        for (int cut = 0; cut < near.Length; cut++)
        {
            var (i1, j1) = axis == Axis.X ? (near[cut], j) : (i, near[cut]);
            var (i2, j2) = axis == Axis.X ? (far[cut], j) : (i, far[cut]);
            int a = At(i1, j1);
            int b = At(i2, j2);
            if (a > 0 && b > 0 && a + b == value)
            {
                return BlockMath.Join(axis, Trace(i2, j2), Trace(i1, j1));
            }
        }

        return null;
    }
}
