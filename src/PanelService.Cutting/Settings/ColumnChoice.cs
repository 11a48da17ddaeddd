// Problem: which of the patterns known, from the stocks a plan uses, cut everything at fewest different sizes (FewSizesPlanner)?
// Idea:    an integer programme: how often each pattern, and a yes or no for each size that a pattern used has. The leftovers
//          kept are to be no smaller in all, and the emptiest sheet of each stock stays as it is, since most of what is left
//          lies there; so does one that is cut for its leftover. Every answer is forbidden before the next question.
// Source:  cutting stock with few set-ups: Henn and Wäscher, a survey, 2013; CP-SAT of OR-Tools does the search: one worker,
//          one seed, deterministic time.
// Cost:    some ten milliseconds an answer; bounded by the deterministic time given.
// Not:     the settings that the saw comes to: how cuts share one is known only to whoever plans the run.
using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Settings;

/// <summary>The programme that chooses among patterns of given stocks; each answer is another choice of patterns.</summary>
internal sealed class ColumnChoice
{
    private readonly CpModel _programme = new();
    private readonly IReadOnlyList<Column> _columns;
    private readonly IntVar[] _copies;
    private readonly BoolVar[] _isUsed;
    private readonly List<HashSet<long>> _sizes;
    private readonly Dictionary<long, BoolVar> _sizeUsed;

    /// <summary>Sets the programme up.</summary>
    /// <param name="model">Whose stocks are limited to those a plan uses.</param>
    /// <param name="columns">The patterns; those of the plan known come first.</param>
    /// <param name="known">How the plan known uses its own.</param>
    /// <param name="smallest">What a leftover must hold to be kept.</param>
    public ColumnChoice(Model model, IReadOnlyList<Column> columns, ImmutableArray<PatternUse> known, (long Width, long Height) smallest)
    {
        _columns = columns;
        int[] knownCopies = [.. known.Select(use => use.Copies)];
        long MostOf(int stock) => model.Stock(stock).Limit ?? 0;
        _copies = [.. columns.Select(column => _programme.NewIntVar(0, MostOf(column.Stock), ""))];
        _isUsed = [.. columns.Select(_ => _programme.NewBoolVar(""))];
        for (int t = 0; t < model.Demand.Length; t++)
        {
            _programme.Add(LinearExpr.WeightedSum(_copies, columns.Select(column => (long)column.Counts[t])) >= model.Demand[t]);
        }

        for (int s = 0; s < model.Stocks.Length; s++)
        {
            _programme.Add(LinearExpr.Sum(_copies.Where((_, c) => columns[c].Stock == s)) <= MostOf(s));
        }

        _sizes = [.. columns.Select(column => SizesOf(model, column))];
        _sizeUsed = _sizes.SelectMany(all => all).Distinct().Order().ToDictionary(size => size, _ => _programme.NewBoolVar(""));
        for (int c = 0; c < columns.Count; c++)
        {
            _programme.Add(_copies[c] <= MostOf(columns[c].Stock) * LinearExpr.Term(_isUsed[c], 1));
            _programme.Add(_copies[c] >= LinearExpr.Term(_isUsed[c], 1));
            foreach (long size in _sizes[c])
            {
                _programme.AddImplication(_isUsed[c], _sizeUsed[size]);
            }

            _programme.AddHint(_copies[c], c < knownCopies.Length ? knownCopies[c] : 0);
        }

        // What a plan leaves of a stock mostly lies on the sheet that holds least: that one stays, and what is cut for its leftover.
        foreach (var stock in Enumerable.Range(0, knownCopies.Length).GroupBy(c => columns[c].Stock))
        {
            int emptiest = stock.MinBy(c => AreaOf(model, columns[c]));
            foreach (int stays in stock.Where(c => c == emptiest || known[c].ForLeftover))
            {
                _programme.Add(_copies[stays] >= 1);
            }
        }

        var leftovers = new Leftover(model, smallest);
        long[] kept = [.. columns.Select(leftovers.KeptOf)];
        foreach (var stock in Enumerable.Range(0, columns.Count).GroupBy(c => columns[c].Stock).Select(group => group.ToList()))
        {
            long keptNow = stock.Where(c => c < knownCopies.Length).Sum(c => knownCopies[c] * kept[c]);
            _programme.Add(LinearExpr.WeightedSum(stock.Select(c => _copies[c]), stock.Select(c => kept[c])) >= keptNow);
        }

        int now = _sizes.Take(knownCopies.Length).SelectMany(all => all).Distinct().Count();
        _programme.Add(LinearExpr.Sum(_sizeUsed.Values) <= now);
        Forbid([.. Enumerable.Range(0, knownCopies.Length)]);
    }

    /// <summary>Another choice, as good as can be found.</summary>
    /// <param name="weights">What a size weighs, a pattern, and a size of a pattern by itself.</param>
    /// <param name="time">Deterministic time.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <returns>How often which pattern is used, null where none was found, and the time spent.</returns>
    public (List<ColumnUse>? Uses, double Spent) Next((int Size, int Pattern, int OwnSize) weights, double time, CancellationToken cancellation)
    {
        _programme.Minimize(
            (weights.Size * LinearExpr.Sum(_sizeUsed.Values))
            + LinearExpr.WeightedSum(_isUsed, _sizes.Select(sizes => weights.Pattern + (long)(weights.OwnSize * sizes.Count))));
        using var solver = new CpSolver
        {
            StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_deterministic_time:{time},symmetry_level:0"),
        };
        using var stop = cancellation.Register(solver.StopSearch);
        if (solver.Solve(_programme) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return (null, solver.Response!.DeterministicTime);
        }

        List<ColumnUse> uses = [.. _columns.Select((column, c) => new ColumnUse(column, (int)solver.Value(_copies[c]))).Where(use => use.Copies > 0)];
        Forbid([.. Enumerable.Range(0, _columns.Count).Where(c => solver.BooleanValue(_isUsed[c]))]);
        return (uses, solver.Response!.DeterministicTime);
    }

    /// <summary>Not all of these again.</summary>
    private void Forbid(int[] columns) => _programme.AddBoolOr(columns.Select(c => _isUsed[c].Not()));

    private static double AreaOf(Model model, Column column) => column.Counts.Select((count, t) => count * model.PieceArea(t)).Sum();

    /// <summary>The sizes at which a pattern's sheet is cut, as it is first laid out.</summary>
    private static HashSet<long> SizesOf(Model model, Column column)
    {
        var sizes = new HashSet<long>();
        var stock = model.Stock(column.Stock);
        Visit(model, column.Block, stock.Width, stock.Height, sizes);
        return sizes;
    }

    // A part that fills the room left to it needs no cut of its own.
    private static void Visit(Model model, Block block, long width, long height, HashSet<long> sizes)
    {
        var (ownWidth, ownHeight) = BlockMath.Size(block, model.Sizes, model.Kerf);
        if (ownWidth < width)
        {
            sizes.Add(ownWidth);
        }

        if (ownHeight < height)
        {
            sizes.Add(ownHeight);
        }

        if (block is not StackBlock stack)
        {
            return;
        }

        foreach (var part in stack.Parts)
        {
            var (partWidth, partHeight) = BlockMath.Size(part, model.Sizes, model.Kerf);
            sizes.Add(stack.Axis == Axis.X ? partWidth : partHeight);
            Visit(model, part, stack.Axis == Axis.X ? partWidth : ownWidth, stack.Axis == Axis.X ? ownHeight : partHeight, sizes);
        }
    }
}
