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
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>Decides whether a few rectangles can be cut from one, and how.</summary>
internal sealed class RestFronts
{
    private readonly (int Width, int Length)[] _parts;
    private readonly bool _turn;
    private readonly (int Width, int Length) _room;
    private readonly int _waste;
    private readonly int[] _lostBeside;
    private readonly int[] _lostBehind;

    // Per set the place of its newest front, from 1; 0: it has none.
    private readonly int[] _newest;
    private readonly List<Front> _fronts = [];
    private readonly SideIndex[] _byWidth;
    private readonly SideIndex[] _byLength;

    /// <summary>Prepares.</summary>
    /// <param name="parts">The rectangles' sizes.</param>
    /// <param name="turn">Whether they may be turned.</param>
    /// <param name="width">Width of the rectangle they are cut from.</param>
    /// <param name="length">Its length.</param>
    public RestFronts((int Width, int Length)[] parts, bool turn, int width, int length)
    {
        (_parts, _turn, _room) = (parts, turn, (width, length));
        _waste = (width * length) - parts.Sum(part => part.Width * part.Length);
        _newest = new int[1 << parts.Length];
        (_byWidth, _byLength) = (new SideIndex[parts.Length + 1], new SideIndex[parts.Length + 1]);
        _lostBeside = Lost(width, part => part.Width, part => part.Length);
        _lostBehind = Lost(length, part => part.Length, part => part.Width);
    }

    /// <summary>How many pairs were looked at.</summary>
    public long Looks { get; private set; }

    /// <summary>Decides.</summary>
    /// <returns>Whether all parts can be cut from the room.</returns>
    public bool Fit()
    {
        if (_waste < 0)
        {
            return false;
        }

        for (int p = 0; p < _parts.Length; p++)
        {
            var (width, length) = _parts[p];
            Add(new Front(1 << p, width, length, 0) { First = -1 });
            if (_turn)
            {
                Add(new Front(1 << p, length, width, 0) { First = -1 });
            }
        }

        Index(1, 0);
        if (Enumerable.Range(0, _parts.Length).Any(p => _newest[1 << p] == 0))
        {
            return false;
        }

        for (int size = 2; size <= _parts.Length; size++)
        {
            int from = _fronts.Count;
            for (int first = 1; first < size; first++)
            {
                JoinBeside(first, size - first);
                JoinBehind(first, size - first);
            }

            Index(size, from);
        }

        return _newest[^1] > 0;
    }

    /// <summary>How the rectangles lie, after <see cref="Fit"/> said that they do.</summary>
    /// <param name="lying">A rectangle by its place, and whether it is turned.</param>
    public Block Plan(Func<int, bool, Block> lying) => Plan(_newest[^1] - 1, lying);

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

    /// <summary>Sets beside one another those whose lengths nearly meet, the second at least as long.</summary>
    private void JoinBeside(int size, int other)
    {
        var seconds = _byLength[other];
        foreach (ref readonly var one in _byLength[size].All)
        {
            int longest = one.Length + ((_waste - one.Waste) / one.Width);
            var near = seconds.Between(one.Length, longest);
            Looks += near.Length;
            foreach (ref readonly var two in near)
            {
                if ((one.Set & two.Set) == 0)
                {
                    int waste = one.Waste + two.Waste + ((two.Length - one.Length) * one.Width);
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
            int widest = one.Width + ((_waste - one.Waste) / one.Length);
            var near = seconds.Between(one.Width, widest);
            Looks += near.Length;
            foreach (ref readonly var two in near)
            {
                if ((one.Set & two.Set) == 0)
                {
                    int waste = one.Waste + two.Waste + ((two.Width - one.Width) * one.Length);
                    Add(new Front(one.Set | two.Set, two.Width, one.Length + two.Length, waste) { First = one.At, Second = two.At });
                }
            }
        }
    }

    /// <summary>Adds a front unless it wastes too much or another of its set is within it; drops those that it is within.</summary>
    private void Add(Front front)
    {
        if (front.Width > _room.Width || front.Length > _room.Length
            || front.Waste + ((long)front.Length * _lostBeside[front.Width]) + ((long)front.Width * _lostBehind[front.Length]) > _waste)
        {
            return;
        }

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
        _fronts.Add(front);
        _newest[front.Set] = _fronts.Count;
    }

    private void Index(int size, int from)
    {
        Front[] kept = [.. Enumerable.Range(from, _fronts.Count - from).Where(i => !_fronts[i].IsDropped).Select(i => _fronts[i] with { At = i })];
        _byWidth[size] = new SideIndex(kept, front => front.Width, _room.Width);
        _byLength[size] = new SideIndex(kept, front => front.Length, _room.Length);
    }

    /// <summary>Per extent of a part: how much of the room beside it no sum of sides fills.</summary>
    private int[] Lost(int room, Func<(int Width, int Length), int> side, Func<(int Width, int Length), int> turned)
    {
        bool[] filled = new bool[room + 1];
        filled[0] = true;
        foreach (var part in _parts)
        {
            for (int sum = room; sum > 0; sum--)
            {
                filled[sum] = filled[sum] || (sum >= side(part) && filled[sum - side(part)]) || (_turn && sum >= turned(part) && filled[sum - turned(part)]);
            }
        }

        int[] lost = new int[room + 1];
        for (int beside = 1; beside <= room; beside++)
        {
            lost[room - beside] = filled[beside] ? 0 : lost[room - beside + 1] + 1;
        }

        return lost;
    }

    /// <summary>Fronts by one of their sides.</summary>
    private readonly struct SideIndex
    {
        private readonly Front[] _all;
        private readonly int[] _from;

        public SideIndex(Front[] fronts, Func<Front, int> side, int most)
        {
            _all = new Front[fronts.Length];
            _from = new int[most + 2];
            foreach (var front in fronts)
            {
                _from[side(front) + 1]++;
            }

            for (int s = 1; s < _from.Length; s++)
            {
                _from[s] += _from[s - 1];
            }

            int[] next = [.. _from];
            foreach (var front in fronts)
            {
                _all[next[side(front)]++] = front;
            }
        }

        public ReadOnlySpan<Front> All => _all;

        public ReadOnlySpan<Front> Between(int least, int most) => _all.AsSpan(_from[least].._from[Math.Min(most + 1, _from.Length - 1)]);
    }

    /// <summary>A rectangle that holds a set of the parts.</summary>
    private record struct Front(int Set, int Width, int Length, int Waste)
    {
        /// <summary>The first of the two it is made of; −1: it is a part.</summary>
        public int First { get; init; }

        /// <summary>The second of the two.</summary>
        public int Second { get; init; }

        /// <summary>Its own place among all.</summary>
        public int At { get; init; }

        /// <summary>The place of another of its set; −1: there is none before it.</summary>
        public int Older { get; set; }

        /// <summary>Whether a smaller one of its set was found.</summary>
        public bool IsDropped { get; set; }
    }
}
