// Problem: of the runs with the fewest settings, one that comes back to a setting as seldom as possible, and the proof.
// Idea:    a run of so many steps at so few settings is a yes or no: settings, some of them more than once, get places in the
//          run; of every workpiece is known by which place at the latest it has to be there. A way of cutting it at some
//          place serves until that place, if its parts may still come then: so one way, the latest, does for all that are alike.
//          Asked from as many steps as there are settings on (no run has fewer) until there is one. Where the sets of so few settings are few,
//          each is asked by itself, from as many steps as RareSettings says on. Shapes whose ways were cut
//          short may come at any time, so that a no stays true.
// Source:  CP-SAT of OR-Tools does the search: one worker, deterministic time, the whole of it shared by the questions.
//          Its presolve is left out: it took half of the time, and deterministic time does not count it.
// Cost:    nothing where the run known comes back to no setting, nor where there are too many ways of cutting to ask; else some
//          hundredths of a second a question.
// Not:     a proof where the time given does not do: then the bound is the last number of steps that was found too few.
using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>The fewest steps of a run with given settings in number, with a bound.</summary>
internal sealed class FewestSteps
{
    // More sets than this are not asked one by one.
    private const int MostSets = 40;

    // Setting up a question about more ways of cutting takes a second, and no such was ever answered.
    private const int MostSplits = 3_000;

    private readonly CpModel _model = new();
    private readonly Dictionary<CutShape, Node> _nodes = [];
    private readonly Stack<CutShape> _open = [];
    private readonly List<Place>[] _places;
    private readonly int _steps;

    private FewestSteps(CutGraph graph, ImmutableArray<CutShape> roots, (int Settings, int[]? Set, RareSettings? Rare) run, int steps)
    {
        _steps = steps;
        bool[] allowed = new bool[graph.Settings.Count];
        Array.Fill(allowed, run.Set is null);
        Array.ForEach(run.Set ?? [], setting => allowed[setting] = true);
        _places = [.. graph.Settings.Select((_, setting) => allowed[setting] ? PlacesOf(setting, 1 + steps - run.Settings) : [])];
        _model.Add(LinearExpr.Sum(_places.Where(places => places.Count > 0).Select(places => places[0].Used)) <= run.Settings);
        _model.Add(LinearExpr.Sum(_places.SelectMany(places => places.Select(place => place.Used))) <= steps);
        _model.AddNoOverlap(_places.SelectMany(places => places.Select(place => _model.NewOptionalFixedSizeIntervalVar(place.At, 1, place.Used, ""))));
        if (run.Rare is { } rare)
        {
            Keep([.. run.Set!.Select(setting => _places[setting])], rare);
        }

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
    /// <param name="known">The run known, and whether it is proven that none has fewer settings.</param>
    /// <param name="deterministicTime">How much work in all, about a second each.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <returns>A run, null where none shorter was found. And a number of steps that no
    /// run at so few settings goes below.</returns>
    public static (int[]? Sequence, int Least) Find(
        CutGraph graph, ImmutableArray<CutShape> roots, (int[] Run, bool IsFewest) known, double deterministicTime, CancellationToken cancellation)
    {
        int[] settings = [.. known.Run.Distinct().Order()];
        if (settings.Length == known.Run.Length)
        {
            return (null, known.Run.Length);
        }

        double left = graph.Shapes.Sum(shape => shape.Splits.Count) > MostSplits ? 0 : deterministicTime;
        if (left > 0 && known.IsFewest && !graph.Shapes.Exists(shape => shape.IsPartial)
            && SettingsBound.All(graph, roots, settings, MostSets, left / 4, cancellation) is { } sets)
        {
            return OfSets(graph, roots, (known.Run, sets), left, cancellation);
        }

        for (int steps = settings.Length; steps < known.Run.Length; steps++)
        {
            var (status, sequence, spent) = left <= 0
                ? (CpSolverStatus.Unknown, null, 0)
                : new FewestSteps(graph, roots, (settings.Length, null, null), steps).Solve(left, cancellation);
            left -= spent;
            if (status != CpSolverStatus.Infeasible)
            {
                return (sequence, steps);
            }
        }

        return (null, known.Run.Length);
    }

    /// <summary>The same where all sets of so few settings are known: each is asked by itself, the one that promises the shortest run first.</summary>
    private static (int[]? Sequence, int Least) OfSets(
        CutGraph graph, ImmutableArray<CutShape> roots, (int[] Run, List<int[]> Sets) known, double left, CancellationToken cancellation)
    {
        var open = known.Sets
            .Select(set => (Set: set, Rare: new RareSettings(new RunTable(graph, roots, set))))
            .Select(one => (one.Set, one.Rare, Least: one.Rare.LeastSteps))
            .ToList();
        int[]? best = null;
        int most = known.Run.Length;
        while (open.Min(one => one.Least) < most)
        {
            int next = open.FindIndex(one => one.Least == open.Min(other => other.Least));
            var (set, rare, steps) = open[next];
            var (status, sequence, spent) = left <= 0
                ? (CpSolverStatus.Unknown, null, 0)
                : new FewestSteps(graph, roots, (set.Length, set, rare), steps).Solve(left, cancellation);
            left -= spent;
            if (sequence is not null)
            {
                (best, most) = (sequence, sequence.Length);
            }
            else if (status == CpSolverStatus.Infeasible)
            {
                open[next] = (set, rare, steps + 1);
            }
            else
            {
                return (best, steps);
            }
        }

        return (best, most);
    }

    /// <summary>What is known of the settings without looking at the sheets again.</summary>
    private void Keep(List<Place>[] places, RareSettings rare)
    {
        for (int i = 0; i < places.Length; i++)
        {
            foreach (var place in places[i].Take(rare.Times[i]))
            {
                _model.AddBoolAnd([place.Used]);
            }

            for (int other = 0; other < places.Length; other++)
            {
                if (other != i && !rare.MayFollow(other, i))
                {
                    ILiteral[] once = [.. new[] { places[i], places[other] }.Where(own => own.Count > 1).Select(own => own[1].Used.Not())];
                    _model.Add(places[i][0].At < places[other][0].At).OnlyEnforceIf(once);
                }
            }
        }
    }

    private (CpSolverStatus Status, int[]? Sequence, double Spent) Solve(double deterministicTime, CancellationToken cancellation)
    {
        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_deterministic_time:{deterministicTime},symmetry_level:0,linearization_level:0,cp_model_presolve:false"),
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
                : [.. shape.Splits.SelectMany(SettingsOf).Distinct()];
            known = new Node(
                _model.NewBoolVar(""),
                _model.NewIntVar(0, _steps, ""),
                settings.SelectMany(setting => _places[setting]).ToDictionary(place => place, _ => _model.NewBoolVar("")));
            _nodes.Add(shape, known);
            _open.Push(shape);
        }

        return known;
    }

    /// <summary>The settings a split can be made at in such a run.</summary>
    private int[] SettingsOf(CutSplit split) =>
        [.. new[] { split.NearSetting, split.FarSetting }.Where(setting => setting >= 0 && _places[setting].Count > 0).Distinct()];

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
            foreach (var place in SettingsOf(split).SelectMany(setting => _places[setting]))
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
