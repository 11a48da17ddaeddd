// Problem: can some twenty rectangles be cut from one, with little to waste, and how?
// Idea:    from both ends. From the parts up: all rectangles that hold a few of them (RestFronts). From the room down: one of those
//          that reaches from side to side is cut off, then another of what is left, until so few parts are left that their own
//          rectangles are known. With little to waste few reach from side to side, and sets of half the parts, which are by far
//          the most, are never made. Those cut off one after the other in one direction are taken by their first part, each
//          order once, from a list that gets shorter with every one of them.
// Source:  meeting in the middle: Horowitz and Sahni, Journal of the ACM 21 (1974); cuts from the room down: Christofides and
//          Whitlock, Operations Research 25 (1977).
// Cost:    for 20 parts with 1 % to waste from one to a hundred milliseconds.
// Not:     complete where more than twice as many parts are as the largest sets have: a cut that leaves more than that on both sides
//          is not made. Nor past a limit of looks.
using System.Numerics;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>Looks whether rectangles can be cut from one. One instance is used again for every room; it is not thread-safe.</summary>
internal sealed class RestSplit
{
    private const int LooksBetweenStops = 1 << 20;

    private readonly RestFronts _fronts;
    private readonly SideIndex _byWidth;
    private readonly SideIndex _byLength;
    private readonly int _width;
    private readonly List<(Axis Axis, int Front)> _cutOff = [];
    private readonly List<(int First, int At)> _gathered = [];
    private int _leastSide;
    private int _last;
    private long _end;
    private long _nextStop;
    private CancellationToken _cancellation;

    // Lists of what may be cut off, one behind the other: places in an index, and their sets.
    private int[] _places = new int[1 << 12];
    private int[] _sets = new int[1 << 12];
    private int _top;

    /// <summary>Prepares.</summary>
    /// <param name="turn">Whether the rectangles may be turned.</param>
    /// <param name="width">Width of the room they are cut from.</param>
    /// <param name="longest">Its length is never more than this.</param>
    /// <param name="few">Rectangles that hold no more parts than this are known beforehand.</param>
    public RestSplit(bool turn, int width, int longest, int few)
    {
        _fronts = new RestFronts(turn, width, longest, few);
        (_byWidth, _byLength) = (new SideIndex(width), new SideIndex(longest));
        _width = width;
    }

    /// <summary>How many rectangles were looked at from the room down.</summary>
    public long LooksDown { get; private set; }

    /// <summary>How many pairs were looked at from the parts up.</summary>
    public long LooksUp => _fronts.Looks;

    /// <summary>Looks for a way.</summary>
    /// <param name="parts">The rectangles' sizes: at most 30.</param>
    /// <param name="length">Length of the room they are cut from.</param>
    /// <param name="most">How many looks from the room down this may take.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <returns>Whether all were found to fit.</returns>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public bool Fit((int Width, int Length)[] parts, int length, long most, CancellationToken cancellation = default)
    {
        _cutOff.Clear();
        _cancellation = cancellation;
        if (!_fronts.Fill(parts, length))
        {
            return false;
        }

        if (parts.Length <= _fronts.Most)
        {
            _last = _fronts.Within(_fronts.Everything, _width, length);
            return _last >= 0;
        }

        _fronts.Collect(Axis.Y, _byWidth);
        _fronts.Collect(Axis.X, _byLength);
        (_top, _end, _nextStop) = (0, LooksDown + most, LooksDown);
        _leastSide = parts.Min(part => Math.Min(part.Width, part.Length));
        return Split(new Room(_fronts.Everything, _width, length, _fronts.Waste), null, default);
    }

    /// <summary>How the rectangles lie, after <see cref="Fit"/> said that they do.</summary>
    /// <param name="lying">A rectangle by its place, and whether it is turned.</param>
    public Block Plan(Func<int, bool, Block> lying)
    {
        var block = _fronts.Plan(_last, lying);
        foreach (var (axis, front) in Enumerable.Reverse(_cutOff))
        {
            block = BlockMath.Join(axis, block, _fronts.Plan(front, lying));
        }

        return block;
    }

    /// <summary>Looks for a way to split a room.</summary>
    /// <param name="room">The room; it holds too many parts to be a front.</param>
    /// <param name="cut">The axis along which the last part was cut off; null: none was.</param>
    /// <param name="same">What may still be cut off along it.</param>
    private bool Split(Room room, Axis? cut, (int From, int To) same)
    {
        int top = _top;
        foreach (var axis in (ReadOnlySpan<Axis>)[Axis.Y, Axis.X])
        {
            var list = axis == cut ? same : Gather(axis, room);
            if (SplitAlong(axis, room, list))
            {
                return true;
            }
        }

        _top = top;
        return false;
    }

