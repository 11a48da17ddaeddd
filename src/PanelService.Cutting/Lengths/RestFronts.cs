// Problem: can these few rectangles be cut from that one, with little to waste, and how?
// Idea:    for every set of them the smallest rectangles that hold it, sets of fewer first, as in FrontTable. Here a rectangle is
//          dropped as soon as it wastes more than there is to waste, and few sets have any: two can only be joined whose sides
//          nearly meet, and what is beside and behind them must fill the room, which no sum of the others' sides may do.
// Source:  Held and Karp, J. SIAM 10 (1962); shape functions: Stockmeyer, Information and Control 57 (1983); sums of sides: Herz,
//          IBM Journal 16 (1972), Christofides and Whitlock, Operations Research 25 (1977).
// Cost:    pairs of rectangles whose sides nearly meet: for 13 to begin with and 1 % to waste about a millisecond.
// Not:     for many, or with much to waste.
using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>Decides whether a few rectangles can be cut from one, and how. One instance is used again for every room; it is not thread-safe.</summary>
internal sealed class RestFronts
{
    private readonly bool _turn;
    private readonly int _width;
    private readonly int[] _lostBeside;
    private readonly int[] _lostBehind;
    private readonly bool[] _filled;
    private readonly List<Front> _fronts = [];
    private (int Width, int Length)[] _parts = [];
    private int _length;
    private int _waste;

    // Per set the place of its newest front, from 1; 0: it has none.
    private int[] _newest = [];
    private SideIndex[] _byWidth = [];
    private SideIndex[] _byLength = [];

    /// <summary>Prepares.</summary>
    /// <param name="turn">Whether the rectangles may be turned.</param>
    /// <param name="width">Width of the rectangle they are cut from.</param>
    /// <param name="longest">Its length is never more than this.</param>
    public RestFronts(bool turn, int width, int longest)
    {
        (_turn, _width) = (turn, width);
        _lostBeside = new int[width + 1];
        _lostBehind = new int[longest + 1];
        _filled = new bool[Math.Max(width, longest) + 1];
    }

    /// <summary>How many pairs were looked at.</summary>
    public long Looks { get; private set; }

    /// <summary>Decides.</summary>
    /// <param name="parts">The rectangles' sizes.</param>
    /// <param name="length">Length of the rectangle they are cut from.</param>
    /// <returns>Whether all parts can be cut from the room.</returns>
    public bool Fit((int Width, int Length)[] parts, int length)
    {
        Begin(parts, length);
        if (_waste < 0)
        {
            return false;
        }

        for (int p = 0; p < parts.Length; p++)
        {
            AddPart(p, parts[p].Width, parts[p].Length);
            if (_turn)
            {
                AddPart(p, parts[p].Length, parts[p].Width);
            }

            if (_newest[1 << p] == 0)
            {
                return false;
            }
        }

        Index(1, 0);
        for (int size = 2; size <= parts.Length; size++)
        {
            int from = _fronts.Count;
            for (int first = 1; first < size; first++)
            {
                JoinBeside(first, size - first);
                JoinBehind(first, size - first);
            }

            Index(size, from);
        }

        return _newest[Everything] > 0;
    }

    /// <summary>How the rectangles lie, after <see cref="Fit"/> said that they do.</summary>
    /// <param name="lying">A rectangle by its place, and whether it is turned.</param>
    public Block Plan(Func<int, bool, Block> lying) => Plan(_newest[Everything] - 1, lying);

    private int Everything => (1 << _parts.Length) - 1;

    private Block Plan(int at, Func<int, bool, Block> lying)
    {
        var front = _fronts[at];
        if (front.First < 0)
        {
            int part = BitOperations.TrailingZeroCount(front.Set);
            return lying(part, _parts[part] != (front.Width, front.Length));
        }

        var (first, second) = (_fronts[front.First], _fronts[front.Second]);
        return BlockMath.Join(first.Width + second.Width == front.Width ? Axis.X : Axis.Y, Plan(front.First, lying), Plan(front.Second, lying));
    }

