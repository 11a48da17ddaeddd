// Problem: with several stock prices, rounding the relaxation's bound up to a whole cent is weak: no mix of whole
//          sheets may cost just that.
// Idea:    every value vector says Σ z(s) n(s) ≥ Σ d p for the counts n of any plan. The cheapest whole counts that
//          meet all those inequalities at once are a bound, and the true price is never below. Few counts are looked through
//          (LeastCounts), many are left to an integer programming solver.
// Source:  surrogate constraints (Glover, Operations Research 23, 1975) on the counts of Gilmore and Gomory's several stocks.
// Cost:    some microseconds, or a small integer programme of one variable per stock; that is bounded by deterministic time,
//          and then still a bound.
using Google.OrTools.Sat;
using PanelService.Cutting.Exact;

namespace PanelService.Cutting.Search;

/// <summary>The cheapest whole counts of stocks that no known inequality forbids.</summary>
internal sealed class PriceMix
{
    private const double DeterministicTime = 0.05;
    private const int UnitsOfLook = 20;
    private const int UnitsOfProgramme = 1000;

    private readonly WorkMeter _work;
    private readonly ProofRecord _proof;
    private readonly int[] _demand;
    private readonly long[] _prices;
    private readonly (int[] Least, int[] Most) _box;
    private readonly List<CountsNeed> _needs = [];
    private readonly List<int[]> _excluded = [];

    /// <summary>Starts with no inequality.</summary>
    /// <param name="model">The model.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <param name="work">Where its work is counted.</param>
    /// <param name="proof">Told of every inequality.</param>
    public PriceMix(Model model, StockBox box, WorkMeter work, ProofRecord proof)
    {
        (_work, _proof, _demand) = (work, proof, model.Demand);
        int pieces = (int)Math.Min(StockBox.Unlimited - 1, model.Demand.Sum(d => (long)d));
        _prices = [.. Enumerable.Range(0, model.Stocks.Length).Select(s => model.Stock(s).Price)];
        _box = (box.Least, [.. box.Most.Select(most => Math.Min(most, pieces))]);
    }

    /// <summary>Adds an inequality that holds for every plan.</summary>
    /// <param name="vector">The value vector.</param>
    public void Add(DualVector vector)
    {
        _proof.Add(vector);
        var covered = vector.Covered(_demand);
        if (covered < long.MaxValue / 4)
        {
            _needs.Add(new CountsNeed(vector.Best, (long)covered));
        }
    }

    /// <summary>Rules out counts from which no plan can be made, and all that are nowhere larger.</summary>
    /// <param name="counts">Counts per stock.</param>
    public void Exclude(int[] counts) => _excluded.Add(counts);

    /// <summary>Solves.</summary>
    /// <returns>The cheapest counts; no counts where there are none at all, or the solver gave up.</returns>
    public MixResult Solve()
    {
        // A stop that came before a solver runs does not reach it.
        _work.Cancellation.ThrowIfCancellationRequested();
        _work.Spend(UnitsOfLook);
        if (LeastCounts.TryFind(_prices, _box, _needs, _excluded, out int[]? counts))
        {
            return new MixResult(counts is null ? long.MaxValue : Price(counts), counts);
        }

        _work.Spend(UnitsOfProgramme);
        return SolveProgramme();
    }

    private long Price(int[] counts) => counts.Zip(_prices).Sum(pair => pair.First * pair.Second);

    private MixResult SolveProgramme()
    {
        var programme = new CpModel();
        IntVar[] counts = [.. _box.Least.Zip(_box.Most).Select(range => programme.NewIntVar(range.First, range.Second, ""))];
        programme.Minimize(LinearExpr.WeightedSum(counts, _prices));
        _needs.ForEach(need => programme.Add(LinearExpr.WeightedSum(counts, need.Worth) >= need.Needed));
        foreach (int[] excluded in _excluded)
        {
            programme.AddBoolOr(counts.Select((count, s) =>
            {
                var larger = programme.NewBoolVar("");
                programme.Add(count >= excluded[s] + 1).OnlyEnforceIf(larger);
                return larger;
            }));
        }

        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"num_workers:1,random_seed:1,max_deterministic_time:{DeterministicTime},linearization_level:2"),
        };
        using var stop = _work.Cancellation.Register(solver.StopSearch);
        return solver.Solve(programme) switch
        {
            CpSolverStatus.Infeasible => new MixResult(long.MaxValue, null),
            CpSolverStatus.Optimal => new MixResult((long)Math.Round(solver.ObjectiveValue), [.. counts.Select(c => (int)solver.Value(c))]),
            CpSolverStatus.Feasible or CpSolverStatus.Unknown => new MixResult((long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), null),
            _ => new MixResult(0, null),
        };
    }
}

/// <summary>The cheapest mix.</summary>
/// <param name="Bound">No plan costs less; <see cref="long.MaxValue"/> where none is cheaper than the known one.</param>
/// <param name="Counts">Counts of that price; null where there are none.</param>
internal sealed record MixResult(long Bound, int[]? Counts);
