// Problem: how often has each of some settings to come in a run at least?
// Idea:    leave all others free to come whenever they like, and let a setting come once, twice …: what does not serve even then
//          serves in no run. In the same way two settings that come once each: if they serve in neither order, one of them
//          comes twice; if in one order only, that is their order. Orders that go round in a circle take one setting
//          out of it that comes twice: the fewest settings that break all circles come on top.
// Cost:    a pass over the graph at these settings for each pair, both ways: a hundredth of a second for twenty settings.
// Not:     the fewest: three settings may be in each other's way where no two are.
namespace PanelService.Planning.SawRun.Search;

/// <summary>What is known of how often some settings come.</summary>
internal sealed class RareSettings
{
    private const int MostTimes = 6;
    private const int MostCircles = 500;

    private readonly RunTable _table;
    private readonly bool[][] _mayFollow;
    private int _circles;

    /// <summary>Asks.</summary>
    /// <param name="table">The graph at just these settings, which serve; no way of cutting is left out of it.</param>
    public RareSettings(RunTable table)
    {
        _table = table;
        Times = [.. Enumerable.Range(0, table.Settings).Select(LeastTimes)];
        _mayFollow = [.. Times.Select((own, first) => Times.Select((other, then) =>
            first == then || own > 1 || other > 1 || table.ServesWithRare([first, then])).ToArray())];
        LeastSteps = Times.Sum() + FewestThatBreak(new bool[Times.Length], Times.Sum());
    }

    /// <summary>How often each comes at least.</summary>
    public int[] Times { get; }

    /// <summary>No run of these settings has fewer steps.</summary>
    public int LeastSteps { get; }

    /// <summary>Whether a setting that comes once may stand somewhere before another that comes once.</summary>
    /// <param name="first">The earlier.</param>
    /// <param name="then">The later.</param>
    public bool MayFollow(int first, int then) => _mayFollow[first][then];

    private int LeastTimes(int setting)
    {
        int times = 1;
        while (times < MostTimes && !_table.ServesWithRare([.. Enumerable.Repeat(setting, times)]))
        {
            times++;
        }

        return times;
    }

    /// <summary>The fewest settings to be left out so that no circle of orders remains: a shortest circle loses one of its members.</summary>
    private int FewestThatBreak(bool[] isOut, int most)
    {
        if (most <= 0 || ShortestCircle(isOut) is not { } circle)
        {
            return 0;
        }

        // Too many to go through: one at least is needed here.
        if (++_circles > MostCircles)
        {
            return 1;
        }

        int best = most;
        foreach (int setting in circle)
        {
            isOut[setting] = true;
            best = Math.Min(best, 1 + FewestThatBreak(isOut, best - 1));
            isOut[setting] = false;
        }

        return best;
    }

    private List<int>? ShortestCircle(bool[] isOut)
    {
        List<int>? shortest = null;
        for (int start = 0; start < isOut.Length; start++)
        {
            if (!isOut[start] && CircleFrom(start, isOut) is { } circle && circle.Count < (shortest?.Count ?? int.MaxValue))
            {
                shortest = circle;
            }
        }

        return shortest;
    }

    /// <summary>By breadth first: "must come before" where the other order does not serve.</summary>
    private List<int>? CircleFrom(int start, bool[] isOut)
    {
        int[] from = new int[isOut.Length];
        Array.Fill(from, -1);
        var open = new Queue<int>([start]);
        while (open.TryDequeue(out int first))
        {
            for (int then = 0; then < isOut.Length; then++)
            {
                if (isOut[then] || _mayFollow[then][first])
                {
                    continue;
                }

                if (then == start)
                {
                    var circle = new List<int>();
                    for (int at = first; at != start; at = from[at])
                    {
                        circle.Add(at);
                    }

                    return [.. circle, start];
                }

                if (from[then] < 0)
                {
                    from[then] = first;
                    open.Enqueue(then);
                }
            }
        }

        return null;
    }
}
