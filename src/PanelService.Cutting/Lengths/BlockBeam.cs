// Problem: a strip was cut up from edge to edge with nothing wasted, or next to nothing: put it together again.
// Idea:    from the pieces up: two blocks with a side in common make a larger one, until every block goes across the whole
//          strip. Many sides coincide by chance, short ones above all; of all ways to go on those are kept whose joins are
//          the least likely to be chance: sides of a length that few others have. What matters of a state is only the
//          sizes of its blocks, so that the same sizes are looked at once. Sides may differ by a little where there is
//          something to waste.
// Source:  bottom-up building of guillotine patterns, Wang, Operations Research 31 (1983); beam search: Ow and Morton, Int.
//          J. Production Research 26 (1988). The likelihood as a guide is ours.
// Cost:    pieces × beam × pairs that match: 60 ms for 40 pieces and a beam of 500.
// Not:     complete: of 100 strips cut up at random into 20 to 60 pieces it puts about half together again.
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Puts pieces together without waste, a beam of states side by side.</summary>
internal sealed class BlockBeam
{
    /// <summary>Sides are whole numbers up to this.</summary>
    public const int LongestSide = (1 << Bits) - 1;

    private const int Bits = 15;
    private const int PairsOfUnit = 25;

    // A whole row is seldom chance.
    private const double RowGain = 3;

    private readonly int _width;
    private readonly int _length;
    private readonly long _budget;
    private readonly bool _turn;
    private readonly double[][] _gain;
    private readonly int[][] _often;
    private readonly WorkMeter _work;

    /// <summary>Prepares.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="pieces">Width and length of every piece as it lies.</param>
    /// <param name="turn">Whether blocks may be turned.</param>
    /// <param name="spread">Sides are alike that differ by less than this part of their length.</param>
    /// <param name="work">Where work is counted.</param>
    public BlockBeam((int Width, int Length) strip, IReadOnlyList<(int Width, int Length)> pieces, bool turn, double spread, WorkMeter work)
    {
        (_width, _length, _turn, _work) = (strip.Width, strip.Length, turn, work);
        _budget = ((long)strip.Width * strip.Length) - pieces.Sum(piece => (long)piece.Width * piece.Length);
        int longest = Math.Max(strip.Width, strip.Length);
        _gain = [.. Enumerable.Range(0, 2).Select(axis => Enumerable.Range(0, longest + 1).Select(side => GainOf(pieces, axis, side, spread)).ToArray())];
        _often = [new int[longest + 1], new int[longest + 1]];
    }

    /// <summary>Searches.</summary>
    /// <param name="pieces">Width and length of every piece as it lies.</param>
    /// <param name="beam">How many states are kept.</param>
    /// <returns>The joins in their order, rows last; null where the pieces were not put together.</returns>
    public List<BlockJoin>? Find(IReadOnlyList<(int Width, int Length)> pieces, int beam)
    {
        if (_budget < 0)
        {
            return null;
        }

        var start = new State([.. pieces.Select(piece => Packed(piece.Width, piece.Length)).Order()], 0, _budget, null, default);
        List<State> states = [start];
        while (states.Count > 0 && !_work.Exhausted)
        {
            var next = new Dictionary<ulong, Step>();
            foreach (var state in states)
            {
                if (state.Blocks.Length == 0)
                {
                    return JoinsOf(state);
                }

                Grow(state, next);
            }

            states = [.. next.Values.OrderByDescending(step => step.Score).ThenBy(step => step.Order).Take(beam).Select(step => step.Made())];
        }

        return null;
    }

    private static List<BlockJoin> JoinsOf(State state)
    {
        var joins = new List<BlockJoin>();
        for (var at = state; at.From is not null; at = at.From)
        {
            joins.Add(at.Join);
        }

        joins.Reverse();
        return joins;
    }

    private double GainOf(IReadOnlyList<(int Width, int Length)> pieces, int axis, int side, double spread)
    {
        double reach = Math.Max(2, side / spread);
        int alike = pieces.Count(piece => (_turn || axis == 0) && Math.Abs(piece.Width - side) <= reach)
            + pieces.Count(piece => (_turn || axis == 1) && Math.Abs(piece.Length - side) <= reach);
        return -Math.Log((alike + 0.5) / ((2 * reach) + 1));
    }

    private void Grow(State state, Dictionary<ulong, Step> next)
    {
        _work.Cancellation.ThrowIfCancellationRequested();
        CountSides(state, 1);
        for (int i = 0; i < state.Blocks.Length; i++)
        {
            var (width, length) = SizeOf(state.Blocks[i]);
            if (i > 0 && state.Blocks[i] == state.Blocks[i - 1])
            {
                // Of blocks alike the first stands for all.
                continue;
            }

            AsRow(state, i, (width, length), next);
            if (_turn && width != length)
            {
                AsRow(state, i, (length, width), next);
            }

            for (int j = i + 1; j < state.Blocks.Length; j++)
            {
                if (j == i + 1 || state.Blocks[j] != state.Blocks[j - 1])
                {
                    JoinBoth(state, (i, j), next);
                }
            }
        }

        CountSides(state, -1);
        _work.Spend(1 + ((long)state.Blocks.Length * state.Blocks.Length / (2 * PairsOfUnit)));
    }

