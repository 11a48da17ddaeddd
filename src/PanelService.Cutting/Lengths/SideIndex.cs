// Problem: of thousands of rectangles, those whose side nearly is a given length and that have no piece in common with another.
// Idea:    sorted by that side by counting, so that those between two lengths lie in one run; their sets lie beside one
//          another by themselves, and eight of them are compared at once.
// Source:  counting sort: Seward (1954), as in Knuth, The Art of Computer Programming 3.
// Cost:    rectangles and lengths to fill it; an eighth of a comparison for each looked at.
// Not:     for more than the pieces that the bits of an int tell apart.
using System.Numerics;
using System.Runtime.Intrinsics;

namespace PanelService.Cutting.Lengths;

/// <summary>Fronts by one of their sides; their sets lie beside one another in memory.</summary>
/// <param name="longest">No side is longer.</param>
internal sealed class SideIndex(int longest)
{
    private readonly int[] _from = new int[longest + 2];
    private readonly int[] _next = new int[longest + 2];
    private RestFront[] _all = [];
    private int[] _sets = [];
    private int _count;

    /// <summary>The fronts, those with the shortest side first.</summary>
    public ReadOnlySpan<RestFront> All => _all.AsSpan(0, _count);

    /// <summary>Their sets.</summary>
    public ReadOnlySpan<int> Sets => _sets.AsSpan(0, _count);

    /// <summary>Fills it, without what was dropped.</summary>
    /// <param name="fronts">The fronts.</param>
    /// <param name="axis">They are put by the side that meets the next one's along this axis.</param>
    /// <param name="made">Whether also those that are made along the axis.</param>
    public void Fill(ReadOnlySpan<RestFront> fronts, Axis axis, bool made)
    {
        Array.Clear(_from);
        foreach (ref readonly var front in fronts)
        {
            _from[front.Sides(axis).Side + 1] += Takes(front) ? 1 : 0;
        }

        for (int s = 1; s < _from.Length; s++)
        {
            _from[s] += _from[s - 1];
        }

        _count = _from[^1];
        _from.CopyTo(_next, 0);
        if (_all.Length < _count)
        {
            (_all, _sets) = (new RestFront[2 * _count], new int[2 * _count]);
        }

        foreach (ref readonly var front in fronts)
        {
            if (Takes(front))
            {
                int at = _next[front.Sides(axis).Side]++;
                (_all[at], _sets[at]) = (front, front.Set);
            }
        }

        bool Takes(in RestFront front) => !front.IsDropped && (made || front.Made != axis);
    }

    /// <summary>The places of the fronts whose side is no shorter than one length and no longer than another.</summary>
    /// <param name="least">The shortest, 0 or more.</param>
    /// <param name="most">The longest.</param>
    public (int From, int To) Between(int least, int most) => (_from[least], _from[Math.Min(most + 1, _from.Length - 1)]);

    /// <summary>The next place from one on whose set has nothing of another; the end where there is none.</summary>
    /// <param name="from">The first place.</param>
    /// <param name="to">The end.</param>
    /// <param name="set">The other set.</param>
    public int NextDisjoint(int from, int to, int set) => NextDisjoint(_sets, from, to, set);

    /// <summary>The next place in a list from one on whose set has nothing of another, eight looked at at once; the end where there is none.</summary>
    /// <param name="sets">The list.</param>
    /// <param name="from">The first place.</param>
    /// <param name="to">The end.</param>
    /// <param name="set">The other set.</param>
    public static int NextDisjoint(int[] sets, int from, int to, int set)
    {
        var mask = Vector256.Create(set);
        int at = from;
        for (; at <= to - Vector256<int>.Count; at += Vector256<int>.Count)
        {
            uint disjoint = Vector256.Equals(Vector256.Create(sets, at) & mask, Vector256<int>.Zero).ExtractMostSignificantBits();
            if (disjoint != 0)
            {
                return at + BitOperations.TrailingZeroCount(disjoint);
            }
        }

        while (at < to && (sets[at] & set) != 0)
        {
            at++;
        }

        return at;
    }
}
