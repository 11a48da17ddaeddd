// Problem: no run gets by with fewer settings: how many at least?
// Idea:    a boolean programme over the graph: a sheet must be cut; what must be cut needs one of its splits; a split needs its
//          parts cut and one of its two settings. Fewest settings. Shapes whose ways were cut short count as cut,
//          so that the bound stays true.
// Source:  CP-SAT of OR-Tools does the search: one worker, deterministic time, a hint from the best set known.
// Cost:    some milliseconds for an ordinary batch.
// Not:     a proof where the time given does not do: then the bound is the best one reached.
using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>The fewest settings, with a bound.</summary>
internal sealed class SettingsBound
{
    // Each is a variable and some clauses, a kilobyte in all: two hundred planks of fifty pieces in a row took 3.4 GiB.
    private const int MostSplits = 250_000;

    private readonly CpModel _model = new();
    private readonly Dictionary<CutShape, BoolVar> _cut = [];
    private readonly Stack<CutShape> _open = [];
    private readonly BoolVar[] _used;

    private SettingsBound(CutGraph graph, ImmutableArray<CutShape> roots, int[] known)
    {
        _used = [.. graph.Settings.Select(_ => _model.NewBoolVar(""))];
        foreach (var root in roots.Where(root => !root.IsDone).Distinct())
        {
            _model.AddBoolOr([MustCut(root)]);
        }

        while (_open.TryPop(out var shape))
        {
            Demand(shape);
        }

        _model.AddLinearConstraint(LinearExpr.Sum(_used), 0, known.Length);
    }

    /// <summary>Looks for fewer settings than known, and for a bound.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="roots">The sheets.</param>
    /// <param name="known">A set that serves.</param>
    /// <param name="deterministicTime">How much work, about a second each.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <returns>A set no larger than the one known, which need not serve where ways were cut short, and a number that no set goes below.</returns>
    public static (int[] Settings, int Least) Find(
        CutGraph graph, ImmutableArray<CutShape> roots, int[] known, double deterministicTime, CancellationToken cancellation)
    {
        if (known.Length <= 1 || IsTooLarge(graph))
        {
            return (known, Math.Min(1, known.Length));
        }

        return new SettingsBound(graph, roots, known).Solve(known, deterministicTime, cancellation);
    }

    /// <summary>Every set of so few settings that serves.</summary>
    /// <param name="graph">The graph; no way of cutting is left out of it.</param>
    /// <param name="roots">The sheets.</param>
    /// <param name="known">One of them; no smaller one serves.</param>
    /// <param name="most">More are not listed.</param>
    /// <param name="deterministicTime">How much work, about a second each.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <returns>All of them, rising; null where there are more, or the time did not do.</returns>
    public static List<int[]>? All(
        CutGraph graph, ImmutableArray<CutShape> roots, int[] known, int most, double deterministicTime, CancellationToken cancellation)
    {
        if (IsTooLarge(graph))
        {
            return null;
        }

        var bound = new SettingsBound(graph, roots, known);
        var found = new List<int[]>();
        for (int[]? next = known; next is not null;)
        {
            found.Add(next);
            bound._model.AddBoolOr(next.Select(setting => bound._used[setting].Not()));
            (var status, next, double spent) = bound.Solve(deterministicTime, cancellation);
            deterministicTime -= spent;
            if (status is CpSolverStatus.Infeasible)
            {
                return found;
            }

            if (deterministicTime <= 0 || found.Count == most)
            {
                return null;
            }
        }

        return null;
    }

    private static bool IsTooLarge(CutGraph graph) => graph.Shapes.Sum(shape => shape.Splits.Count) > MostSplits;

    private (int[] Settings, int Least) Solve(int[] known, double deterministicTime, CancellationToken cancellation)
    {
        var total = LinearExpr.Sum(_used);
        _model.Minimize(total);
        for (int i = 0; i < _used.Length; i++)
        {
            _model.AddHint(_used[i], known.Contains(i) ? 1 : 0);
        }

        using var solver = Solver(deterministicTime);
        using var stop = cancellation.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return (known, Math.Max(1, Bound(solver)));
        }

        int[] found = Used(solver);
        return (found.Length < known.Length ? found : known, Math.Max(1, Bound(solver)));
    }

    /// <summary>Any set, whichever is found first.</summary>
    private (CpSolverStatus Status, int[]? Settings, double Spent) Solve(double deterministicTime, CancellationToken cancellation)
    {
        // A dozen such questions are answered in the time that one presolve takes.
        using var solver = Solver(deterministicTime, ",cp_model_presolve:false");
        using var stop = cancellation.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        return (status, status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? Used(solver) : null, solver.Response!.DeterministicTime);
    }

    private static CpSolver Solver(double deterministicTime, string more = "") => new()
    {
        StringParameters = string.Create(
            CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_deterministic_time:{deterministicTime},symmetry_level:0{more}"),
    };

    private int[] Used(CpSolver solver) => [.. Enumerable.Range(0, _used.Length).Where(i => solver.BooleanValue(_used[i]))];

    // Whole numbers less than 2^53 come out of the solver as they are; what is between two is rounded up.
    private static int Bound(CpSolver solver) => (int)Math.Ceiling(Math.Max(0, solver.BestObjectiveBound) - 1e-6);

    private BoolVar MustCut(CutShape shape)
    {
        if (!_cut.TryGetValue(shape, out var cut))
        {
            cut = _model.NewBoolVar("");
            _cut.Add(shape, cut);
            _open.Push(shape);
        }

        return cut;
    }

    private void Demand(CutShape shape)
    {
        if (shape.IsPartial)
        {
            return;
        }

        var ways = new List<ILiteral> { _cut[shape].Not() };
        foreach (var split in shape.Splits)
        {
            CutShape[] parts = [.. new[] { split.Near, split.Far }.OfType<CutShape>().Where(part => !part.IsDone).Distinct()];
            ILiteral[] settings = [.. new[] { split.NearSetting, split.FarSetting }.Where(i => i >= 0).Distinct().Select(i => _used[i])];
            if (parts.Length == 0)
            {
                ways.AddRange(settings);
                continue;
            }

            var chosen = _model.NewBoolVar("");
            ways.Add(chosen);
            _model.AddBoolOr([chosen.Not(), .. settings]);
            foreach (var part in parts)
            {
                _model.AddImplication(chosen, MustCut(part));
            }
        }

        _model.AddBoolOr(ways);
    }
}
