// Problem: odd sizes are bounded on a grid of fewer points (Grid.Bounding). Under the values of patterns that fit it promises more than a
//          sheet has: pieces that go together only on the grid are worth too much.
// Idea:    column generation over the grid's own patterns, whether they fit or not: its values are those under which the grid
//          promises least. Then the same on a finer grid, from values half-way between these and those of patterns that fit. Values
//          between the simplex's and the best known swing less; they are told as finely as the table's numbers allow.
// Source:  as Relaxation, of which this is the other side: there patterns that fit, from above, here such as need not, from below.
// Cost:    some ten fills a grid: 0.2 s on one of 5·10⁸ cell visits, a second on one of 3·10⁹.
// Not:     exact: where the finest grid it can afford promises a sheet too much, the bound stays there.
namespace PanelService.Cutting.Search;

/// <summary>Raises the bound of odd sizes to the best that coarse grids can tell.</summary>
internal sealed class CoarseBound
{
    // How far the values go from the best known to the simplex's own.
    private const double Step = 0.5;

    // Patterns read from one fill. Of 8 it took twice as many fills.
    private const int MostRead = 30;

    // A finer grid is begun only if there is work for so many fills of it.
    private const int FewestFills = 4;

    private readonly Model _model;
    private readonly StockBox _box;
    private readonly WorkMeter _work;
    private readonly Pricing _pricing;
    private long _bound;
    private long _step;
    private double _enough;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <param name="work">The work allowed.</param>
    public CoarseBound(Model model, StockBox box, WorkMeter work)
    {
        (_model, _box, _work) = (model, box, work);
        _pricing = new Pricing(model, work);
    }

    /// <summary>Every value vector evaluated: each is an inequality that holds for every plan.</summary>
    public List<DualVector> Inequalities { get; } = [];

    /// <summary>Looks for a bound.</summary>
    /// <param name="fitting">The relaxation over patterns that fit: no bound exceeds its price.</param>
    /// <param name="columns">Patterns that fit.</param>
    /// <param name="known">The bound known.</param>
    /// <param name="step">Every plan's price is a multiple of this; above 0.</param>
    /// <returns>The bound, not yet rounded up to the step; <paramref name="known"/> where it is no better.</returns>
    public long Run(MasterSolution fitting, IReadOnlyList<Column> columns, long known, long step)
    {
        (_bound, _step, _enough) = (known, step, fitting.Price);
        double[] start = fitting.Duals;
        while (IsMore(_enough) && _pricing.IsCoarse && _pricing.CanGoOn(FewestFills))
        {
            _pricing.Refine();
            start = [.. Search(start, columns).Zip(fitting.Duals, (grid, fits) => (grid + fits) / 2)];
        }

        return _bound;
    }

    /// <summary>Whether a price that plans may come down to rounds up to more than the bound known.</summary>
    private bool IsMore(double price) => Math.Ceiling((price / _step) - 1e-7) > (_bound + _step - 1) / _step;

    /// <summary>Column generation on the grids at hand.</summary>
    /// <param name="start">The values to start from.</param>
    /// <param name="columns">Patterns that fit.</param>
    /// <returns>The values under which the grids promise least.</returns>
    private double[] Search(double[] start, IReadOnlyList<Column> columns)
    {
        using var master = new Master(_model, _model.Demand, _box, within: false, _work.Cancellation);
        var known = new ColumnPool();
        foreach (var column in columns)
        {
            _work.Cancellation.ThrowIfCancellationRequested();
            known.Add(column);
            master.Add(column);
        }

        var best = (Values: start, Bound: -1L);
        bool own = false;
        var solution = master.Solve();
        while (solution is not null && IsMore(solution.Price) && IsMore(_enough) && !_work.Exhausted)
        {
            double[] values = own ? solution.Duals
                : best.Bound < 0 ? start
                : [.. best.Values.Zip(solution.Duals, (known, next) => known + (Step * (next - known)))];
            var vector = _pricing.Promise(values);
            Inequalities.Add(vector);
            long bound = vector.Bound(_model, _model.Demand, _box);
            bool better = bound > best.Bound;
            best = better ? (values, bound) : best;
            _bound = Math.Max(_bound, bound);
            bool added = AddPromised(master, known, values, solution);
            if (!added && own)
            {
                break;
            }

            own = !added && !better;
            solution = added ? master.Solve() : solution;
        }

        return best.Values;
    }

    /// <summary>Adds patterns of the last fill that are worth more than they cost.</summary>
    private bool AddPromised(Master master, ColumnPool known, double[] values, MasterSolution solution)
    {
        bool added = false;
        foreach (int s in Enumerable.Range(0, _box.Most.Length).Where(s => _box.Most[s] > 0))
        {
            double price = _model.Stock(s).Price - solution.StockDuals[s];
            foreach (var column in _pricing.Promised(s).Take(MostRead).TakeWhile(column => column.ReducedCost(price, values) < -1e-9 * Math.Max(1, price)))
            {
                if (known.Add(column))
                {
                    master.Add(column);
                    added = true;
                }
            }
        }

        return added;
    }
}
