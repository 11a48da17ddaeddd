// Problem: which sets of pieces make a rectangle with nothing wasted, or next to nothing?
// Idea:    from the pieces up, by the number of pieces: two blocks with a side in common and no piece in common make a larger
//          one. A block is known by its pieces and its sizes, so that ways to the same block are one, and blocks combine
//          freely: unlike a beam of whole plans, what one corner is made of is no matter to another. Many sides coincide by
//          chance, short ones above all; where a number of pieces makes too many blocks those are kept whose joins are the
//          least likely to be chance: sides that few other pieces have, or come near to.
// Source:  bottom-up building of guillotine patterns, Wang, Operations Research 31 (1983); programmes over sets: Held and
//          Karp, J. SIAM 10 (1962), kept to a beam. The likelihood as a guide is ours.
// Cost:    (pieces × blocks kept)² / (2 × different sides): a quarter of a second for 50 pieces and 1000 blocks a number.
// Not:     complete, unless no number of pieces made more blocks than are kept.
using System.Runtime.InteropServices;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Blocks of a strip's pieces, each piece used once.</summary>
internal sealed class BlockTable
{
    /// <summary>A set has a bit for every piece.</summary>
    public const int MostPieces = 128;

    // Sides are near one another that differ by less than this part of their length.
    private const double NearShare = 8;

    private const int TriesOfUnit = 100;
    private const int CheckEvery = 1 << 16;
    private const int HearEvery = 1 << 13;

    // So many times what is kept may gather before the rest is dropped, and no more than so many above it.
    private const int Gathered = 6;
    private const int MostGathered = 100_000;

    private readonly StripPieces _strip;
    private readonly TableShape _shape;
    private readonly WorkMeter _work;
    private readonly int _offset;
    private readonly (int Width, int Length) _most;
    private readonly double[][] _gain;
    private readonly ChunkedList<TableBlock> _all = new();

    // Of most pairs only this is asked for, so it lies beside one another in memory.
    private readonly List<UInt128> _pieces = [];
    private readonly List<int>?[][] _bySide;
    private readonly List<int>[] _sides;
    private readonly Dictionary<(UInt128 Set, int Width, int Length), int> _known = [];
    private readonly List<(TableBlock Block, double Rank)> _found = [];
    private double _least = double.NegativeInfinity;
    private long _tries;

    /// <summary>Prepares; <see cref="Fill"/> does the work.</summary>
    /// <param name="strip">The strip and its pieces.</param>
    /// <param name="shape">What is looked for.</param>
    /// <param name="work">Where work is counted.</param>
    public BlockTable(StripPieces strip, TableShape shape, WorkMeter work)
    {
        (_strip, _shape, _work) = (strip, shape, work);
        int longest = Math.Max(strip.Width, strip.Length);

        // Where blocks may be turned a side is a side; else widths match widths, and lengths lengths.
        _offset = shape.Turn ? 0 : longest + 1;
        _most = shape.Turn ? (Math.Min(strip.Width, strip.Length), longest) : (strip.Width, strip.Length);
        _gain = [.. Enumerable.Range(0, 2).Select(axis => Enumerable.Range(0, longest + 1).Select(side => GainOf(axis, side)).ToArray())];
        _bySide = new List<int>?[strip.Count + 1][];
        _sides = new List<int>[strip.Count + 1];
    }

    /// <summary>All blocks, by their number of pieces.</summary>
    public ChunkedList<TableBlock> All => _all;

    /// <summary>Whether blocks may be turned: then no block is wider than long.</summary>
    public bool Turn => _shape.Turn;

    /// <summary>Fills the table.</summary>
    /// <returns>A block of all pieces; −1 where there is none.</returns>
    public int Fill()
    {
        for (int p = 0; p < _strip.Count; p++)
        {
            var (width, length) = _strip.Sizes[p];
            bool turned = Turn && width > length;
            Found(new TableBlock(UInt128.One << p, turned ? length : width, turned ? width : length) { First = -1, Second = p, IsTurned = turned });
        }

        Keep(1);
        int most = Math.Min(_strip.Count, _shape.Pieces);
        for (int pieces = 2, made = 0; pieces <= most && made < _shape.Enough && !_work.Exhausted; pieces++)
        {
            for (int few = 1; few <= pieces / 2; few++)
            {
                Join(few, pieces - few);
            }

            made = Keep(pieces);
        }

        return _all.Count > 0 && UInt128.PopCount(_all[_all.Count - 1].Set) == (UInt128)_strip.Count ? _all.Count - 1 : -1;
    }

