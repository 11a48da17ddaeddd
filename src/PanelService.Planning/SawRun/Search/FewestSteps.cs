// Problem: of the runs with the fewest settings, one that comes back to a setting as seldom as possible, and the proof.
// Idea:    a run of so many steps at so few settings is a yes or no: settings, some of them more than once, get places in the
//          run; of every workpiece is known by which place at the latest it has to be there. A way of cutting it at some
//          place serves until that place, if its parts may still come then: so one way, the latest, does for all that are alike.
//          Asked from as many steps as there are settings on (no run has fewer) until there is one. Shapes whose ways were cut
//          short may come at any time, so that a no stays true.
// Source:  CP-SAT of OR-Tools does the search: one worker, deterministic time, the whole of it shared by the questions.
// Cost:    nothing where the run known comes back to no setting; else some hundredths of a second a question.
// Not:     a proof where the time given does not do: then the bound is the last number of steps that was found too few.
using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>The fewest steps of a run with given settings in number, with a bound.</summary>
internal sealed class FewestSteps
{
    private readonly CpModel _model = new();
    private readonly Dictionary<CutShape, Node> _nodes = [];
    private readonly Stack<CutShape> _open = [];
    private readonly List<Place>[] _places;
    private readonly int _steps;

    private FewestSteps(CutGraph graph, ImmutableArray<CutShape> roots, int settings, int steps)
    {
        _steps = steps;
        _places = [.. graph.Settings.Select((_, setting) => PlacesOf(setting, 1 + steps - settings))];
        _model.Add(LinearExpr.Sum(_places.Select(places => places[0].Used)) <= settings);
        _model.Add(LinearExpr.Sum(_places.SelectMany(places => places.Select(place => place.Used))) <= steps);
        _model.AddNoOverlap(_places.SelectMany(places => places.Select(place => _model.NewOptionalFixedSizeIntervalVar(place.At, 1, place.Used, ""))));
        foreach (var root in roots.Where(root => !root.IsDone).Distinct())
        {
            _model.AddBoolOr([MustCut(root).Cut]);
        }

        while (_open.TryPop(out var shape))
        {
            Demand(shape);
        }
    }

    /// <summary>Looks for a shorter run than the one known, and for a bound.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="roots">The sheets.</param>
    /// <param name="settings">How many settings a run may have.</param>
    /// <param name="known">How many steps the run known has.</param>
    /// <param name="deterministicTime">How much work in all, about a second each.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <returns>A run, null where none shorter was found. And a number of steps that no
    /// run at so few settings goes below.</returns>
    public static (int[]? Sequence, int Least) Find(
        CutGraph graph, ImmutableArray<CutShape> roots, int settings, int known, double deterministicTime, CancellationToken cancellation)
    {
        double left = deterministicTime;
        for (int steps = settings; steps < known; steps++)
        {
            var (status, sequence, spent) = left <= 0
                ? (CpSolverStatus.Unknown, null, 0)
                : new FewestSteps(graph, roots, settings, steps).Solve(left, cancellation);
            left -= spent;
            if (status != CpSolverStatus.Infeasible)
            {
                return (sequence, steps);
            }
        }

        return (null, known);
    }

    private (CpSolverStatus Status, int[]? Sequence, double Spent) Solve(double deterministicTime, CancellationToken cancellation)
    {
        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_deterministic_time:{deterministicTime},symmetry_level:0,linearization_level:0"),
        };
        using var stop = cancellation.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        int[]? sequence = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? [.. _places.SelectMany(places => places)
                .Where(place => solver.BooleanValue(place.Used))
                .OrderBy(place => solver.Value(place.At))
                .Select(place => place.Setting)]
            : null;
        return (status, sequence, solver.Response!.DeterministicTime);
    }

    /// <summary>The places a setting may have in the run: the second only where it has the first, and after it.</summary>
    private List<Place> PlacesOf(int setting, int most)
    {
        var places = new List<Place>();
        for (int i = 0; i < most; i++)
        {
            places.Add(new Place(setting, _model.NewBoolVar(""), _model.NewIntVar(0, _steps - 1, "")));
            if (i > 0)
            {
                _model.AddImplication(places[i].Used, places[i - 1].Used);
                _model.Add(places[i].At > places[i - 1].At).OnlyEnforceIf(places[i].Used);
            }
        }

        return places;
    }

    private Node MustCut(CutShape shape)
    {
        if (!_nodes.TryGetValue(shape, out var known))
        {
            int[] settings = shape.IsPartial
                ? []
                : [.. shape.Splits.SelectMany(split => new[] { split.NearSetting, split.FarSetting }).Where(i => i >= 0).Distinct()];
            known = new Node(
                _model.NewBoolVar(""),
                _model.NewIntVar(0, _steps, ""),
                settings.SelectMany(setting => _places[setting]).ToDictionary(place => place, _ => _model.NewBoolVar("")));
            _nodes.Add(shape, known);
            _open.Push(shape);
        }

        return known;
    }

    private void Demand(CutShape shape)
    {
        if (shape.IsPartial)
        {
            return;
        }

        var (cut, latest, at) = _nodes[shape];
        var ways = at.Keys.ToDictionary(place => place, place => new List<ILiteral> { at[place].Not() });
        foreach (var split in shape.Splits)
        {
            CutShape[] parts = [.. new[] { split.Near, split.Far }.OfType<CutShape>().Where(part => !part.IsDone).Distinct()];
            int[] settings = [.. new[] { split.NearSetting, split.FarSetting }.Where(i => i >= 0).Distinct()];
            foreach (var place in settings.SelectMany(setting => _places[setting]))
            {
                var chosen = parts.Length == 0 ? at[place] : _model.NewBoolVar("");
                ways[place].Add(chosen);
                foreach (var part in parts.Select(MustCut))
                {
                    _model.AddImplication(chosen, part.Cut);
                    AddBefore(chosen, place, part);
                }
            }
        }

        _model.AddAtMostOne(at.Values);
        _model.AddBoolOr([cut.Not(), .. at.Values]);
        foreach (var (place, chosen) in at)
        {
            _model.AddImplication(chosen, place.Used);
            _model.Add(latest <= place.At).OnlyEnforceIf(chosen);
            _model.AddBoolOr(ways[place]);
        }
    }

    /// <summary>A part is cut at the same step as the workpiece it comes from, or at a later one.</summary>
    private void AddBefore(BoolVar chosen, Place place, Node part)
    {
        if (part.At.TryGetValue(place, out var same))
        {
            _model.Add(place.At <= part.Latest).OnlyEnforceIf(chosen);
            _model.Add(place.At < part.Latest).OnlyEnforceIf([chosen, same.Not()]);
        }
        else
        {
            _model.Add(place.At < part.Latest).OnlyEnforceIf(chosen);
        }
    }

    /// <summary>A time that a setting may come in the run.</summary>
    private sealed record Place(int Setting, BoolVar Used, IntVar At);

    /// <summary>A shape in the run: whether it must be cut up, the step at which it has to be there, and where it is cut.</summary>
    private sealed record Node(BoolVar Cut, IntVar Latest, Dictionary<Place, BoolVar> At);
}
