// Problem: the most valuable pattern that holds no more of each piece than is still wanted.
// Idea:    the programme of ValueProgramme, where every cell also carries how many of each piece its pattern holds;
//          what is too much when two cells join counts for nothing. Only joins whose plain sum would be better are
//          looked at closely, which is few.
// Source:  the two-dimensional form of a bounded knapsack heuristic; compare Fayard, Hifi and Zissimopoulos, JORS 49 (1998).
// Cost:    as ValueProgramme without the vector unit, over the points of what is still wanted only.
// Not:     exact: one pattern a cell cannot be best for every neighbour. It fills sheets; it proves nothing.
namespace PanelService.Cutting.Patterns;

/// <summary>Fills one stock rectangle well from a bounded demand.</summary>
internal sealed class CappedProgramme
{
    private readonly Grid _grid;
    private readonly int[] _room;
    private readonly int[] _pieceValues;
    private readonly int[] _value;
    private readonly int[] _counts;
    private readonly Origin[] _origin;
    private readonly int _types;

    private CappedProgramme(Grid grid, int[] room, int[] values)
    {
        (_grid, _room, _pieceValues) = (grid, room, values);
        _types = grid.PieceCount;
        int cells = checked(grid.X.Count * grid.Y.Count);
        _value = new int[cells];
        _counts = new int[checked(cells * _types)];
        _origin = new Origin[cells];
    }

    /// <summary>Finds a pattern.</summary>
    /// <param name="grid">Points made with the bounded demand.</param>
    /// <param name="room">Per piece, how many may be placed.</param>
    /// <param name="values">Per piece, the value of one; above 0 where it is wanted.</param>
    /// <returns>The pattern's value and block; null where nothing fits.</returns>
    public static (int Value, Block? Block) Fill(Grid grid, int[] room, int[] values)
    {
        if (grid.X.Count == 0 || grid.Y.Count == 0)
        {
            return (0, null);
        }

        var programme = new CappedProgramme(grid, room, values);
        programme.Run();
        int last = programme._value.Length - 1;
        return (programme._value[last], programme._value[last] == 0 ? null : programme.Trace(last));
    }

    private void Run()
    {
        var byColumn = _grid.Shapes
            .Where(shape => _room[shape.Piece] > 0)
            .ToLookup(shape => _grid.X.Floor(shape.Width));
        for (int i = 0; i < _grid.X.Count; i++)
        {
            var shapes = byColumn[i].Select(shape => (shape, Y: _grid.Y.Floor(shape.Height))).ToArray();
            for (int j = 0; j < _grid.Y.Count; j++)
            {
                int cell = Cell(i, j);
                Inherit(cell, i > 0 ? Cell(i - 1, j) : -1);
                Inherit(cell, j > 0 ? Cell(i, j - 1) : -1);
                foreach (var (shape, y) in shapes)
                {
                    Place(cell, shape, y, j);
                }

                TryCuts(cell, i, j);
            }
        }
    }

    private int Cell(int i, int j) => (i * _grid.Y.Count) + j;

    private Span<int> Counts(int cell) => _counts.AsSpan(cell * _types, _types);

    private void Inherit(int cell, int from)
    {
        if (from >= 0 && _value[from] > _value[cell])
        {
            _value[cell] = _value[from];
            _origin[cell] = Origin.Same(from);
            Counts(from).CopyTo(Counts(cell));
        }
    }

    private void Place(int cell, Shape shape, int y, int j)
    {
        if (y != j || _pieceValues[shape.Piece] <= _value[cell])
        {
            return;
        }

        _value[cell] = _pieceValues[shape.Piece];
        _origin[cell] = Origin.Of(shape);
        Counts(cell).Clear();
        Counts(cell)[shape.Piece] = 1;
    }

    private void TryCuts(int cell, int i, int j)
    {
        int rows = _grid.Y.Count;
        var near = _grid.CutsX.Near(i);
        var far = _grid.CutsX.Far(i);
        int best = _value[cell];
        for (int cut = 0; cut < near.Length && cut < far.Length; cut++)
        {
            int a = unchecked((far[cut] * rows) + j);
            int b = unchecked((near[cut] * rows) + j);
            if (unchecked(_value[a] + _value[b]) > best)
            {
                best = Join(cell, a, b, Axis.X);
            }
        }

        var column = _value.AsSpan(i * rows, rows);
        near = _grid.CutsY.Near(j);
        far = _grid.CutsY.Far(j);
        for (int cut = 0; cut < near.Length && cut < far.Length; cut++)
        {
            if (unchecked(column[far[cut]] + column[near[cut]]) > best)
            {
                best = Join(cell, (i * rows) + far[cut], (i * rows) + near[cut], Axis.Y);
            }
        }
    }

    private int Join(int cell, int first, int second, Axis axis)
    {
        var a = Counts(first);
        var b = Counts(second);
        int value = 0;
        for (int t = 0; t < a.Length; t++)
        {
            value += Math.Min(a[t] + b[t], _room[t]) * _pieceValues[t];
        }

        if (value <= _value[cell])
        {
            return _value[cell];
        }

        var counts = Counts(cell);
        for (int t = 0; t < a.Length; t++)
        {
            counts[t] = Math.Min(a[t] + b[t], _room[t]);
        }

        _value[cell] = value;
        _origin[cell] = Origin.Cut(first, second, axis);
        return value;
    }

    private Block Trace(int cell)
    {
        int[] room = [.. Counts(cell)];
        return BlockMath.Prune(TraceWhole(cell), room)
            ?? throw new InvalidOperationException("A cell of some value holds no piece.");
    }

    private Block TraceWhole(int cell)
    {
        var origin = _origin[cell];
        if (origin.IsShape)
        {
            return new PieceBlock(origin.First, origin.Turned);
        }

        return origin.Second < 0
            ? TraceWhole(origin.First)
            : BlockMath.Join(origin.Axis, TraceWhole(origin.First), TraceWhole(origin.Second));
    }

    /// <summary>How a cell came by its pattern: a piece, the same as another cell, or two cells joined.</summary>
    private readonly record struct Origin(int First, int Second, byte Kind)
    {
        public bool IsShape => Kind >= 2;

        public bool Turned => Kind == 3;

        public Axis Axis => (Axis)Kind;

        public static Origin Of(Shape shape) => new(shape.Piece, -1, shape.Turned ? (byte)3 : (byte)2);

        public static Origin Same(int cell) => new(cell, -1, 0);

        public static Origin Cut(int first, int second, Axis axis) => new(first, second, (byte)axis);
    }
}
