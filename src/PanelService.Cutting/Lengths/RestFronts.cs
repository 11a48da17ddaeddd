// Problem: what are the smallest rectangles that hold a few of some parts, with little to waste?
// Idea:    for every set of them, sets of fewer first, as in FrontTable. Here a rectangle is dropped as soon as it wastes more than
//          there is to waste, and few sets have any: two can only be joined whose sides nearly meet, and what is beside and behind
//          them must fill the room, which no sum of the others' sides may do. Of three beside one another the shortest is joined
//          to the other two, and to nothing else: so one of the two that are joined is never made of two beside one another itself.
// Source:  Held and Karp, J. SIAM 10 (1962); shape functions: Stockmeyer, Information and Control 57 (1983); sums of sides: Herz,
//          IBM Journal 16 (1972), Christofides and Whitlock, Operations Research 25 (1977).
// Cost:    pairs of rectangles whose sides nearly meet: sets of up to 6 of 20 with 1 % to waste take about a millisecond.
// Not:     for large sets, or with much to waste.
using System.Numerics;
using System.Runtime.InteropServices;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>The rectangles that hold a few of some parts. One instance is filled again for every room; it is not thread-safe.</summary>
internal sealed class RestFronts
{
    private readonly bool _turn;
    private readonly int _width;
    private readonly int _most;
    private readonly int[] _lostBeside;
    private readonly int[] _lostBehind;
    private readonly bool[] _filled;
    private readonly List<RestFront> _fronts = [];
    private readonly SideIndex[] _byWidth;
    private readonly SideIndex[] _byLength;
    private (int Width, int Length)[] _parts = [];
    private int _length;

    // Per set the place of its newest front, from 1; 0: it has none.
    private int[] _newest = [];

    /// <summary>Prepares.</summary>
    /// <param name="turn">Whether the parts may be turned.</param>
    /// <param name="width">Width of the room they are cut from.</param>
    /// <param name="longest">Its length is never more than this.</param>
    /// <param name="most">Sets are of no more parts than this.</param>
    public RestFronts(bool turn, int width, int longest, int most)
    {
        (_turn, _width, _most) = (turn, width, most);
        _lostBeside = new int[width + 1];
        _lostBehind = new int[longest + 1];
        _filled = new bool[Math.Max(width, longest) + 1];
        _byWidth = [.. Enumerable.Range(0, most + 1).Select(_ => new SideIndex(width))];
        _byLength = [.. Enumerable.Range(0, most + 1).Select(_ => new SideIndex(longest))];
    }

    /// <summary>How many pairs were looked at.</summary>
    public long Looks { get; private set; }

    /// <summary>The area there is to waste.</summary>
    public int Waste { get; private set; }

    /// <summary>The set of all parts.</summary>
    public int Everything => (1 << _parts.Length) - 1;

    /// <summary>The largest sets are of so many parts.</summary>
    public int Most => Math.Min(_most, _parts.Length);

    /// <summary>Fills it.</summary>
    /// <param name="parts">The parts' sizes.</param>
    /// <param name="length">Length of the room they are cut from.</param>
    /// <returns>Whether every part has its place.</returns>
    public bool Fill((int Width, int Length)[] parts, int length)
    {
        Begin(parts, length);
        for (int p = 0; p < parts.Length && Waste >= 0; p++)
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

        if (Waste < 0)
        {
            return false;
        }

        Index(1, 0);
        for (int size = 2; size <= Most; size++)
        {
            int from = _fronts.Count;
            for (int first = 1; first < size; first++)
            {
                Join(Axis.X, _byLength[first], _byLength[size - first]);
                Join(Axis.Y, _byWidth[first], _byWidth[size - first]);
            }

            Index(size, from);
        }

        return true;
    }

    /// <summary>A front of a set within a rectangle.</summary>
    /// <param name="set">The set, of no more parts than <see cref="Most"/>.</param>
    /// <param name="width">The rectangle's width.</param>
    /// <param name="length">Its length.</param>
    /// <returns>Its place; −1: there is none.</returns>
    public int Within(int set, int width, int length)
    {
        int at = _newest[set] - 1;
        while (at >= 0 && (_fronts[at].Width > width || _fronts[at].Length > length))
        {
            at = _fronts[at].Older;
        }

        return at;
    }

    /// <summary>All fronts by the side along which they can be cut off, without those that are two cut off one after the other.</summary>
    /// <param name="axis">The axis along which they are cut off: <see cref="Axis.Y"/> for those that reach over the width.</param>
    /// <param name="spanning">Filled with them.</param>
    public void Collect(Axis axis, SideIndex spanning) =>
        spanning.Fill(CollectionsMarshal.AsSpan(_fronts), axis, made: false);