    private void Begin((int Width, int Length)[] parts, int length)
    {
        foreach (ref readonly var front in CollectionsMarshal.AsSpan(_fronts))
        {
            _newest[front.Set] = 0;
        }

        _fronts.Clear();
        (_parts, _length) = (parts, length);
        _waste = (_width * length) - parts.Sum(part => part.Width * part.Length);
        if (_newest.Length <= Everything)
        {
            _newest = new int[Everything + 1];
            _byWidth = [.. Enumerable.Range(0, parts.Length + 1).Select(_ => new SideIndex(_width))];
            _byLength = [.. Enumerable.Range(0, parts.Length + 1).Select(_ => new SideIndex(_lostBehind.Length - 1))];
        }

        SetLost(_lostBeside, _width, alongWidth: true);
        SetLost(_lostBehind, length, alongWidth: false);
    }

    private void AddPart(int part, int width, int length)
    {
        if (Suits(width, length, 0))
        {
            Add(new Front(1 << part, width, length, 0) { First = -1 });
        }
    }

    /// <summary>Sets beside one another those whose lengths nearly meet, the second at least as long.</summary>
    private void JoinBeside(int size, int other)
    {
        var seconds = _byLength[other];
        foreach (ref readonly var one in _byLength[size].All)
        {
            var (from, to) = seconds.Between(one.Length, one.Length + ((_waste - one.Waste) / one.Width));
            Looks += to - from;
            for (int at = seconds.NextDisjoint(from, to, one.Set); at < to; at = seconds.NextDisjoint(at + 1, to, one.Set))
            {
                ref readonly var two = ref seconds.All[at];
                int waste = one.Waste + two.Waste + ((two.Length - one.Length) * one.Width);
                if (Suits(one.Width + two.Width, two.Length, waste))
                {
                    Add(new Front(one.Set | two.Set, one.Width + two.Width, two.Length, waste) { First = one.At, Second = two.At });
                }
            }
        }
    }

    /// <summary>Sets behind one another those whose widths nearly meet, the second at least as wide.</summary>
    private void JoinBehind(int size, int other)
    {
        var seconds = _byWidth[other];
        foreach (ref readonly var one in _byWidth[size].All)
        {
            var (from, to) = seconds.Between(one.Width, one.Width + ((_waste - one.Waste) / one.Length));
            Looks += to - from;
            for (int at = seconds.NextDisjoint(from, to, one.Set); at < to; at = seconds.NextDisjoint(at + 1, to, one.Set))
            {
                ref readonly var two = ref seconds.All[at];
                int waste = one.Waste + two.Waste + ((two.Width - one.Width) * one.Length);
                if (Suits(two.Width, one.Length + two.Length, waste))
                {
                    Add(new Front(one.Set | two.Set, two.Width, one.Length + two.Length, waste) { First = one.At, Second = two.At });
                }
            }
        }
    }

    /// <summary>Whether a front fits and wastes no more than there is to waste, with what beside and behind it nothing can fill.</summary>
    private bool Suits(int width, int length, int waste) =>
        waste <= _waste && width <= _width && length <= _length
        && waste + ((long)length * _lostBeside[width]) + ((long)width * _lostBehind[length]) <= _waste;

    /// <summary>Adds a front unless another of its set is within it; drops those that it is within.</summary>
    private void Add(Front front)
    {
        var fronts = CollectionsMarshal.AsSpan(_fronts);
        int kept = -1;
        for (int i = _newest[front.Set] - 1; i >= 0; i = fronts[i].Older)
        {
            ref var known = ref fronts[i];
            if (known.Width <= front.Width && known.Length <= front.Length)
            {
                return;
            }

            if (known.Width < front.Width || known.Length < front.Length)
            {
                kept = i;
                continue;
            }

            known.IsDropped = true;
            if (kept < 0)
            {
                _newest[front.Set] = known.Older + 1;
            }
            else
            {
                fronts[kept].Older = known.Older;
            }
        }

        front.Older = _newest[front.Set] - 1;
        front.At = _fronts.Count;
        _fronts.Add(front);
        _newest[front.Set] = _fronts.Count;
    }

