// Problem: the most valuable pattern that holds no more of each piece than is still wanted.
// Idea:    the programme of ValueProgramme, where every cell also carries how many of each piece its pattern holds;
//          what is too much when two cells join counts for nothing. Only joins whose plain sum would be better are
//          looked at closely, which is few.
// Source:  the two-dimensional form of a bounded knapsack heuristic; compare Fayard, Hifi and Zissimopoulos, JORS 49 (1998).
// Cost:    about thirty times ValueProgramme's, over the points of what is still wanted only. Cuts across the longer axis are
//          compared eight at a time; counts are bytes, 32 types at a time: what two cells hold too much together is one vector subtraction, and mostly nothing.
// Not:     exact: one pattern a cell cannot be best for every neighbour. It fills sheets; it proves nothing.
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace PanelService.Cutting.Patterns;

/// <summary>Fills one stock rectangle well from a bounded demand.</summary>
internal sealed class CappedProgramme
{
    /// <summary>No pattern holds more of a piece: two counts of at most this add up within a byte.</summary>
    public const int MostOfOne = 127;

    private const int Lanes = 32;

    // Values looked at together.
    private const int Wide = 8;

    private readonly Grid _grid;
    private readonly Axis _longAxis;
    private readonly PointSet _long;
    private readonly PointSet _short;
    private readonly CutTable _longCuts;
    private readonly CutTable _shortCuts;
    private readonly int _stride;
    private readonly byte[] _room;
    private readonly int[] _pieceValues;
    private readonly int[] _value;
    private readonly byte[] _counts;
    private readonly Origin[] _origin;
    private readonly int _types;

    private CappedProgramme(Grid grid, int[] room, int[] values)
    {
        _grid = grid;
        _types = (grid.PieceCount + Lanes - 1) / Lanes * Lanes;
        _room = new byte[_types];
        for (int t = 0; t < room.Length; t++)
        {
            _room[t] = (byte)Math.Min(room[t], MostOfOne);
        }

        _pieceValues = values;
        _longAxis = grid.X.Count >= grid.Y.Count ? Axis.X : Axis.Y;
        (_long, _short) = _longAxis == Axis.X ? (grid.X, grid.Y) : (grid.Y, grid.X);
        (_longCuts, _shortCuts) = _longAxis == Axis.X ? (grid.CutsX, grid.CutsY) : (grid.CutsY, grid.CutsX);
        _stride = (_short.Count + Wide - 1) / Wide * Wide;
        int cells = checked(_long.Count * _stride);
        _value = new int[cells];
        _counts = new byte[checked(cells * _types)];
        _origin = new Origin[cells];
    }

    /// <summary>Finds a pattern.</summary>
    /// <param name="grid">Points made with the bounded demand.</param>
    /// <param name="room">Per piece, how many may be placed.</param>
    /// <param name="values">Per piece, the value of one; above 0 where it is wanted.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <returns>The pattern's value and block; null where nothing fits.</returns>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public static (int Value, Block? Block) Fill(Grid grid, int[] room, int[] values, CancellationToken cancellation = default)
    {
        if (grid.X.Count == 0 || grid.Y.Count == 0)
        {
            return (0, null);
        }

        var programme = new CappedProgramme(grid, room, values);
        programme.Run(cancellation);
        int last = programme.Cell(programme._long.Count - 1, programme._short.Count - 1);
        return (programme._value[last], programme._value[last] == 0 ? null : programme.Trace(last));
    }

    private void Run(CancellationToken cancellation)
    {
        var byLong = _grid.Shapes
            .Where(shape => _room[shape.Piece] > 0)
            .Select(shape => (Shape: shape, At: Extents(shape)))
            .ToLookup(s => _long.Floor(s.At.Long), s => (s.Shape, _short.Floor(s.At.Short)));
        for (int i = 0; i < _long.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (int j = 0; j < _short.Count && i > 0; j++)
            {
                Inherit(Cell(i, j), Cell(i - 1, j));
            }

            foreach (var (shape, j) in byLong[i])
            {
                Place(Cell(i, j), shape);
            }

            TryLongCuts(i);
            for (int j = 0; j < _short.Count; j++)
            {
                if (j > 0)
                {
                    Inherit(Cell(i, j), Cell(i, j - 1));
                }

                TryShortCuts(i, j);
            }
        }
    }

    private (long Long, long Short) Extents(Shape shape) =>
        _longAxis == Axis.X ? (shape.Width, shape.Height) : (shape.Height, shape.Width);

    private int Cell(int i, int j) => (i * _stride) + j;

