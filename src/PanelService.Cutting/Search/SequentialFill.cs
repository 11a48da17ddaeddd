// Problem: a whole plan, quickly, for a demand and what is left of the stocks.
// Idea:    fill one stock after another with the most valuable pattern of what is still wanted, taking the stock that
//          gives the most value for its price, and as many copies of the pattern as demand and stock allow. Values
//          are duals, or corrected from fill to fill so that pieces which ended in bad sheets come earlier next time.
// Source:  sequential value correction: Mukhacheva and others; Belov and Scheithauer, EJOR 171 (2006).
// Cost:    one capped programme per stock and pattern.
// Not:     bounded in quality; the bound says how good it is.
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>Fills stocks one after another.</summary>
internal sealed class SequentialFill
{
    private readonly Model _model;
    private readonly ColumnPool _pool;
    private readonly WorkMeter _work;
    private readonly Pricing _pricing;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="pool">Where the patterns found are added.</param>
    /// <param name="work">Where its work is counted.</param>
    public SequentialFill(Model model, ColumnPool pool, WorkMeter work)
    {
        (_model, _pool, _work) = (model, pool, work);
        _pricing = new Pricing(model, work);
    }

    /// <summary>Fills.</summary>
    /// <param name="demand">What is wanted.</param>
    /// <param name="available">How many of each stock there are; <see cref="StockBox.Unlimited"/> for any number.</param>
    /// <param name="values">Per type, above 0.</param>
    /// <returns>The columns used; they may leave something missing where the stocks are used up.</returns>
    public List<ColumnUse> Fill(int[] demand, int[] available, double[] values)
    {
        int[] open = [.. demand];
        int[] left = [.. available];
        var uses = new List<ColumnUse>();
        while (open.Any(d => d > 0) && !_work.Exhausted && BestNext(open, left, values) is { } column)
        {
            uses.Add(StockBox.TakeAll(column, open, left));
            _pool.Add(column);
        }

        // Where the work is done, what is left is laid out plainly: a dear plan is better than none.
        return _work.Exhausted ? [.. uses, .. PlainFill.Run(_model, open, left)] : uses;
    }

    /// <summary>The values after a fill: what came to lie in badly used sheets is worth more next time.</summary>
    /// <param name="values">The values it was made with.</param>
    /// <param name="uses">The fill.</param>
    public double[] Correct(double[] values, List<ColumnUse> uses)
    {
        double[] sum = new double[values.Length];
        double[] weight = new double[values.Length];
        foreach (var (column, copies) in uses)
        {
            double used = 0;
            for (int t = 0; t < values.Length; t++)
            {
                used += column.Counts[t] * _model.PieceArea(t);
            }

            double perArea = Math.Max(_model.Stock(column.Stock).Price, 1) / used;
            for (int t = 0; t < values.Length; t++)
            {
                double count = (double)copies * column.Counts[t];
                sum[t] += count * perArea * Math.Pow(_model.PieceArea(t), 1.02);
                weight[t] += count;
            }
        }

        return [.. values.Select((v, t) => weight[t] > 0 ? (0.5 * v) + (0.5 * sum[t] / weight[t]) : v)];
    }

    /// <summary>
    /// The column with the most value for its price. What a stock can be worth without regard to demand is cheap to
    /// know for all stocks at once; only stocks that could still win are filled with regard to it.
    /// </summary>
    private Column? BestNext(int[] open, int[] left, double[] values)
    {
        int[] whole = Whole(values, open);
        var most = _pricing.Propose(whole, left);
        Column? best = null;
        double bestRatio = double.PositiveInfinity;
        double bestWorth = 0;
        foreach (int s in Enumerable.Range(0, left.Length)
            .Where(s => left[s] > 0 && most[s] > 0)
            .OrderBy(s => (double)_model.Stock(s).Price / most[s]).ThenByDescending(s => most[s]))
        {
            double price = _model.Stock(s).Price;
            if (price / most[s] > bestRatio || (price / most[s] == bestRatio && most[s] <= bestWorth))
            {
                break;
            }

            if (_pricing.BestWithin(s, open, whole) is not { } column)
            {
                continue;
            }

            double worth = 0;
            for (int t = 0; t < open.Length; t++)
            {
                worth += (double)column.Counts[t] * whole[t];
            }

            if (price / worth < bestRatio || (price / worth == bestRatio && worth > bestWorth))
            {
                (best, bestRatio, bestWorth) = (column, price / worth, worth);
            }
        }

        return best;
    }

    /// <summary>
    /// Values as whole numbers; none of what is wanted below 1, nothing for what is not. The largest is chosen so that
    /// no stock's worth outgrows the programme.
    /// </summary>
    private int[] Whole(double[] values, int[] open)
    {
        double[] wanted = [.. values.Select((v, t) => open[t] == 0 ? 0 : Math.Max(1e-9, v))];
        double scale = _pricing.ScaleOf(wanted);
        return [.. wanted.Select((v, t) => open[t] == 0 ? 0 : Math.Max(1, (int)Math.Round(v * scale)))];
    }
}
