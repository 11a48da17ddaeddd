// Problem: the least price when patterns may be used in fractions: a bound close to the true least price, and the
//          patterns and values from which whole plans are made.
// Idea:    column generation: solve over the patterns known, price new ones with the exact programme, stop when none
//          improves, or when the bound of the duals at hand rounds up to what the relaxation itself rounds up to.
//          Of many types it is the simplex that is dear: there several patterns are priced at once, under values between its own
//          and the best known, which swing less.
// Source:  Gilmore and Gomory, Operations Research 9 (1961), 13 (1965); the bound: DualVector; values between: Wentges,
//          International Transactions in Operational Research 4 (1997).
// Cost:    one programme per iteration; some tens of iterations for a dozen formats, some hundreds for a hundred.
// Not:     trusted for the bound: that comes from whole-number arithmetic, the simplex only proposes values.
namespace PanelService.Cutting.Search;

/// <summary>Solves the relaxation for a demand and a box.</summary>
internal sealed class Relaxation
{
    private const int MostAdded = 12;
    private const int MostTried = 100;

    // From so many types on values are smoothed, and so many patterns added a round beside the best. Of fewer, and of odd sizes, whose
    // programmes are dear, it took longer.
    private const int ManyTypes = 30;
    private const int MostAddedOfMany = 4;

    // How far the values go from the best known to the simplex's own.
    private const double Step = 0.3;

    private readonly Model _model;
    private readonly Pricing _pricing;
    private readonly ColumnPool _pool;
    private readonly WorkMeter _work;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="pool">Columns to start from; new ones are added.</param>
    /// <param name="work">Where its work is counted.</param>
    public Relaxation(Model model, ColumnPool pool, WorkMeter work)
    {
        (_model, _pool, _work) = (model, pool, work);
        _pricing = new Pricing(model, work);
    }

    /// <summary>Every value vector evaluated, oldest first: each is an inequality that holds for every plan.</summary>
    public List<DualVector> Inequalities { get; } = [];

    /// <summary>A bound known from elsewhere.</summary>
    public long Known { get; set; }

    /// <summary>Every plan's price is a multiple of this.</summary>
    public long PriceStep { get; set; } = 1;

    /// <summary>
    /// Starts from values that are likely: a first bound, and a pattern of every stock. Without it the first rounds
    /// price what leaving pieces out would cost, and a search cut short then has no bound to speak of.
    /// </summary>
    /// <param name="duals">Values per type, in price units.</param>
    /// <param name="demand">What is to be covered.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <returns>The bound.</returns>
    public long Seed(double[] duals, int[] demand, StockBox box)
    {
        var vector = Evaluate(duals);
        if (_pricing.IsCoarse)
        {
            _pricing.Propose(duals);
        }

        for (int s = 0; s < vector.Best.Length; s++)
        {
            if (box.Most[s] > 0 && _pricing.Best(s) is { } column)
            {
                _pool.Add(column);
            }
        }

        return Math.Max(0, vector.Bound(_model, demand, box));
    }

    /// <summary>Every piece at the price of its area, kerf included, on the stock whose area is cheapest.</summary>
    /// <returns>Values per type, in price units.</returns>
    public double[] ByArea()
    {
        double price = Enumerable.Range(0, _model.Stocks.Length)
            .Select(s => _model.Stock(s).Price / _model.StockArea(s))
            .Where(each => each > 0)
            .DefaultIfEmpty(0)
            .Min();
        return [.. Enumerable.Range(0, _model.Types.Length).Select(t => price * _model.PieceArea(t))];
    }