    private void Index(int size, int from)
    {
        var made = CollectionsMarshal.AsSpan(_fronts)[from..];
        _byWidth[size].Fill(made, byWidth: true);
        _byLength[size].Fill(made, byWidth: false);
    }

    /// <summary>Per extent of a part: how much of the room beside it no sum of sides fills.</summary>
    private void SetLost(int[] lost, int room, bool alongWidth)
    {
        var filled = _filled.AsSpan(0, room + 1);
        filled.Clear();
        filled[0] = true;
        foreach (var (width, length) in _parts)
        {
            var (side, turned) = alongWidth ? (width, length) : (length, width);
            for (int sum = room; sum > 0; sum--)
            {
                filled[sum] = filled[sum] || (sum >= side && filled[sum - side]) || (_turn && sum >= turned && filled[sum - turned]);
            }
        }

        lost[room] = 0;
        for (int beside = 1; beside <= room; beside++)
        {
            lost[room - beside] = filled[beside] ? 0 : lost[room - beside + 1] + 1;
        }
    }

    /// <summary>Fronts by one of their sides.</summary>
    private sealed class SideIndex(int longest)
    {
        private readonly int[] _from = new int[longest + 2];
        private readonly int[] _next = new int[longest + 2];
        private Front[] _all = [];
        private int[] _sets = [];
        private int _count;

        public ReadOnlySpan<Front> All => _all.AsSpan(0, _count);

        public void Fill(ReadOnlySpan<Front> fronts, bool byWidth)
        {
            if (_all.Length < fronts.Length)
            {
                (_all, _sets) = (new Front[2 * fronts.Length], new int[2 * fronts.Length]);
            }

            Array.Clear(_from);
            foreach (ref readonly var front in fronts)
            {
                _from[(byWidth ? front.Width : front.Length) + 1] += front.IsDropped ? 0 : 1;
            }

            for (int s = 1; s < _from.Length; s++)
            {
                _from[s] += _from[s - 1];
            }

            _count = _from[^1];
            _from.CopyTo(_next, 0);
            foreach (ref readonly var front in fronts)
            {
                if (!front.IsDropped)
                {
                    int at = _next[byWidth ? front.Width : front.Length]++;
                    (_all[at], _sets[at]) = (front, front.Set);
                }
            }
        }

        public (int From, int To) Between(int least, int most) => (_from[least], _from[Math.Min(most + 1, _from.Length - 1)]);

        /// <summary>The next place from one on whose set has nothing of another, eight looked at at once; the end where there is none.</summary>
        public int NextDisjoint(int from, int to, int set)
        {
            var mask = Vector256.Create(set);
            int at = from;
            for (; at <= to - Vector256<int>.Count; at += Vector256<int>.Count)
            {
                uint disjoint = Vector256.Equals(Vector256.Create(_sets, at) & mask, Vector256<int>.Zero).ExtractMostSignificantBits();
                if (disjoint != 0)
                {
                    return at + BitOperations.TrailingZeroCount(disjoint);
                }
            }

            while (at < to && (_sets[at] & set) != 0)
            {
                at++;
            }

            return at;
        }
    }

    /// <summary>A rectangle that holds a set of the parts.</summary>
    private record struct Front(int Set, int Width, int Length, int Waste)
    {
        /// <summary>The first of the two it is made of; −1: it is a part.</summary>
        public int First { get; init; }

        /// <summary>The second of the two.</summary>
        public int Second { get; init; }

        /// <summary>Its own place among all.</summary>
        public int At { get; set; }

        /// <summary>The place of another of its set; −1: there is none before it.</summary>
        public int Older { get; set; }

        /// <summary>Whether a smaller one of its set was found.</summary>
        public bool IsDropped { get; set; }
    }
}
