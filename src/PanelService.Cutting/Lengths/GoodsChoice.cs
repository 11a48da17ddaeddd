// Problem: the cheapest counts of goods, whole sheets and whole steps, that no inequality forbids.
// Idea:    count after count, the dearest good first; a branch ends where even fractions of the goods still to come would
//          cost too much for some inequality. The last good is taken as often as it must be. Of counts of equal price
//          those are taken that leave the most room in the tightest inequality.
// Source:  surrogate constraints (Glover 1975); the bound of a branch is the continuous knapsack (Dantzig 1957).
// Cost:    products of a few counts; past a limit of nodes only the continuous bound is known.
// Not:     a plan: the goods may not really hold the pieces.
namespace PanelService.Cutting.Lengths;

/// <summary>Chooses counts of goods.</summary>
internal sealed class GoodsChoice
{
    private const int NodeLimit = 400_000;
    private const double Safe = 1e-9;

    private readonly GoodsModel _goods;
    private readonly int[] _order;
    private readonly List<Inequality> _inequalities = [];
    private readonly List<int[]> _excluded = [];
    private (int At, double Rate, double Most)[][] _rates = [];
    private long[][] _open = [];
    private int[] _counts = [];
    private int[]? _best;
    private long _bestPrice;
    private double _bestRoom;
    private int _nodes;

    /// <summary>Starts with no inequality.</summary>
    /// <param name="goods">The goods.</param>
    public GoodsChoice(GoodsModel goods)
    {
        _goods = goods;
        _order = [.. Enumerable.Range(0, goods.Goods.Length).OrderByDescending(g => goods.Goods[g].Price)];
    }

    /// <summary>The inequalities.</summary>
    public IReadOnlyList<Inequality> Inequalities => _inequalities;

    /// <summary>Adds what every plan keeps to.</summary>
    /// <param name="inequality">The inequality.</param>
    public void Add(Inequality inequality)
    {
        _inequalities.Add(inequality);
    }

    /// <summary>Rules out counts from which no plan can be made, and all that are nowhere larger.</summary>
    /// <param name="counts">Per good.</param>
    public void Exclude(int[] counts) => _excluded.Add([.. counts]);

    /// <summary>The cheapest counts below a price.</summary>
    /// <param name="below">Only cheaper ones are of interest.</param>
    /// <param name="margin">How much more the goods are to hold, as a share of what is needed; above 0 there is no bound.</param>
    /// <returns>The counts with their price as the bound; without counts the bound is <paramref name="below"/> where
    /// nothing cheaper is allowed, less where the nodes ran out.</returns>
    public GoodsCounts Cheapest(long below, double margin = 0)
    {
        int depth = _order.Length;
        _rates = [.. _inequalities.Select(RatesOf)];
        _open = [.. Enumerable.Range(0, depth + 1).Select(_ => new long[_inequalities.Count])];
        _counts = new int[depth];
        (_best, _bestPrice, _bestRoom, _nodes) = (null, below - 1, -1, 0);
        for (int k = 0; k < _inequalities.Count; k++)
        {
            _open[0][k] = (long)(_inequalities[k].Needs * (1 + margin));
        }

        long least = Math.Min(below, Least(0));
        Try(0, 0);
        return _nodes > NodeLimit ? new GoodsCounts(least, null, Complete: false)
            : new GoodsCounts(_best is null ? below : _bestPrice, _best, Complete: true);
    }

