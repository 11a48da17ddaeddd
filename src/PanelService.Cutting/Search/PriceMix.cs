// Problem: with several stock prices, rounding the relaxation's bound up to a whole cent is weak: no mix of whole
//          sheets may cost just that.
// Idea:    every value vector says Σ z(s) n(s) ≥ Σ d p for the counts n of any plan. The cheapest whole counts that
//          meet all those inequalities at once are a bound, and the true price is never below.
// Source:  surrogate constraints (Glover, Operations Research 23, 1975) on the counts of Gilmore and Gomory's several stocks.
// Cost:    a small integer programme of one variable per stock; bounded by deterministic time, and then still a bound.
using Google.OrTools.Sat;

namespace PanelService.Cutting.Search;

/// <summary>The cheapest whole counts of stocks that no known inequality forbids.</summary>
internal sealed class PriceMix
{
    private const double DeterministicTime = 0.05;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly ProofRecord _proof;
    private readonly CpModel _programme = new();
    private readonly IntVar[] _counts;

    /// <summary>Starts with no inequality.</summary>
    /// <param name="model">The model.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <param name="work">Where its work is counted.</param>
    /// <param name="proof">Told of every inequality.</param>
    public PriceMix(Model model, StockBox box, WorkMeter work, ProofRecord proof)
    {
        (_model, _work, _proof) = (model, work, proof);
        long pieces = model.Demand.Sum(d => (long)d);
        _counts = [.. Enumerable.Range(0, model.Stocks.Length).Select(s => _programme.NewIntVar(box.Least[s], Math.Min(box.Most[s], pieces), ""))];
        var price = LinearExpr.WeightedSum(_counts, Enumerable.Range(0, _counts.Length).Select(s => model.Stock(s).Price));
        _programme.Minimize(price);
    }

    /// <summary>Adds an inequality that holds for every plan.</summary>
    /// <param name="vector">The value vector.</param>
    public void Add(DualVector vector)
    {
        _proof.Add(vector);
        var covered = vector.Covered(_model.Demand);
        if (covered < long.MaxValue / 4)
        {
            _programme.Add(LinearExpr.WeightedSum(_counts, vector.Best) >= (long)covered);
        }
    }

    /// <summary>Rules out counts from which no plan can be made, and all that are nowhere larger.</summary>
    /// <param name="counts">Counts per stock.</param>
    public void Exclude(int[] counts)
    {
        var more = new List<ILiteral>();
        for (int s = 0; s < counts.Length; s++)
        {
            var larger = _programme.NewBoolVar("");
            _programme.Add(_counts[s] >= counts[s] + 1).OnlyEnforceIf(larger);
            more.Add(larger);
        }

        _programme.AddBoolOr(more);
    }

    /// <summary>Solves.</summary>
    /// <returns>The cheapest counts; no counts where there are none below the known price, or the solver gave up.</returns>
    public MixResult Solve()
    {
        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"num_workers:1,random_seed:1,max_deterministic_time:{DeterministicTime},linearization_level:2"),
        };
        using var stop = _work.Cancellation.Register(solver.StopSearch);

        // A stop that came before the solver runs does not reach it.
        _work.Cancellation.ThrowIfCancellationRequested();
        var status = solver.Solve(_programme);
        _work.Spend(1000);
        return status switch
        {
            CpSolverStatus.Infeasible => new MixResult(long.MaxValue, null),
            CpSolverStatus.Optimal => new MixResult((long)Math.Round(solver.ObjectiveValue), [.. _counts.Select(c => (int)solver.Value(c))]),
            CpSolverStatus.Feasible or CpSolverStatus.Unknown => new MixResult((long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), null),
            _ => new MixResult(0, null),
        };
    }
}

/// <summary>The cheapest mix.</summary>
/// <param name="Bound">No plan costs less; <see cref="long.MaxValue"/> where none is cheaper than the known one.</param>
/// <param name="Counts">Counts of that price; null where there are none.</param>
internal sealed record MixResult(long Bound, int[]? Counts);
