// Problem: the cheapest whole counts of a few stocks under inequalities Σ a(s) n(s) ≥ b with a ≥ 0, and without counts that
//          are nowhere larger than counts excluded.
// Idea:    what is enough stays enough with more of a stock. So stocks that cost nothing are all taken, the last stock's
//          count follows from the others', and the others are tried from few to many, dear stocks first; a branch ends
//          when the part of some inequality that is still missing costs too much even in fractions.
// Source:  implicit enumeration: Balas, Operations Research 13 (1965).
// Cost:    some microseconds for the dozen inequalities and five stocks of a studio order; gives up after so many branches.
// Not:     for many stocks or thousands of sheets: an integer programming solver is better there.
namespace PanelService.Cutting.Exact;

/// <summary>Finds the cheapest whole counts by looking through them.</summary>
internal sealed class LeastCounts
{
    private const int MostBranches = 20_000;

    private readonly long[] _prices;
    private readonly int[] _least;
    private readonly int[] _most;
    private readonly IReadOnlyList<CountsNeed> _needs;
    private readonly IReadOnlyList<int[]> _excluded;
    private readonly int[] _order;
    private readonly int[][] _byRatio;
    private readonly int[] _place;
    private readonly int[] _counts;
    private readonly long[][] _missing;
    private int[]? _best;
    private long _bestPrice = long.MaxValue;
    private double _room;
    private int _branches;

    private LeastCounts(long[] prices, (int[] Least, int[] Most) box, IReadOnlyList<CountsNeed> needs, IReadOnlyList<int[]> excluded)
    {
        (_prices, _least, _most, _needs, _excluded) = (prices, box.Least, box.Most, needs, excluded);
        int[] stocks = [.. Enumerable.Range(0, prices.Length)];
        _order = [.. stocks.OrderBy(s => prices[s] > 0).ThenByDescending(s => prices[s])];
        _place = new int[prices.Length];
        for (int place = 0; place < _order.Length; place++)
        {
            _place[_order[place]] = place;
        }

        _byRatio = [.. needs.Select(need => stocks.Where(s => need.Worth[s] > 0)
            .OrderBy(s => prices[s] / (double)need.Worth[s]).ThenBy(s => s).ToArray())];
        _counts = new int[prices.Length];
        _missing = [.. Enumerable.Range(0, prices.Length + 1).Select(_ => new long[needs.Count])];
    }

    /// <summary>Looks for them.</summary>
    /// <param name="prices">Price of one per stock, 0 or more.</param>
    /// <param name="box">The least and the most of each stock; none unlimited.</param>
    /// <param name="needs">The inequalities.</param>
    /// <param name="excluded">Counts from which, and from fewer, no plan can be made.</param>
    /// <param name="counts">Gets the cheapest counts; null where there are none.</param>
    /// <returns>Whether it came to the end.</returns>
    public static bool TryFind(
        long[] prices, (int[] Least, int[] Most) box, IReadOnlyList<CountsNeed> needs, IReadOnlyList<int[]> excluded, out int[]? counts)
    {
        var search = new LeastCounts(prices, box, needs, excluded);
        for (int k = 0; k < needs.Count; k++)
        {
            search._missing[0][k] = needs[k].Needed;
        }

        bool ended = search.Try(0, 0);
        counts = search._best;
        return ended;
    }

    /// <summary>Tries every count of the stock at a place, those before it being set.</summary>
    /// <returns>False once there were too many branches.</returns>
    private bool Try(int place, long price)
    {
        if (place == _order.Length)
        {
            Take(price);
            return true;
        }

        int s = _order[place];
        bool last = place == _order.Length - 1;
        int from = _prices[s] == 0 ? _most[s] : last ? Math.Max(_least[s], Enough(s, place)) : _least[s];
        for (int count = from; count <= _most[s]; count++)
        {
            long next = price + (_prices[s] * count);
            if (next > _bestPrice)
            {
                return true;
            }

            if (++_branches > MostBranches)
            {
                return false;
            }

            _counts[s] = count;
            for (int k = 0; k < _needs.Count; k++)
            {
                _missing[place + 1][k] = _missing[place][k] - (_needs[k].Worth[s] * count);
            }

            if (!TooDear(place + 1, next) && !Try(place + 1, next))
            {
                return false;
            }

            // More of the last stock only costs more.
            if (last && _best is not null)
            {
                return true;
            }
        }

        return true;
    }

    /// <summary>The fewest of the last stock that every inequality and exclusion asks for; more than there are where none is enough.</summary>
    private int Enough(int s, int place)
    {
        long enough = 0;
        for (int k = 0; k < _needs.Count; k++)
        {
            long missing = _missing[place][k];
            if (missing > 0)
            {
                enough = Math.Max(enough, _needs[k].Worth[s] == 0 ? long.MaxValue : ((missing - 1) / _needs[k].Worth[s]) + 1);
            }
        }

        foreach (int[] counts in _excluded)
        {
            bool larger = false;
            for (int other = 0; other < counts.Length && !larger; other++)
            {
                larger = other != s && _counts[other] > counts[other];
            }

            enough = larger ? enough : Math.Max(enough, (long)counts[s] + 1);
        }

        return (int)Math.Min(enough, (long)int.MaxValue);
    }

    /// <summary>Whether what some inequality still misses brings the price above the best one's.</summary>
    private bool TooDear(int place, long price)
    {
        for (int k = 0; k < _needs.Count; k++)
        {
            double missing = _missing[place][k];
            double least = price;
            foreach (int s in _byRatio[k])
            {
                if (missing <= 0)
                {
                    break;
                }

                if (_place[s] >= place)
                {
                    double worth = _needs[k].Worth[s];
                    double used = Math.Min(_most[s], missing / worth);
                    least += used * _prices[s];
                    missing -= used * worth;
                }
            }

            // A hair's breadth for what floating point may be off: prices are whole.
            if (missing > 1e-6 * _needs[k].Needed || Math.Ceiling((least * (1 - 1e-12)) - 1e-6) > _bestPrice)
            {
                return true;
            }
        }

        return false;
    }

    private void Take(long price)
    {
        bool enough = _missing[_order.Length].All(missing => missing <= 0)
            && !_excluded.Any(counts => counts.Zip(_counts).All(pair => pair.Second <= pair.First));
        double room = enough ? Room() : double.NegativeInfinity;
        if (enough && (price < _bestPrice || room > _room))
        {
            (_best, _bestPrice, _room) = ([.. _counts], price, room);
        }
    }

    /// <summary>How much more than needed there is of what is scarcest, as a part of what is needed.</summary>
    private double Room()
    {
        double least = double.PositiveInfinity;
        for (int k = 0; k < _needs.Count; k++)
        {
            least = Math.Min(least, -(double)_missing[_order.Length][k] / Math.Max(1, _needs[k].Needed));
        }

        return least;
    }
}

/// <summary>Σ worth · counts must reach what is needed.</summary>
/// <param name="Worth">Per stock, 0 or more.</param>
/// <param name="Needed">How much is needed.</param>
internal sealed record CountsNeed(long[] Worth, long Needed);
