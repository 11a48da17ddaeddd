using System.Numerics;

namespace PanelService.Cutting.Search;

/// <summary>One search: the relaxation's bound, whole plans from its patterns, and whatever closes the gap between them.</summary>
internal sealed class PlanSearch
{
    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly IProgress<CuttingProgress>? _progress;
    private readonly ColumnPool _pool = new();
    private readonly Relaxation _relaxation;
    private readonly SequentialFill _fill;
    private readonly StockBox _box;
    private readonly long _priceDivisor;

    /// <summary>Starts a search.</summary>
    /// <param name="model">What is to be cut from what.</param>
    /// <param name="work">The work allowed.</param>
    /// <param name="progress">Told whenever plan or bound gets better.</param>
    public PlanSearch(Model model, WorkMeter work, IProgress<CuttingProgress>? progress)
    {
        (_model, _work, _progress) = (model, work, progress);
        _relaxation = new Relaxation(model, _pool, work);
        _fill = new SequentialFill(model, _pool, work);
        _box = StockBox.Of(model);
        _priceDivisor = PriceDivisor(model);
    }

    /// <summary>The best plan so far: covers the demand unless <see cref="Missing"/>.</summary>
    public List<ColumnUse> Best { get; private set; } = [];

    /// <summary>Its price; <see cref="long.MaxValue"/> before the first whole plan.</summary>
    public long Spent { get; private set; } = long.MaxValue;

    /// <summary>No plan costs less.</summary>
    public long Bound { get; private set; }

    /// <summary>Pieces no plan found so far has a place for.</summary>
    public int Missing { get; private set; } = int.MaxValue;

    private bool Proven => Missing == 0 && Bound >= Spent;

    /// <summary>Runs until the plan is proven or the work is done.</summary>
    public void Run()
    {
        FillFrom(AreaValues(), rounds: 2);
        var root = _relaxation.Solve(_model.Demand, _box, Spent);
        RaiseBound(root.Bound);
        if (root.Solution is null)
        {
            return;
        }

        RoundDown(root.Solution);
        if (!Proven && _model.Stocks.Length > 1)
        {
            RaiseBound(PriceMix.Bound(_model, _relaxation.Inequalities, _model.Demand, _box, Spent, _work));
        }

        FromPool(root.Solution);
        FillFrom(root.Solution.Duals, rounds: 10);
        FromPool(root.Solution);
    }

    private double[] AreaValues() =>
        [.. _model.Sizes.Select(s => (double)(s.Width + _model.Kerf) * (s.Height + _model.Kerf))];

    private void RaiseBound(long bound)
    {
        // Every plan's price is a sum of prices, so a multiple of their common divisor.
        long whole = _priceDivisor <= 1 ? bound : (bound + _priceDivisor - 1) / _priceDivisor * _priceDivisor;
        if (whole > Bound)
        {
            Bound = Math.Min(whole, Spent);
            Report();
        }
    }

    private static long PriceDivisor(Model model) =>
        Enumerable.Range(0, model.Stocks.Length).Aggregate(0L, (divisor, s) =>
            (long)BigInteger.GreatestCommonDivisor(divisor, model.Stock(s).Price));

    private void Report() => _progress?.Report(new CuttingProgress(Missing == 0 ? Spent : null, Bound));

    /// <summary>Takes a plan if it is better than the best: fewer pieces missing, then cheaper.</summary>
    private void Take(List<ColumnUse> uses)
    {
        var (whole, missing) = ExactDemand.Of(uses, _model);
        long price = whole.Sum(u => _model.Stock(u.Column.Stock).Price * u.Copies);
        if (missing < Missing || (missing == Missing && price < Spent))
        {
            (Best, Missing, Spent) = (whole, missing, price);
            Report();
        }
    }

    private void FillFrom(double[] values, int rounds)
    {
        for (int round = 0; round < rounds && !Proven && !_work.Exhausted; round++)
        {
            var uses = _fill.Fill(_model.Demand, _box.Most, values);
            Take(uses);
            values = _fill.Correct(values, uses);
        }
    }

    /// <summary>The whole part of the relaxation's solution, and a fill of what it leaves.</summary>
    private void RoundDown(MasterSolution solution)
    {
        int[] open = [.. _model.Demand];
        int[] left = [.. _box.Most];
        var uses = new List<ColumnUse>();
        foreach (var (column, copies) in solution.Uses.OrderByDescending(u => u.Copies))
        {
            int whole = Math.Min((int)Math.Floor(copies + 1e-6), left[column.Stock]);
            if (whole == 0)
            {
                continue;
            }

            uses.Add(new ColumnUse(column, whole));
            left[column.Stock] -= left[column.Stock] == StockBox.Unlimited ? 0 : whole;
            for (int t = 0; t < open.Length; t++)
            {
                open[t] = Math.Max(0, open[t] - (whole * column.Counts[t]));
            }
        }

        double[] values = solution.Duals;
        for (int round = 0; round < 8 && !Proven && !_work.Exhausted; round++)
        {
            var rest = _fill.Fill(open, left, values);
            Take([.. uses, .. rest]);
            values = _fill.Correct(values, rest);
        }
    }

    private void FromPool(MasterSolution solution)
    {
        if (Proven || _work.Exhausted || Missing > 0)
        {
            return;
        }

        double room = Spent - solution.Price;
        var columns = _pool.Columns.Where(c => ReducedCost(c, solution) < room + 1e-6).ToArray();
        var request = new PoolRequest(_model.Demand, _box, Bound, Spent, 0.5);
        if (PoolProgramme.Improve(_model, columns, request, _work) is { } uses)
        {
            Take(uses);
        }
    }

    private double ReducedCost(Column column, MasterSolution solution)
    {
        double cost = _model.Stock(column.Stock).Price - solution.StockDuals[column.Stock];
        for (int t = 0; t < column.Counts.Length; t++)
        {
            cost -= column.Counts[t] * solution.Duals[t];
        }

        return cost;
    }
}
