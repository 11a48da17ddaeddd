// Problem: the least price when patterns may be used in fractions: a bound close to the true least price, and the
//          patterns and values from which whole plans are made.
// Idea:    column generation: solve over the patterns known, price new ones with the exact programme, stop when none
//          improves, or when the bound of the duals at hand rounds up to what the relaxation itself rounds up to.
// Source:  Gilmore and Gomory, Operations Research 9 (1961), 13 (1965); the bound: DualVector.
// Cost:    one programme per iteration; some tens of iterations for a dozen formats.
// Not:     trusted for the bound: that comes from whole-number arithmetic, the simplex only proposes values.
namespace PanelService.Cutting.Search;

/// <summary>Solves the relaxation for a demand and a box.</summary>
internal sealed class Relaxation
{
    private const int MostAdded = 12;
    private const int MostTried = 100;

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
        var vector = _pricing.Evaluate(duals);
        Inequalities.Add(vector);
        for (int s = 0; s < vector.Best.Length; s++)
        {
            if (box.Most[s] > 0 && _pricing.Best(s) is { } column)
            {
                _pool.Add(column);
            }
        }

        return Math.Max(0, vector.Bound(_model, demand, box));
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
        var solution = master.Solve();
        while (solution is not null)
        {
            var vector = _pricing.Evaluate(solution.Duals);
            Inequalities.Add(vector);
            bound = Math.Max(bound, vector.Bound(_model, demand, box));
            bool improved = bound < enough && bound < RoundUp(solution.Price) && AddImproving(master, solution, vector, within ? demand : null, box);
            if (!improved && !GoOn(master, solution, bound >= enough || bound >= RoundUp(solution.Price)))
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

    /// <summary>Whether there is a way on where no pattern improves: finer grids, or a higher penalty for what is short.</summary>
    private bool GoOn(Master master, MasterSolution solution, bool closed)
    {
        if (!closed && _pricing.CanRefine)
        {
            _pricing.Refine();
            return true;
        }

        return !closed && solution.Short > 1e-7 && master.RaisePenalty();
    }

    private static long RoundUp(double price) => (long)Math.Ceiling(price - (1e-7 * Math.Max(1, Math.Abs(price))));

    /// <summary>Whether the column's own values are worth more than it costs; a coarse grid's bound may promise too much.</summary>
    private bool Improves(Column column, MasterSolution solution)
    {
        double price = _model.Stock(column.Stock).Price;
        double reduced = price - solution.StockDuals[column.Stock];
        for (int t = 0; t < column.Counts.Length; t++)
        {
            reduced -= column.Counts[t] * solution.Duals[t];
        }

        return reduced < -1e-9 * Math.Max(1, price);
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

    /// <summary>Other good columns from the same programme, where it is dear.</summary>
    private void AddMore(Master master, MasterSolution solution, DualVector vector, int stock)
    {
        double worth = Math.ScaleB(_model.Stock(stock).Price - solution.StockDuals[stock], vector.Shift);
        int added = 0;
        foreach (var column in _pricing.More(stock, worth).Take(MostTried))
        {
            if (Improves(column, solution) && _pool.Add(column))
            {
                master.Add(column);
                if (++added == MostAdded)
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