    private bool SplitAlong(Axis axis, Room room, (int From, int To) list)
    {
        var index = IndexOf(axis);
        for (int i = list.From; i < list.To && LooksDown < _end; i++)
        {
            ref readonly var front = ref index.All[_places[i]];
            if (CutOff(axis, room, front) is not { } rest)
            {
                continue;
            }

            _cutOff.Add((axis, front.At));
            if (BitOperations.PopCount((uint)rest.Set) <= _fronts.Most)
            {
                _last = _fronts.Within(rest.Set, rest.Width, rest.Length);
                if (_last >= 0)
                {
                    return true;
                }
            }
            else
            {
                int top = _top;
                if (Split(rest, axis, Disjoint(i + 1, list.To, front.Set)))
                {
                    return true;
                }

                _top = top;
            }

            _cutOff.RemoveAt(_cutOff.Count - 1);
        }

        return false;
    }

    /// <summary>What is left of a room; null where that cannot hold the other parts.</summary>
    private Room? CutOff(Axis axis, Room room, in RestFront front)
    {
        var (full, extent) = axis == Axis.Y ? (room.Width, room.Length) : (room.Length, room.Width);
        int rest = extent - front.Sides(axis).Along;
        int waste = room.Waste - Wasted(axis, full, front);
        if (waste < 0 || rest <= 0 || (long)full * (axis == Axis.Y ? _fronts.LostOfLength(rest) : _fronts.LostOfWidth(rest)) > waste)
        {
            return null;
        }

        int set = room.Set & ~front.Set;
        return axis == Axis.Y ? new Room(set, full, rest, waste) : new Room(set, rest, full, waste);
    }

    /// <summary>What is wasted where a front is cut off a room that wide.</summary>
    private static int Wasted(Axis axis, int full, in RestFront front)
    {
        var (side, along) = front.Sides(axis);
        return front.Waste + ((full - side) * along);
    }

    /// <summary>Lists what may be cut off a room, by the first part of it.</summary>
    private (int From, int To) Gather(Axis axis, Room room)
    {
        var index = IndexOf(axis);
        int side = axis == Axis.Y ? room.Width : room.Length;
        var (from, to) = index.Between(Math.Max(0, side - (room.Waste / _leastSide)), side);
        Look(to - from);
        _gathered.Clear();
        for (int at = index.NextDisjoint(from, to, ~room.Set); at < to; at = index.NextDisjoint(at + 1, to, ~room.Set))
        {
            if (Wasted(axis, side, index.All[at]) <= room.Waste)
            {
                _gathered.Add((BitOperations.TrailingZeroCount(index.Sets[at]), at));
            }
        }

        _gathered.Sort();
        int start = _top;
        MakeRoom(_gathered.Count);
        foreach (var (_, at) in _gathered)
        {
            (_places[_top], _sets[_top]) = (at, index.Sets[at]);
            _top++;
        }

        return (start, _top);
    }

    /// <summary>What of a list has nothing of a set.</summary>
    private (int From, int To) Disjoint(int from, int to, int set)
    {
        Look(to - from);
        MakeRoom(to - from);
        int start = _top;
        for (int at = SideIndex.NextDisjoint(_sets, from, to, set); at < to; at = SideIndex.NextDisjoint(_sets, at + 1, to, set))
        {
            (_places[_top], _sets[_top]) = (_places[at], _sets[at]);
            _top++;
        }

        return (start, _top);
    }

    private SideIndex IndexOf(Axis axis) => axis == Axis.Y ? _byWidth : _byLength;

    private void Look(int looks)
    {
        LooksDown += looks;
        if (LooksDown >= _nextStop)
        {
            _nextStop = LooksDown + LooksBetweenStops;
            _cancellation.ThrowIfCancellationRequested();
        }
    }

    private void MakeRoom(int more)
    {
        if (_top + more > _places.Length)
        {
            int size = Math.Max(_top + more, 2 * _places.Length);
            Array.Resize(ref _places, size);
            Array.Resize(ref _sets, size);
        }
    }

    /// <summary>A rectangle, the parts to be cut from it, and the area of it that is none of theirs.</summary>
    private readonly record struct Room(int Set, int Width, int Length, int Waste);
}
