// Problem: the least price of whole goods that no inequality forbids.
// Idea:    count after count, the dearest good first; a branch ends when it costs no less than the best, the last good
//          is taken as often as it must be. Where panels may also be bought ready-made, what the goods do not hold is
//          paid for: a ready-made panel costs at least what it is worth in every inequality.
// Cost:    products of a few counts; past a limit of nodes there is no answer.
// Not:     a plan: the goods may not really hold the pieces. It is a bound.
using System.Collections.Immutable;

namespace PanelService.Planning.Cloth.Bounds;

/// <summary>Finds the least price of goods that meets all inequalities.</summary>
internal sealed class CoverSearch
{
    private const int NodeLimit = 300_000;

    private readonly ImmutableArray<ClothGood> _goods;
    private readonly ImmutableArray<CoverInequality> _inequalities;
    private readonly bool _mayPay;
    private long _best;
    private int _nodes;

    private CoverSearch(
        ImmutableArray<ClothGood> goods, ImmutableArray<CoverInequality> inequalities, bool mayPay, long below)
    {
        // The order of goods is the search's own; the inequalities follow it.
        int[] order = [.. Enumerable.Range(0, goods.Length).OrderByDescending(g => goods[g].Price)];
        _goods = [.. order.Select(g => goods[g])];
        _inequalities = [.. inequalities.Select(i => i with { Holds = [.. order.Select(g => i.Holds[g])] })];
        (_mayPay, _best) = (mayPay, below);
    }

    /// <summary>The least price.</summary>
    /// <param name="goods">What there is.</param>
    /// <param name="inequalities">What every plan keeps to.</param>
    /// <param name="mayPay">Whether panels may be bought ready-made.</param>
    /// <param name="below">A plan of this price is known: nothing above it is of interest.</param>
    /// <returns>The least price, at most <paramref name="below"/>; 0 where the search was cut off.</returns>
    public static long LeastPrice(
        ImmutableArray<ClothGood> goods, ImmutableArray<CoverInequality> inequalities, bool mayPay, long below)
    {
        var search = new CoverSearch(goods, inequalities, mayPay, below);
        search.Try(0, 0, [.. inequalities.Select(inequality => inequality.Needs)]);
        return search._nodes > NodeLimit ? 0 : search._best;
    }

    private void Try(int good, long price, double[] open)
    {
        _nodes++;
        if (price >= _best || _nodes > NodeLimit)
        {
            return;
        }

        double most = open.Max();
        if (most <= 0)
        {
            _best = price;
        }
        else if (good < _goods.Length)
        {
            Branch(good, price, open);
        }
        else if (_mayPay)
        {
            _best = Math.Min(_best, price + (long)Math.Ceiling(most));
        }
    }

    private void Branch(int good, long price, double[] open)
    {
        long needed = Needed(good, open);
        long most = Math.Min(needed, _goods[good].Most ?? needed);

        // A good that costs nothing is taken as often as it helps; the last one as often as it must be.
        bool all = _goods[good].Price == 0 || (good == _goods.Length - 1 && !_mayPay);
        for (long count = all ? most : 0; count <= most; count++)
        {
            long spent = price + (count * _goods[good].Price);
            if (spent >= _best)
            {
                break;
            }

            Try(good + 1, spent, [.. open.Select((rest, i) => rest - (count * _inequalities[i].Holds[good]))]);
        }
    }

    /// <summary>How often a good is of use at most: until it meets every inequality that it helps.</summary>
    private long Needed(int good, double[] open)
    {
        long needed = 0;
        for (int i = 0; i < open.Length; i++)
        {
            double holds = _inequalities[i].Holds[good];
            if (open[i] > 0 && holds > 0)
            {
                needed = Math.Max(needed, double.IsPositiveInfinity(holds) ? 1 : (long)Math.Ceiling(open[i] / holds));
            }
        }

        return needed;
    }
}