    /// <summary>Solves.</summary>
    /// <param name="demand">What is to be covered.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <param name="enough">Stops as soon as the bound reaches this price: nothing cheaper is of interest then.</param>
    /// <param name="within">Whether new patterns should hold to the demand: for the rests of a dive.</param>
    public RelaxationResult Solve(int[] demand, StockBox box, long enough = long.MaxValue, bool within = false)
    {
        using var master = new Master(_model, demand, box, within, _work.Cancellation);
        foreach (var column in _pool.Columns)
        {
            _work.Cancellation.ThrowIfCancellationRequested();
            master.Add(column);
        }

        long bound = 0;
        double[]? best = IsMany && !within ? ByArea() : null;
        var solution = master.Solve();
        while (solution is not null)
        {
            bool improved = false;
            if (best is not null)
            {
                double[] between = [.. best.Zip(solution.Duals, (known, own) => known + (Step * (own - known)))];
                var smooth = Evaluate(between);
                long own = smooth.Bound(_model, demand, box);
                (best, bound) = own >= bound ? (between, own) : (best, bound);
                improved = !IsClosed(bound, enough, solution) && AddImproving(master, solution, smooth, null, box);
            }

            // On a coarse grid the bound costs a programme of its own: once, when no pattern that fits improves.
            if (!improved && _pricing.IsCoarse)
            {
                improved = AddImproving(master, solution, _pricing.Propose(solution.Duals), within ? demand : null, box);
            }

            if (!improved)
            {
                var vector = Evaluate(solution.Duals);
                bound = Math.Max(bound, vector.Bound(_model, demand, box));
                improved = !IsClosed(bound, enough, solution) && AddImproving(master, solution, vector, within ? demand : null, box);
            }

            if (!improved && !GoOn(master, solution, IsClosed(bound, enough, solution)))
            {
                break;
            }

            if (_work.Exhausted)
            {
                break;
            }

            solution = master.Solve();
        }

        return new RelaxationResult(bound, solution);
    }

    /// <summary>Whether the simplex is dearer than the programmes.</summary>
    private bool IsMany => _model.Types.Length >= ManyTypes && !_model.HasOddSizes;

    private DualVector Evaluate(double[] duals)
    {
        var vector = _pricing.Evaluate(duals);
        Inequalities.Add(vector);
        return vector;
    }

    private static bool IsClosed(long bound, long enough, MasterSolution solution) => bound >= enough || bound >= RoundUp(solution.Price);

    /// <summary>Whether there is a way on where no pattern improves: finer grids, or a higher penalty for what is short.</summary>
    private bool GoOn(Master master, MasterSolution solution, bool closed)
    {
        if (!closed && !IsReached(solution.Price) && _pricing.CanRefine)
        {
            _pricing.Refine();
            return true;
        }

        return !closed && solution.Short > 1e-7 && master.RaisePenalty();
    }

    /// <summary>Whether a whole plan cannot cost less than the bound known, by which the relaxation rounds up.</summary>
    private bool IsReached(double price) => PriceStep > 1 && !_pricing.IsFirst && Known / PriceStep >= (long)Math.Ceiling((price / PriceStep) - 1e-7);

    private static long RoundUp(double price) => (long)Math.Ceiling(price - (1e-7 * Math.Max(1, Math.Abs(price))));

    /// <summary>Whether the column's own values are worth more than it costs; a coarse grid's bound may promise too much.</summary>
    private bool Improves(Column column, MasterSolution solution)
    {
        double price = _model.Stock(column.Stock).Price;
        return column.ReducedCost(price - solution.StockDuals[column.Stock], solution.Duals) < -1e-9 * Math.Max(1, price);
    }

    private Column? Best(int stock, int[]? demand, int[] values) =>
        demand is null ? _pricing.Best(stock) : _pricing.BestWithin(stock, demand, values);

    private bool AddImproving(Master master, MasterSolution solution, DualVector vector, int[]? demand, StockBox box)
    {
        bool added = false;
        for (int s = 0; s < vector.Best.Length; s++)
        {
            double reduced = _model.Stock(s).Price - solution.StockDuals[s] - Math.ScaleB(vector.Best[s], -vector.Shift);
            if (box.Most[s] > 0 && reduced < -1e-7 * Math.Max(1, _model.Stock(s).Price)
                && Best(s, demand, vector.Values) is { } column && Improves(column, solution) && _pool.Add(column))
            {
                master.Add(column);
                added = true;
                if (demand is null)
                {
                    AddMore(master, solution, vector, s);
                }
            }
        }

        return added;
    }

    /// <summary>Other good columns from the same programme, where it or the simplex is dear.</summary>
    private void AddMore(Master master, MasterSolution solution, DualVector vector, int stock)
    {
        double worth = Math.ScaleB(_model.Stock(stock).Price - solution.StockDuals[stock], vector.Shift);
        bool isMany = IsMany;
        int added = 0;
        foreach (var column in _pricing.More(stock, worth, cheap: isMany).Take(MostTried))
        {
            if (Improves(column, solution) && _pool.Add(column))
            {
                master.Add(column);
                if (++added == (isMany ? MostAddedOfMany : MostAdded))
                {
                    return;
                }
            }
        }
    }
}

/// <summary>What the relaxation came to.</summary>
/// <param name="Bound">No whole plan within the box that covers the demand costs less; exact.</param>
/// <param name="Solution">The relaxation's last solution; null where the simplex gave up.</param>
internal sealed record RelaxationResult(long Bound, MasterSolution? Solution);