    /// <summary>How a block lies.</summary>
    /// <param name="block">Its place among <see cref="All"/>.</param>
    /// <param name="turned">Whether it lies with its width along the strip's length.</param>
    public Block Lying(int block, bool turned)
    {
        var it = _all[block];
        if (it.First < 0)
        {
            return _strip.Lying(it.Second, it.IsTurned != turned);
        }

        // As made, the common side goes across and the second follows the first along the strip.
        bool across = it.IsTurned != turned;
        return BlockMath.Join(across ? Axis.X : Axis.Y, Part(it.First, it.FirstSide), Part(it.Second, it.SecondSide));

        Block Part(int part, int side)
        {
            var its = _all[part];
            return Lying(part, across ? its.Length != side : its.Width != side);
        }
    }

    private double GainOf(int axis, int side)
    {
        double reach = Math.Max(2, side / NearShare);
        int near = 0;
        int same = 0;
        foreach (var (width, length) in _strip.Sizes)
        {
            Look(Turn || axis == 0, width);
            Look(Turn || axis == 1, length);
        }

        return -Math.Log((near + 0.5) / ((2 * reach) + 1)) - Math.Log(Math.Max(1, same - 1));

        void Look(bool counts, int other)
        {
            near += counts && Math.Abs(other - side) <= reach ? 1 : 0;
            same += counts && other == side ? 1 : 0;
        }
    }

    private void Join(int few, int many)
    {
        foreach (int side in _sides[few])
        {
            bool along = side >= _offset && !Turn;
            for (int apart = few == many ? 0 : -_shape.Apart; apart <= _shape.Apart; apart++)
            {
                int other = side + apart;
                if (other <= 0 || other >= _bySide[many].Length || (!Turn && (other >= _offset) != along) || _bySide[many][other] is not { } seconds)
                {
                    continue;
                }

                int from = along ? _offset : 0;
                foreach (int a in _bySide[few][side]!)
                {
                    Join(a, seconds, few == many && apart == 0, (side - from, other - from, along));
                }
            }
        }
    }

    private void Join(int a, List<int> seconds, bool alike, (int First, int Second, bool Along) sides)
    {
        Count(seconds.Count);
        var pieces = CollectionsMarshal.AsSpan(_pieces);
        var own = pieces[a];
        foreach (int b in seconds)
        {
            if ((own & pieces[b]) == 0 && (!alike || b > a))
            {
                Join(a, b, sides);
            }
        }
    }

    private void Join(int a, int b, (int First, int Second, bool Along) sides)
    {
        ref readonly var one = ref _all[a];
        ref readonly var other = ref _all[b];
        int side = Math.Max(sides.First, sides.Second);
        int firstLength = OtherSide(one, sides.First, sides.Along);
        int secondLength = OtherSide(other, sides.Second, sides.Along);
        int waste = one.Waste + other.Waste
            + (sides.First < sides.Second ? (side - sides.First) * firstLength : (side - sides.Second) * secondLength);
        int length = firstLength + secondLength;
        bool turned = Turn ? side > length : sides.Along;
        var (width, reach) = turned ? (length, side) : (side, length);
        if (waste <= _shape.Waste && width <= _most.Width && reach <= _most.Length)
        {
            double gain = _gain[sides.Along ? 1 : 0][side] - Math.Log((2 * Math.Abs(sides.First - sides.Second)) + 1);
            Found(new TableBlock(one.Set | other.Set, width, reach)
            {
                Waste = waste,
                Score = gain + one.Score + other.Score,
                First = a,
                Second = b,
                FirstSide = sides.First,
                SecondSide = sides.Second,
                IsTurned = turned,
            });
        }
    }

    private int OtherSide(in TableBlock block, int side, bool along) =>
        Turn ? (block.Width == side ? block.Length : block.Width) : along ? block.Width : block.Length;

    private void Count(int tries)
    {
        _tries += tries;
        if (_tries >= CheckEvery)
        {
            _work.Cancellation.ThrowIfCancellationRequested();
            _work.Spend(_tries / TriesOfUnit);
            _tries %= TriesOfUnit;
        }
    }

    private void Found(TableBlock block)
    {
        double rank = _shape.Drawn ? Drawn(block) : block.Score;
        if (rank <= _least)
        {
            return;
        }

        ref int at = ref CollectionsMarshal.GetValueRefOrAddDefault(_known, (block.Set, block.Width, block.Length), out bool known);
        if (!known)
        {
            at = _found.Count;
            _found.Add((block, rank));
        }
        else if (_found[at].Block.Score < block.Score && _found[at].Block.Waste >= block.Waste)
        {
            _found[at] = (block, rank);
        }

        if (_found.Count >= Math.Min(Gathered * _shape.Kept, _shape.Kept + MostGathered))
        {
            DropWorst();
        }
    }