    private Span<byte> Counts(int cell) => _counts.AsSpan(cell * _types, _types);

    private void Inherit(int cell, int from)
    {
        if (_value[from] > _value[cell])
        {
            _value[cell] = _value[from];
            _origin[cell] = Origin.Same(from);
            Counts(from).CopyTo(Counts(cell));
        }
    }

    private void Place(int cell, Shape shape)
    {
        if (_pieceValues[shape.Piece] <= _value[cell])
        {
            return;
        }

        _value[cell] = _pieceValues[shape.Piece];
        _origin[cell] = Origin.Of(shape);
        Counts(cell).Clear();
        Counts(cell)[shape.Piece] = 1;
    }

    /// <summary>Every cut across the long axis, for eight cells of the short axis at a time.</summary>
    [MethodImpl(Compiling.AtOnce)]
    private void TryLongCuts(int i)
    {
        var near = _longCuts.Near(i);
        var far = _longCuts.Far(i);
        ref int values = ref MemoryMarshal.GetArrayDataReference(_value);
        int row = i * _stride;
        for (int cut = 0; cut < near.Length && cut < far.Length; cut++)
        {
            int a = far[cut] * _stride;
            int b = near[cut] * _stride;
            for (int j = 0; j < _stride; j += Wide)
            {
                var sum = Vector256.LoadUnsafe(ref values, (nuint)(a + j)) + Vector256.LoadUnsafe(ref values, (nuint)(b + j));
                uint better = Vector256.GreaterThan(sum, Vector256.LoadUnsafe(ref values, (nuint)(row + j))).ExtractMostSignificantBits();
                for (; better != 0; better &= better - 1)
                {
                    int at = j + BitOperations.TrailingZeroCount(better);
                    _ = Join(row + at, a + at, b + at, _longAxis);
                }
            }
        }
    }

    [MethodImpl(Compiling.AtOnce)]
    private void TryShortCuts(int i, int j)
    {
        int row = i * _stride;
        var cells = _value.AsSpan(row, _stride);
        var near = _shortCuts.Near(j);
        var far = _shortCuts.Far(j);
        int best = cells[j];
        for (int cut = 0; cut < near.Length && cut < far.Length; cut++)
        {
            if (unchecked(cells[far[cut]] + cells[near[cut]]) > best)
            {
                best = Join(row + j, row + far[cut], row + near[cut], _longAxis == Axis.X ? Axis.Y : Axis.X);
            }
        }
    }

    [MethodImpl(Compiling.InPlace)]
    private int Join(int cell, int first, int second, Axis axis)
    {
        int best = _value[cell];
        int sum = _value[first] + _value[second];
        int excess = Excess(first, second, sum - best);
        if (excess >= sum - best)
        {
            return best;
        }

        ref byte counts = ref MemoryMarshal.GetArrayDataReference(_counts);
        for (int t = 0; t < _types; t += Lanes)
        {
            var both = Vector256.LoadUnsafe(ref counts, (nuint)((first * _types) + t))
                + Vector256.LoadUnsafe(ref counts, (nuint)((second * _types) + t));
            Vector256.Min(both, Vector256.LoadUnsafe(ref _room[t])).StoreUnsafe(ref counts, (nuint)((cell * _types) + t));
        }

        _value[cell] = sum - excess;
        _origin[cell] = Origin.Cut(first, second, axis);
        return sum - excess;
    }

    /// <summary>The value of what two cells hold too much together, added up until it is so much that they are of no use.</summary>
    [MethodImpl(Compiling.InPlace)]
    private int Excess(int first, int second, int useless)
    {
        ref byte counts = ref MemoryMarshal.GetArrayDataReference(_counts);
        int excess = 0;
        for (int t = 0; t < _types; t += Lanes)
        {
            var sum = Vector256.LoadUnsafe(ref counts, (nuint)((first * _types) + t))
                + Vector256.LoadUnsafe(ref counts, (nuint)((second * _types) + t));
            var over = sum - Vector256.Min(sum, Vector256.LoadUnsafe(ref _room[t]));
            for (uint some = ~Vector256.Equals(over, Vector256<byte>.Zero).ExtractMostSignificantBits(); some != 0; some &= some - 1)
            {
                int at = BitOperations.TrailingZeroCount(some);
                excess += over[at] * _pieceValues[t + at];
                if (excess >= useless)
                {
                    return excess;
                }
            }
        }

        return excess;
    }

    private Block Trace(int cell)
    {
        int[] room = new int[_types];
        for (int t = 0; t < _types; t++)
        {
            room[t] = Counts(cell)[t];
        }

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
