using System.Collections.Immutable;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>
/// What every plan keeps to: the goods it uses hold pieces of some value, and all pieces are worth so much. Whole
/// numbers throughout, of the exact programme.
/// </summary>
internal sealed class Inequality
{
    private readonly long[][] _holds;
    private readonly double[] _rate;
    private readonly long[] _extent;
    private readonly bool[] _byLength;

    /// <summary>Reads what the goods hold off the programmes, filled for the vector's values.</summary>
    /// <param name="goods">The goods.</param>
    /// <param name="vector">The values.</param>
    public Inequality(GoodsModel goods, DualVector vector)
    {
        Values = vector.Values;
        Needs = checked((long)vector.Covered(goods.Model.Demand));
        _holds = new long[goods.Goods.Length][];
        _rate = new double[goods.Goods.Length];
        _extent = [.. goods.Goods.Select(good => good.Extent)];
        _byLength = [.. goods.Goods.Select(good => good.ByLength)];
        for (int g = 0; g < _holds.Length; g++)
        {
            var good = goods.Goods[g];
            var programme = goods.LevelOf(g).Upper;
            int most = good.ByLength ? (int)Math.Min(good.Most, goods.Reach / good.Extent) : 1;
            _holds[g] = [0, .. Enumerable.Range(1, most).Select(n => (long)programme.Value(good.Width, good.LengthOf(n)))];
            if (good.ByLength && most < good.Most)
            {
                _rate[g] = ThreadRate.Of(programme.Grid, Values, good.Width);
            }
        }
    }

    /// <summary>Value of one of each type.</summary>
    public int[] Values { get; }

    /// <summary>What all pieces are worth together.</summary>
    public long Needs { get; }

    /// <summary>No way of cutting so many of a good holds pieces worth more.</summary>
    /// <param name="good">The good.</param>
    /// <param name="count">Sheets, or steps.</param>
    public long Holds(int good, int count)
    {
        long[] holds = _holds[good];
        if (count < holds.Length)
        {
            return holds[count];
        }

        return !_byLength[good]
            ? holds[1] * count
            : Math.Max(holds[^1], (long)Math.Ceiling(_rate[good] * _extent[good] * count));
    }

    /// <summary>The inequality in terms of the problem.</summary>
    /// <param name="goods">The goods.</param>
    public LengthInequality Stated(GoodsModel goods)
    {
        var holds = new ImmutableArray<long>[goods.Goods.Length];
        for (int g = 0; g < holds.Length; g++)
        {
            int good = g;
            holds[g] = [.. Enumerable.Range(0, goods.Goods[g].Most + 1).Select(count => Holds(good, count))];
        }

        return new LengthInequality(
            goods.Model.ByPiece([.. Values.Select(value => (long)value)]),
            [.. goods.Model.ByStock(holds).Select(each => each.IsDefault ? [0] : each)]);
    }

    /// <summary>No count of a good holds more for its number than this for each.</summary>
    /// <param name="good">The good.</param>
    public double MostForOne(int good)
    {
        double most = _rate[good] * _extent[good];
        for (int n = 1; n < _holds[good].Length; n++)
        {
            most = Math.Max(most, (double)_holds[good][n] / n);
        }

        return most;
    }
}