    private void DropWorst()
    {
        _work.Cancellation.ThrowIfCancellationRequested();
        double[] ranks = [.. _found.Select(one => one.Rank)];
        Array.Sort(ranks);
        _work.Cancellation.ThrowIfCancellationRequested();
        _least = ranks[^_shape.Kept];
        int alike = _shape.Kept - ranks.Count(rank => rank > _least);
        _found.RemoveAll(one => one.Rank < _least || (one.Rank <= _least && alike-- <= 0));
        _known.Clear();
        for (int i = 0; i < _found.Count; i++)
        {
            HearStop(i);
            var block = _found[i].Block;
            _known[(block.Set, block.Width, block.Length)] = i;
        }
    }

    // To keep a hundred thousand takes longer than a stop may.
    private void HearStop(int done)
    {
        if (done % HearEvery == 0)
        {
            _work.Cancellation.ThrowIfCancellationRequested();
        }
    }

    /// <summary>Keeps what was found of a number of pieces.</summary>
    /// <returns>How much that is.</returns>
    private int Keep(int pieces)
    {
        if (_found.Count > _shape.Kept && pieces > 1)
        {
            DropWorst();
        }

        var bySide = _bySide[pieces] = new List<int>?[_offset + Math.Max(_strip.Width, _strip.Length) + 1];
        foreach (var (block, _) in _found)
        {
            HearStop(_all.Count);
            Put(block.Width);
            if (!Turn || block.Length != block.Width)
            {
                Put(_offset + block.Length);
            }

            _all.Add(block);
            _pieces.Add(block.Set);
        }

        _sides[pieces] = [.. Enumerable.Range(0, bySide.Length).Where(side => bySide[side] is not null)];
        int kept = _found.Count;
        _found.Clear();
        _known.Clear();
        _least = double.NegativeInfinity;
        return kept;

        void Put(int side) => (bySide[side] ??= []).Add(_all.Count);
    }

    /// <summary>By chance, but the same for the same block.</summary>
    private static double Drawn(TableBlock block)
    {
        unchecked
        {
            ulong x = ((ulong)block.Set ^ ((ulong)(block.Set >> 64) * 0x94D049BB133111EBUL)) * 0x9E3779B97F4A7C15UL;
            x += (ulong)((block.Width << 15) + block.Length) * 0xBF58476D1CE4E5B9UL;
            x = (x ^ (x >> 29)) * 0xBF58476D1CE4E5B9UL;
            return (x ^ (x >> 32)) >> 11;
        }
    }
}

/// <summary>What a table of blocks looks for.</summary>
/// <param name="Turn">Whether blocks may be turned.</param>
/// <param name="Kept">How many blocks are kept of each number of pieces.</param>
/// <param name="Pieces">Blocks have no more pieces than this.</param>
/// <param name="Enough">Where so many blocks have a number of pieces, blocks of more are not looked for.</param>
/// <param name="Apart">Sides are joined that differ by no more than this.</param>
/// <param name="Waste">No block wastes more than this.</param>
/// <param name="Drawn">Whether what is kept is drawn by chance: many different blocks instead of the likeliest.</param>
internal sealed record TableShape(bool Turn, int Kept, int Pieces = int.MaxValue, int Enough = int.MaxValue, int Apart = 0, int Waste = 0, bool Drawn = false);

/// <summary>A rectangle made of pieces.</summary>
/// <param name="Set">One bit for each piece.</param>
/// <param name="Width">Its width as it lies, or the shorter side where blocks may be turned.</param>
/// <param name="Length">Its length.</param>
internal readonly record struct TableBlock(UInt128 Set, int Width, int Length)
{
    /// <summary>The area in it that is no piece's.</summary>
    public int Waste { get; init; }

    /// <summary>How unlikely its joins are to be chance.</summary>
    public double Score { get; init; }

    /// <summary>The first of the two that make it; −1: it is a single piece.</summary>
    public int First { get; init; }

    /// <summary>The second of the two, or the piece.</summary>
    public int Second { get; init; }

    /// <summary>The side of the first that meets the second.</summary>
    public int FirstSide { get; init; }

    /// <summary>The side of the second that meets the first.</summary>
    public int SecondSide { get; init; }

    /// <summary>Whether it is turned against the way it was made: common side across, the second behind the first.</summary>
    public bool IsTurned { get; init; }
}
