// Problem: values of the pieces from which the first inequalities come.
// Idea:    the least price in fractions over all goods, each length sold by any fraction of a step: column generation.
// Source:  Gilmore and Gomory, Operations Research 9 (1961), 13 (1965).
// Cost:    one programme and one small linear programme a round.
// Not:     a bound by itself: GoodsChoice makes one of the values.
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Relaxes the whole problem.</summary>
internal static class RootRelaxation
{
    private const int MostRounds = 80;

    /// <summary>Relaxes.</summary>
    /// <param name="goods">The goods.</param>
    /// <param name="relaxation">Prices patterns.</param>
    /// <param name="pool">Where the patterns are added.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>The inequality of every round, oldest first.</returns>
    public static List<Inequality> Solve(GoodsModel goods, CoverRelaxation relaxation, SectionPool pool, WorkMeter work)
    {
        var found = new List<Inequality>();
        using var master = new PriceMaster(goods);
        (double[] Values, double[] Savings)? solution = (ByArea(goods), new double[goods.Goods.Length]);
        for (int round = 0; round < MostRounds && solution is { } now && !work.Exhausted; round++)
        {
            var inequality = relaxation.Evaluate(now.Values);
            found.Add(inequality);
            bool added = false;
            for (int g = 0; g < goods.Goods.Length; g++)
            {
                added |= AddBest(g, round == 0 ? double.NegativeInfinity : now.Savings[g]);
            }

            if (!added)
            {
                break;
            }

            solution = master.Solve();

            bool AddBest(int g, double savings)
            {
                var (length, gain) = BestLength(goods, g, inequality, now.Values);
                if (gain - savings <= 1e-7 * Math.Max(1, goods.Goods[g].Price) || relaxation.Tracer.Pattern(g, length) is not { } block)
                {
                    return false;
                }

                int before = pool.All.Count;
                var section = pool.AddWithParts(goods.Model.ClassOf[g], block);
                master.Add(g, section);
                return true;
            }
        }

        return found;
    }

    /// <summary>The rectangle of a good that holds most beyond its price; a sheet has only one.</summary>
    private static (long Length, double Gain) BestLength(GoodsModel goods, int g, Inequality inequality, double[] values)
    {
        var good = goods.Goods[g];
        double scale = ScaleOf(inequality, values);
        var programme = goods.LevelOf(g).Upper;
        if (!good.ByLength)
        {
            return (good.Extent, (programme.Value(good.Width, good.Extent) * scale) - good.Price);
        }

        (long Length, double Gain) best = (0, double.NegativeInfinity);
        foreach (long length in programme.Grid.Y.Points)
        {
            if (length > Math.Min(goods.Reach, good.Extent * (long)good.Most))
            {
                break;
            }

            double gain = (programme.Value(good.Width, length) * scale) - (good.Price * (double)length / good.Extent);
            gain *= (double)good.Extent / length;
            best = gain > best.Gain ? (length, gain) : best;
        }

        return best;
    }

    // What one whole-number unit of value is worth.
    private static double ScaleOf(Inequality inequality, double[] values)
    {
        int largest = Array.IndexOf(inequality.Values, inequality.Values.Max());
        return inequality.Values[largest] == 0 ? 0 : values[largest] / inequality.Values[largest];
    }

    /// <summary>Every piece at the price of its area on the good whose area is cheapest.</summary>
    private static double[] ByArea(GoodsModel goods)
    {
        double price = goods.Goods.Where(good => good.Price > 0)
            .Select(good => good.Price / ((double)good.Width * good.Extent)).DefaultIfEmpty(1).Min();
        return [.. Enumerable.Range(0, goods.Model.Types.Length).Select(t => goods.Model.PieceArea(t) * price)];
    }
}
