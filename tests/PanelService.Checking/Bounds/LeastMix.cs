// Problem: which are the cheapest counts of stocks, below a price, that nothing known forbids?
// Idea:    one stock after another, the counts of it from few to many; given up where what is still needed costs too
//          much even from the stock that holds most of it for its price. The last count follows from the others. More of
//          a stock never forbids anything, so one that costs nothing is used to its limit.
// Cost:    counts to the power of the stocks but one, far less with several inequalities; it counts its steps.
// Source:  plain branch and bound in whole numbers; no solver, no floating point.
// Not:     for thousands of each of several stocks: it says that it gave up.
namespace PanelService.Checking.Bounds;

/// <summary>Finds the cheapest counts that are not forbidden.</summary>
internal sealed class LeastMix
{
    private const long MostSteps = 3_000_000;

    private readonly KnownFacts _known;
    private readonly CaseStock[] _stocks;
    private readonly int[] _order;
    private readonly int[] _most;
    private readonly int[] _counts;
    private long _below;
    private int[]? _found;
    private long _steps;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="known">What is known.</param>
    public LeastMix(BoundCase problem, KnownFacts known)
    {
        (_known, _stocks) = (known, [.. problem.Stocks]);
        _most = [.. Enumerable.Range(0, _stocks.Length).Select(s => Most(s, problem.PieceCount))];
        _counts = new int[_stocks.Length];
        for (int s = 0; s < _stocks.Length; s++)
        {
            _counts[s] = _stocks[s].Price == 0 ? _most[s] : 0;
        }

        // Those with the widest ranges last: the last one is computed.
        _order = [.. Enumerable.Range(0, _stocks.Length).Where(s => _stocks[s].Price > 0 && _most[s] > 0).OrderBy(s => _most[s])];
    }

    /// <summary>Looks for the cheapest.</summary>
    /// <param name="below">Only cheaper ones are of interest.</param>
    /// <returns>Counts, null where there are none; and whether the search came to its end.</returns>
    public (int[]? Counts, bool Ended) Below(long below)
    {
        _below = below;
        Search(0, _stocks.Select((stock, s) => stock.Price * _counts[s]).Sum());
        return (_found, _steps <= MostSteps);
    }

    // A plan has a piece on every stock it uses, and beyond what meets every inequality alone and passes every
    // exclusion more of a stock changes nothing.
    private int Most(int stock, long pieces)
    {
        Int128 useful = 0;
        foreach (var (_, caps, needed) in _known.Inequalities)
        {
            useful = caps[stock] <= 0 ? useful : Max(useful, (needed + caps[stock] - 1) / caps[stock]);
        }

        useful = _known.Impossible.Aggregate(useful, (most, counts) => Max(most, (Int128)counts[stock] + 1));
        bool all = _known.Inequalities.Count == 0;
        long limit = Math.Min(pieces, _stocks[stock].Limit ?? int.MaxValue);
        return (int)(all ? limit : Int128.Min(useful, limit));
    }

    private static Int128 Max(Int128 a, Int128 b) => a > b ? a : b;

    private void Search(int depth, long price)
    {
        if (++_steps > MostSteps || price >= _below || TooDear(depth, price))
        {
            return;
        }

        if (!_known.Forbids(_counts))
        {
            (_found, _below) = ([.. _counts], price);
            return;
        }

        if (depth == _order.Length)
        {
            return;
        }

        int stock = _order[depth];
        int first = depth == _order.Length - 1 ? FewestOfLast(stock) : 0;
        for (int count = first; count <= _most[stock] && price + (count * _stocks[stock].Price) < _below; count++)
        {
            _counts[stock] = count;
            Search(depth + 1, price + (count * _stocks[stock].Price));
        }

        _counts[stock] = 0;
    }

    /// <summary>Fewer than so many of the last stock leave an inequality unmet.</summary>
    private int FewestOfLast(int stock)
    {
        Int128 fewest = 0;
        foreach (var (_, caps, needed) in _known.Inequalities)
        {
            var open = needed - KnownFacts.Sum(caps, _counts);
            if (open > 0)
            {
                fewest = caps[stock] <= 0 ? int.MaxValue : Max(fewest, (open + caps[stock] - 1) / caps[stock]);
            }

            if (fewest >= int.MaxValue)
            {
                return int.MaxValue;
            }
        }

        return (int)fewest;
    }

    /// <summary>Whether some inequality's rest costs too much from any of the stocks left.</summary>
    private bool TooDear(int depth, long price)
    {
        foreach (var (_, caps, needed) in _known.Inequalities)
        {
            var open = needed - KnownFacts.Sum(caps, _counts);
            if (open > 0 && !Affordable(depth, caps, open, _below - 1 - price))
            {
                return true;
            }
        }

        return false;
    }

    private bool Affordable(int depth, long[] caps, Int128 open, long money)
    {
        for (int at = depth; at < _order.Length; at++)
        {
            int s = _order[at];
            if ((System.Numerics.BigInteger)caps[s] * money >= (System.Numerics.BigInteger)open * _stocks[s].Price)
            {
                return true;
            }
        }

        return false;
    }
}