    /// <summary>How much of a width no sum of the parts' sides fills.</summary>
    /// <param name="width">The width.</param>
    public int LostOfWidth(int width) => _lostBeside[_width - width];

    /// <summary>How much of a length no sum of the parts' sides fills.</summary>
    /// <param name="length">The length.</param>
    public int LostOfLength(int length) => _lostBehind[_length - length];

    /// <summary>How the parts of a front lie.</summary>
    /// <param name="at">The front's place.</param>
    /// <param name="lying">A part by its place, and whether it is turned.</param>
    public Block Plan(int at, Func<int, bool, Block> lying)
    {
        var front = _fronts[at];
        if (front.Made is not { } axis)
        {
            int part = BitOperations.TrailingZeroCount(front.Set);
            return lying(part, _parts[part] != (front.Width, front.Length));
        }

        return BlockMath.Join(axis, Plan(front.First, lying), Plan(front.Second, lying));
    }

    private void Begin((int Width, int Length)[] parts, int length)
    {
        foreach (ref readonly var front in CollectionsMarshal.AsSpan(_fronts))
        {
            _newest[front.Set] = 0;
        }

        _fronts.Clear();
        (_parts, _length) = (parts, length);
        Waste = (_width * length) - parts.Sum(part => part.Width * part.Length);
        if (_newest.Length <= Everything)
        {
            _newest = new int[Everything + 1];
        }

        SetLost(_lostBeside, _width, alongWidth: true);
        SetLost(_lostBehind, length, alongWidth: false);
    }

    private void AddPart(int part, int width, int length)
    {
        if (Suits(width, length, 0))
        {
            Add(new RestFront(1 << part, width, length, 0));
        }
    }

    /// <summary>Sets beside one another (<see cref="Axis.X"/>) or behind one another those whose sides nearly meet, the second's no shorter.</summary>
    private void Join(Axis axis, SideIndex firsts, SideIndex seconds)
    {
        foreach (ref readonly var one in firsts.All)
        {
            if (one.Made == axis)
            {
                continue;
            }

            var (side, along) = one.Sides(axis);
            var (from, to) = seconds.Between(side, side + ((Waste - one.Waste) / along));
            Looks += to - from;
            for (int at = seconds.NextDisjoint(from, to, one.Set); at < to; at = seconds.NextDisjoint(at + 1, to, one.Set))
            {
                ref readonly var two = ref seconds.All[at];
                var (longer, rest) = two.Sides(axis);
                int waste = one.Waste + two.Waste + ((longer - side) * along);
                var (width, length) = axis == Axis.X ? (along + rest, longer) : (longer, along + rest);
                if (Suits(width, length, waste))
                {
                    Add(new RestFront(one.Set | two.Set, width, length, waste) { Made = axis, First = one.At, Second = two.At });
                }
            }
        }
    }

    /// <summary>Whether a front fits and wastes no more than there is to waste, with what beside and behind it nothing can fill.</summary>
    private bool Suits(int width, int length, int waste) =>
        waste <= Waste && width <= _width && length <= _length
        && waste + ((long)length * _lostBeside[width]) + ((long)width * _lostBehind[length]) <= Waste;

    /// <summary>Adds a front unless another of its set is within it; drops those that it is within.</summary>
    private void Add(RestFront front)
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
        var fronts = CollectionsMarshal.AsSpan(_fronts)[from..];
        _byWidth[size].Fill(fronts, Axis.Y, made: true);
        _byLength[size].Fill(fronts, Axis.X, made: true);
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
}

/// <summary>A rectangle that holds a set of parts.</summary>
/// <param name="Set">One bit for each.</param>
/// <param name="Width">Its width.</param>
/// <param name="Length">Its length.</param>
/// <param name="Waste">The area in it that is no part's.</param>
internal record struct RestFront(int Set, int Width, int Length, int Waste)
{
    /// <summary>The axis along which its two lie one after the other; null: it is a part.</summary>
    public Axis? Made { get; init; }

    /// <summary>The first of the two it is made of.</summary>
    public int First { get; init; }

    /// <summary>The second of the two.</summary>
    public int Second { get; init; }

    /// <summary>Its own place among all.</summary>
    public int At { get; set; }

    /// <summary>The place of another of its set; −1: there is none before it.</summary>
    public int Older { get; set; }

    /// <summary>Whether a smaller one of its set was found.</summary>
    public bool IsDropped { get; set; }

    /// <summary>The side that meets the next one's where some lie along an axis, and the extent along it.</summary>
    /// <param name="axis">The axis.</param>
    public readonly (int Side, int Along) Sides(Axis axis) => axis == Axis.X ? (Length, Width) : (Width, Length);
}
