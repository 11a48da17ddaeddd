// Problem: of the plans that use the same stocks, one whose sheets are cut at few different sizes, since every size is a
//          setting of the fence.
// Idea:    the relaxation of just these stocks brings patterns that all belong to cheapest plans, or nearly; an integer programme
//          chooses how often each is used so that all is cut, no more stocks are used, and the sizes that appear in the
//          patterns used are fewest. What it counts is a guess at the settings: how cuts share a setting is known only to
//          whoever plans the run, who then takes the better of the two plans.
// Source:  cutting stock with few set-ups: Henn and Wäscher, a survey, 2013.
// Cost:    a short search, some ten milliseconds, and as much for the programme.
// Not:     the fewest over all cheapest plans: only over the patterns known.
using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Settings;

/// <summary>Swaps patterns of a plan for others of the same stocks where that takes fewer sizes.</summary>
public static class FewSizesPlanner
{
    private const long Units = 15_000;
    private const int MostColumns = 250;

    // A batch of more is long in the run anyway, and planning its run twice takes seconds.
    private const int MostPatterns = 20;
    private const string Parameters = "num_workers:1,random_seed:1,max_deterministic_time:0.04,symmetry_level:0";

    /// <summary>Looks for a plan of the same stocks with fewer sizes.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="result">The plan; every piece in it.</param>
    /// <param name="cancellation">Ends it; then the plan stays.</param>
    /// <returns>A plan of the same price and counts of stocks; <paramref name="result"/> itself where none was found.</returns>
    public static CuttingResult Find(CuttingProblem problem, CuttingResult result, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(result);
        if (!result.Complete || result.StoppedEarly || result.Patterns.Length is < 2 or > MostPatterns)
        {
            return result;
        }

        var model = new Model(SameStocks(problem, result), cancellation);
        if (ManyOrders.Suits(model) || model.Classes.Any(c => !c.IsExact))
        {
            return result;
        }

        var search = new PlanSearch(model, new WorkMeter(Units, cancellation), progress: null);
        search.Run();
        var known = Columns(model, result);
        var columns = known.Concat(search.Columns.Take(MostColumns)).ToList();
        return cancellation.IsCancellationRequested || Choose(model, columns, [.. result.Patterns.Select(use => use.Copies)], cancellation) is not { } uses
            ? result
            : Exactly(model, result, uses);
    }

    private static CuttingProblem SameStocks(CuttingProblem problem, CuttingResult result) => problem with
    {
        Stocks = [.. problem.Stocks.Select((stock, s) => stock with { Limit = result.Patterns.Where(use => use.Stock == s).Sum(use => use.Copies) })],
    };

    private static List<Column> Columns(Model model, CuttingResult result) =>
    [
        .. result.Patterns.Select(use =>
        {
            var block = model.ToTypes(use.Block);
            return new Column(Array.IndexOf(model.Stocks, use.Stock), BlockMath.Counts(block, model.Types.Length), block);
        }),
    ];

    /// <summary>How often each column; null where nothing better than the plan known was found. Its columns come first.</summary>
    private static List<ColumnUse>? Choose(Model model, List<Column> columns, int[] knownCopies, CancellationToken cancellation)
    {
        var programme = new CpModel();
        var copies = columns.Select(column => programme.NewIntVar(0, model.Stock(column.Stock).Limit ?? 0, "")).ToArray();
        for (int t = 0; t < model.Demand.Length; t++)
        {
            programme.Add(LinearExpr.WeightedSum(copies, columns.Select(column => (long)column.Counts[t])) >= model.Demand[t]);
        }

        for (int s = 0; s < model.Stocks.Length; s++)
        {
            programme.Add(LinearExpr.Sum(copies.Where((_, c) => columns[c].Stock == s)) <= (model.Stock(s).Limit ?? 0));
        }

        var sizes = columns.Select(column => SizesOf(model, column)).ToList();
        var used = sizes.SelectMany(all => all).Distinct().Order().ToDictionary(size => size, _ => programme.NewBoolVar(""));
        for (int c = 0; c < columns.Count; c++)
        {
            long most = model.Stock(columns[c].Stock).Limit ?? 0;
            foreach (long size in sizes[c])
            {
                programme.Add(copies[c] <= most * LinearExpr.Term(used[size], 1));
            }

            programme.AddHint(copies[c], c < knownCopies.Length ? knownCopies[c] : 0);
        }

        // What a plan leaves of a stock mostly lies on the sheet that holds least: that one stays.
        foreach (var stock in Enumerable.Range(0, knownCopies.Length).GroupBy(c => columns[c].Stock))
        {
            int emptiest = stock.MinBy(c => AreaOf(model, columns[c]));
            programme.Add(copies[emptiest] >= 1);
        }

        int now = sizes.Take(knownCopies.Length).SelectMany(all => all).Distinct().Count();
        var total = LinearExpr.Sum(used.Values);
        programme.Add(total <= now - 1);
        programme.Minimize(total);
        using var solver = new CpSolver { StringParameters = Parameters };
        using var stop = cancellation.Register(solver.StopSearch);
        return solver.Solve(programme) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? [.. columns.Select((column, c) => new ColumnUse(column, (int)solver.Value(copies[c]))).Where(use => use.Copies > 0)]
            : null;
    }

    private static double AreaOf(Model model, Column column) => column.Counts.Select((count, t) => count * model.PieceArea(t)).Sum();

    private static CuttingResult Exactly(Model model, CuttingResult result, List<ColumnUse> uses)
    {
        var (exact, missing) = ExactDemand.Of(uses, model);
        if (missing > 0)
        {
            return result;
        }

        var (patterns, _) = model.Translate(exact.Select(use => new PatternUse(use.Column.Stock, use.Column.Block, use.Copies)));
        bool same = patterns.GroupBy(use => use.Stock).All(group =>
            group.Sum(use => use.Copies) == result.Patterns.Where(use => use.Stock == group.Key).Sum(use => use.Copies));
        return same ? result with { Patterns = patterns } : result;
    }

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
