// Problem: a set of pieces is cut from one stock; how large can the largest leftover be that is in one piece?
// Idea:    the leftover comes off the stock by cuts that each take some of the pieces off one side, by turns along either axis,
//          since two along one axis are one. What such a cut takes is known from the set's staircase (FrontTable): no more than
//          it must at the extent that is left across. So depth first, over which of the pieces come off next, all of them first;
//          a branch is left where the area it has, less that of its pieces, is no more than what is known.
// Source:  staircases: see FrontTable; the rest is ours.
// Cost:    two looks into the table for every part of what is left at every turn: exponential in the pieces, some thousand for ten.
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Looks for the largest leftover of a stock that a set is cut from.</summary>
/// <param name="sets">The numbering of the sets.</param>
/// <param name="table">Their staircases, filled.</param>
/// <param name="smallest">What a leftover must hold, either way round.</param>
/// <param name="kerf">The kerf.</param>
/// <param name="work">Where work is counted.</param>
internal sealed class LargestRest(MultisetIndex sets, FrontTable table, (long Width, long Height) smallest, long kerf, WorkMeter work)
{
    private const int LooksOfUnit = 10;

    private static readonly Axis[] Axes = [Axis.X, Axis.Y];

    private readonly List<Taken> _path = [];
    private long _best;
    private Block? _found;
    private int _looks;

    /// <summary>The largest leftover above an area, and how the set lies for it; null where there is none, or the work was done.</summary>
    /// <param name="set">The set's number, not 0.</param>
    /// <param name="width">The stock's width, grown by the kerf.</param>
    /// <param name="height">Its height, grown by the kerf.</param>
    /// <param name="area">Only larger leftovers are of interest.</param>
    public (Block Block, long Area)? Above(int set, long width, long height, long area)
    {
        (_best, _found) = (area, null);
        _path.Clear();
        Look(set, width, height, before: null);
        return _found is null ? null : (_found, _best);
    }

    private void Look(int set, long width, long height, Axis? before)
    {
        foreach (int rest in sets.Parts(set))
        {
            if (rest == set || IsDone())
            {
                return;
            }

            foreach (var axis in Axes)
            {
                if (axis != before)
                {
                    Take(set, rest, (width, height), axis);
                }
            }
        }
    }

    private void Take(int set, int rest, (long Width, long Height) room, Axis axis)
    {
        long across = axis == Axis.X ? room.Height : room.Width;
        long taken = table.Least(set - rest, axis, across);
        long left = (axis == Axis.X ? room.Width : room.Height) - taken;
        if (taken < 0 || !IsOfUse(left, across, table.AreaOf(rest)))
        {
            return;
        }

        _path.Add(new Taken(axis, set - rest, taken, across));
        if (rest == 0)
        {
            (_best, _found) = ((left - kerf) * (across - kerf), Arranged());
        }
        else if (axis == Axis.X)
        {
            Look(rest, left, across, axis);
        }
        else
        {
            Look(rest, across, left, axis);
        }

        _path.RemoveAt(_path.Count - 1);
    }

    /// <summary>Whether a room can leave enough that is larger than the best, beside pieces of an area.</summary>
    private bool IsOfUse(long along, long across, long filled)
    {
        long one = Math.Min(along, across) - kerf;
        long other = Math.Max(along, across) - kerf;
        if (one < Math.Max(1, Math.Min(smallest.Width, smallest.Height)) || other < Math.Max(smallest.Width, smallest.Height))
        {
            return false;
        }

        // Grown by the kerf a leftover of an area is least where it is square.
        double side = Math.Sqrt(_best) + kerf;
        return filled == 0 ? one * other > _best : (along * across) - filled > side * side * (1 - 1e-12);
    }

    private bool IsDone()
    {
        if (++_looks == LooksOfUnit)
        {
            work.Spend(1);
            _looks = 0;
        }

        return work.Exhausted;
    }

    private Block Arranged()
    {
        Block? block = null;
        for (int i = _path.Count - 1; i >= 0; i--)
        {
            var (axis, part, along, across) = _path[i];
            var own = axis == Axis.X ? table.Arrange(part, along, across) : table.Arrange(part, across, along);

            // The last comes off by itself, along the axis that the leftover lies beside it: joined to the one before it would not.
            block = block is null ? own : new StackBlock(axis, [own, block]);
        }

        return block!;
    }

    private readonly record struct Taken(Axis Axis, int Part, long Along, long Across);
}