    private void CountSides(State state, int by)
    {
        foreach (int block in state.Blocks)
        {
            var (width, length) = SizeOf(block);
            _often[0][width] += by;
            _often[_turn ? 0 : 1][length] += by;
        }
    }

    private void AsRow(State state, int at, (int Width, int Length) block, Dictionary<ulong, Step> next)
    {
        long waste = (long)(_width - block.Width) * block.Length;
        if (block.Width <= _width && waste <= state.Spare && (block.Width == _width || waste * 4 <= _budget))
        {
            double gain = RowGain - Math.Log((2 * (_width - block.Width)) + 1);
            Add(state, (at, -1), new BlockJoin(block, default, Axis.Y, default), (gain, waste), next);
        }
    }

    private void JoinBoth(State state, (int A, int B) at, Dictionary<ulong, Step> next)
    {
        var a = SizeOf(state.Blocks[at.A]);
        var b = SizeOf(state.Blocks[at.B]);
        var turnedA = (Width: a.Length, Length: a.Width);
        var turnedB = (Width: b.Length, Length: b.Width);
        Along(a, b);
        if (_turn)
        {
            Along(turnedA, b);
            Along(a, turnedB);
            Along(turnedA, turnedB);
        }
        else
        {
            Along(turnedA, turnedB);
        }

        // One on top of the other in the way they stand; where blocks are not turned, the sides swapped stand for side by side.
        void Along((int Width, int Length) one, (int Width, int Length) other)
        {
            int apart = Math.Abs(one.Width - other.Width);
            long waste = (long)apart * (one.Width < other.Width ? one.Length : other.Length);
            if (waste > state.Spare || (waste > 0 && waste * 4 > _budget))
            {
                return;
            }

            bool across = !_turn && one != a;
            (int Width, int Length) made = (Math.Max(one.Width, other.Width), one.Length + other.Length);
            made = across ? (made.Length, made.Width) : made;
            if (!Fits(made))
            {
                return;
            }

            int axis = across ? 1 : 0;
            int side = Math.Max(one.Width, other.Width);
            double gain = _gain[axis][side] - Math.Log((2 * apart) + 1) - Math.Log(Math.Max(1, _often[axis][side] - 1));
            var (first, second) = across ? (a, b) : (one, other);
            Add(state, at, new BlockJoin(first, second, across ? Axis.X : Axis.Y, made), (gain, waste), next);
        }
    }

    private bool Fits((int Width, int Length) block) =>
        (block.Width <= _width && block.Length <= _length) || (_turn && block.Length <= _width && block.Width <= _length);

    private void Add(State state, (int A, int B) at, BlockJoin join, (double Gain, long Waste) worth, Dictionary<ulong, Step> next)
    {
        int made = join.Made.Width == 0 ? -1 : _turn && join.Made.Width > join.Made.Length
            ? Packed(join.Made.Length, join.Made.Width)
            : Packed(join.Made.Width, join.Made.Length);
        ulong hash = state.Hash;
        unchecked
        {
            hash -= Mixed(state.Blocks[at.A]) + (at.B < 0 ? 0 : Mixed(state.Blocks[at.B]));
            hash += made < 0 ? 0 : Mixed(made);
        }

        double score = state.Score + worth.Gain;
        if (!next.TryGetValue(hash, out var known) || known.Score < score)
        {
            next[hash] = new Step(state, at, made, join, score, state.Spare - worth.Waste, known?.Order ?? next.Count);
        }
    }

    private static int Packed(int width, int length) => (width << Bits) | length;

    private static (int Width, int Length) SizeOf(int block) => (block >> Bits, block & LongestSide);

    private static ulong Mixed(int block)
    {
        unchecked
        {
            ulong x = (ulong)block * 0x9E3779B97F4A7C15UL;
            x ^= x >> 29;
            x *= 0xBF58476D1CE4E5B9UL;
            return x ^ (x >> 32);
        }
    }

    /// <summary>Blocks that are not yet rows, smallest first.</summary>
    private sealed class State(int[] blocks, double score, long spare, State? from, BlockJoin join)
    {
        public int[] Blocks => blocks;

        public double Score => score;

        public long Spare => spare;

        public State? From => from;

        public BlockJoin Join => join;

        public ulong Hash { get; } = blocks.Aggregate(0UL, (sum, block) => unchecked(sum + Mixed(block)));
    }

    /// <summary>A state and what is joined in it.</summary>
    private sealed record Step(State From, (int A, int B) At, int NewBlock, BlockJoin Join, double Score, long Spare, int Order)
    {
        public State Made()
        {
            var left = From.Blocks.Where((_, i) => i != At.A && i != At.B);
            return new State([.. (NewBlock < 0 ? left : left.Append(NewBlock)).Order()], Score, Spare, From, Join);
        }
    }
}

/// <summary>Two blocks joined, or one that becomes a row.</summary>
/// <param name="First">The first as it stands.</param>
/// <param name="Second">The second; nothing: the first is a row.</param>
/// <param name="Axis">Along which they follow one another.</param>
/// <param name="Made">What they make; nothing: a row.</param>
internal readonly record struct BlockJoin((int Width, int Length) First, (int Width, int Length) Second, Axis Axis, (int Width, int Length) Made);
