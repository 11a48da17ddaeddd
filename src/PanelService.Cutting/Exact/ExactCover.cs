// Problem: patterns are listed; which of them together hold every piece exactly as often as wanted?
// Idea:    place next the piece that the fewest patterns are left for; try these, least waste first; give up a branch
//          as soon as it wastes more than there is to waste, or some piece has no pattern left.
// Source:  Knuth, "Dancing links", Millennial Perspectives in Computer Science (2000), there for sets without counts.
// Cost:    exponential in the worst case; small where the patterns are few. Counted as work.
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>A pattern to cover with.</summary>
/// <param name="Stock">Its stock.</param>
/// <param name="Counts">How many of each type it holds.</param>
/// <param name="Waste">How much less than the stock's best it is worth.</param>
/// <param name="Arrange">How it lies.</param>
internal sealed record CoverPattern(int Stock, int[] Counts, long Waste, Func<Block> Arrange);

/// <summary>Searches an exact cover.</summary>
internal sealed class ExactCover
{
    private readonly int[] _open;
    private readonly int[] _left;
    private readonly WorkMeter _work;
    private readonly List<CoverPattern> _all = [];
    private readonly List<CoverPattern> _chosen = [];
    private long _spare;

    /// <summary>Starts without patterns.</summary>
    /// <param name="demand">How many of each type are wanted.</param>
    /// <param name="stocks">How many of each stock there are.</param>
    /// <param name="spare">How much may be wasted in all.</param>
    /// <param name="work">Where work is counted.</param>
    public ExactCover(int[] demand, int[] stocks, long spare, WorkMeter work) =>
        (_open, _left, _spare, _work) = ([.. demand], [.. stocks], spare, work);

    /// <summary>Adds a pattern.</summary>
    /// <param name="pattern">The pattern; it must hold something.</param>
    public void Add(CoverPattern pattern) => _all.Add(pattern);

    /// <summary>Searches.</summary>
    /// <returns>The patterns of a cover; empty where there is none; null where the work was done before the end.</returns>
    public IReadOnlyList<CoverPattern>? Solve()
    {
        _all.Sort(static (a, b) => a.Waste.CompareTo(b.Waste));
        bool? found = Search(_all);
        return found switch
        {
            null => null,
            true => _chosen,
            false => [],
        };
    }

    private bool? Search(List<CoverPattern> patterns)
    {
        if (_open.All(count => count == 0))
        {
            return true;
        }

        var usable = patterns.Where(Usable).ToList();
        _work.Spend(1 + (patterns.Count * (long)_open.Length / 300));
        if (_work.Exhausted)
        {
            return null;
        }

        int rarest = Rarest(usable);
        while (usable.Find(p => p.Counts[rarest] > 0) is { } pattern)
        {
            Use(pattern, 1);
            bool? found = Search(usable);
            if (found is not false)
            {
                return found;
            }

            // Everything with this pattern was tried: the other branches do without it.
            Use(pattern, -1);
            usable.Remove(pattern);
        }

        return false;
    }

    private bool Usable(CoverPattern pattern)
    {
        if (pattern.Waste > _spare || _left[pattern.Stock] == 0)
        {
            return false;
        }

        for (int t = 0; t < _open.Length; t++)
        {
            if (pattern.Counts[t] > _open[t])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The type still wanted that the fewest patterns hold.</summary>
    private int Rarest(List<CoverPattern> patterns)
    {
        int[] often = new int[_open.Length];
        foreach (var pattern in patterns)
        {
            for (int t = 0; t < often.Length; t++)
            {
                often[t] += pattern.Counts[t] > 0 ? 1 : 0;
            }
        }

        return Enumerable.Range(0, often.Length).Where(t => _open[t] > 0).MinBy(t => often[t]);
    }

    private void Use(CoverPattern pattern, int times)
    {
        for (int t = 0; t < _open.Length; t++)
        {
            _open[t] -= times * pattern.Counts[t];
        }

        _left[pattern.Stock] -= times;
        _spare -= times * pattern.Waste;
        if (times > 0)
        {
            _chosen.Add(pattern);
        }
        else
        {
            _chosen.RemoveAt(_chosen.Count - 1);
        }
    }
}