    private void Try(int depth, long price)
    {
        _nodes++;
        if (price > _bestPrice || _nodes > NodeLimit || price + Least(depth) > _bestPrice)
        {
            return;
        }

        if (depth == _order.Length)
        {
            Take(price);
            return;
        }

        int good = _order[depth];
        var it = _goods.Goods[good];
        int needed = Needed(depth, it);

        // What costs nothing is taken as far as it is of use.
        int free = it.Price == 0 ? needed : Math.Min(needed, it.Paid);
        int first = free >= it.Least ? free : 0;
        for (int count = first; count <= needed && price + it.PriceOf(count) <= _bestPrice; count++)
        {
            _counts[good] = count;
            for (int k = 0; k < _inequalities.Count; k++)
            {
                _open[depth + 1][k] = _open[depth][k] - _inequalities[k].Holds(good, count);
            }

            Try(depth + 1, price + it.PriceOf(count));
            count += count == 0 ? it.Least - 1 : 0;
        }

        _counts[good] = 0;
    }

    private void Take(long price)
    {
        double room = double.PositiveInfinity;
        for (int k = 0; k < _inequalities.Count; k++)
        {
            long open = _open[_order.Length][k];
            if (open > 0)
            {
                return;
            }

            room = Math.Min(room, -(double)open / Math.Max(1, _inequalities[k].Needs));
        }

        if ((price < _bestPrice || room > _bestRoom) && !_excluded.Any(Covers))
        {
            (_best, _bestPrice, _bestRoom) = ([.. _counts], price, room);
        }
    }

    private bool Covers(int[] excluded)
    {
        for (int g = 0; g < excluded.Length; g++)
        {
            if (_counts[g] > excluded[g])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>How often a good is of use at most: until it meets every inequality; where counts are excluded, all there is.</summary>
    private int Needed(int depth, Good good)
    {
        if (_excluded.Count > 0)
        {
            return good.Most;
        }

        int low = Meets(depth, good.Stock, 0) ? 0 : good.Least;
        int high = low == 0 ? 0 : good.Most;
        while (low < high)
        {
            int middle = low + ((high - low) / 2);
            (low, high) = Meets(depth, good.Stock, middle) ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private bool Meets(int depth, int good, int count)
    {
        for (int k = 0; k < _inequalities.Count; k++)
        {
            if (_open[depth][k] > _inequalities[k].Holds(good, count))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>What the goods still to come cost at the least, in fractions, for the dearest inequality.</summary>
    private long Least(int depth)
    {
        double least = 0;
        for (int k = 0; k < _inequalities.Count; k++)
        {
            double open = _open[depth][k];
            double price = 0;
            foreach (var (at, rate, most) in _rates[k])
            {
                if (open <= 0)
                {
                    break;
                }

                if (at >= depth)
                {
                    double taken = Math.Min(open, most);
                    price += taken * rate;
                    open -= taken;
                }
            }

            if (open > Safe * _inequalities[k].Needs)
            {
                return long.MaxValue / 4;
            }

            least = Math.Max(least, price);
        }

        return (long)Math.Ceiling((least * (1 - Safe)) - 1e-6);
    }

    /// <summary>Per good that holds anything: its place in the order, its price for each unit held, and how many units there are at most.</summary>
    private (int At, double Rate, double Most)[] RatesOf(Inequality inequality) =>
    [
        .. _order.Select((good, at) => (at, Good: _goods.Goods[good], Each: inequality.MostForOne(good)))
            .Where(one => one.Each > 0)
            .SelectMany(one => RatesOf(one.Good, one.at, one.Each))
            .OrderBy(one => one.Rate),
    ];

    private static IEnumerable<(int At, double Rate, double Most)> RatesOf(Good good, int at, double each)
    {
        if (good.Paid > 0)
        {
            yield return (at, 0, each * Math.Min(good.Paid, good.Most));
        }

        if (good.Most > good.Paid)
        {
            yield return (at, good.Price / each, each * (good.Most - good.Paid));
        }
    }
}

/// <summary>Counts of goods.</summary>
/// <param name="Bound">No counts allowed cost less.</param>
/// <param name="Counts">Counts of that price, per good; null where there are none below the price asked for, or not known.</param>
/// <param name="Complete">Whether the search came to its end.</param>
internal sealed record GoodsCounts(long Bound, int[]? Counts, bool Complete);
