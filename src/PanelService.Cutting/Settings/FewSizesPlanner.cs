// Problem: of the plans that use the same stocks, some whose sheets are cut at few different sizes, since every size is a
//          setting of the fence.
// Idea:    the relaxation of just these stocks brings patterns that all belong to cheapest plans, or nearly; an integer programme
//          chooses how often each is used so that all is cut, no more stocks are used, and what they ask of the saw is least: the
//          sizes that appear in the patterns used, then also the patterns, or the sizes of each pattern by itself. What it counts is a
//          guess at the settings: how cuts share a setting is known only to whoever plans the run. So it is asked several
//          times, each time for another choice of patterns, and whoever plans the run takes the best.
// Source:  cutting stock with few set-ups: Henn and Wäscher, a survey, 2013.
// Cost:    a short search, some ten milliseconds, and as much for each programme.
// Not:     the fewest over all cheapest plans: only over the patterns known.
using System.Collections.Immutable;
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Settings;

/// <summary>Swaps patterns of a plan for others of the same stocks where that takes fewer sizes.</summary>
public static class FewSizesPlanner
{
    private const long Units = 15_000;
    private const int MostColumns = 250;
    private const double MostTime = 0.04;

    // A batch of more is long in the run anyway, and looking at its sisters takes seconds.
    private const int MostPatterns = 60;

    // What a size, a pattern, and a size of a pattern by itself weigh, by turns.
    private static readonly (int Size, int Pattern, int OwnSize)[] Weights = [(1, 0, 0), (4, 1, 0), (6, 0, 1)];

    /// <summary>Looks for plans of the same stocks with few sizes.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="result">The plan; every piece in it.</param>
    /// <param name="smallest">What a leftover must hold to be kept: no less is left to keep, as far as the plain layout tells.</param>
    /// <param name="work">How long the programmes may take together, in their deterministic time.</param>
    /// <param name="cancellation">Ends it; then there is none.</param>
    /// <returns>Plans of the same price and counts of stocks, no two alike, in an order that repeats.</returns>
    public static ImmutableArray<CuttingResult> Find(
        CuttingProblem problem, CuttingResult result, (long Width, long Height) smallest, double work, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(result);
        if (!result.Complete || result.StoppedEarly || result.Patterns.Length is < 2 or > MostPatterns)
        {
            return [];
        }

        var model = new Model(SameStocks(problem, result), cancellation);
        if (ManyOrders.Suits(model) || model.HasOddSizes)
        {
            return [];
        }

        var search = new PlanSearch(model, new WorkMeter(Units, cancellation), progress: null);
        search.Run();
        var known = Columns(model, result);
        List<Column> columns = [.. known.Concat(search.Columns.Take(MostColumns))];
        var choice = new ColumnChoice(model, columns, result.Patterns, smallest);
        var found = ImmutableArray.CreateBuilder<CuttingResult>();
        for (int turn = 0; work > 0 && !cancellation.IsCancellationRequested; turn++)
        {
            var (uses, spent) = choice.Next(Weights[turn % Weights.Length], Math.Min(work, MostTime), cancellation);
            work -= Math.Max(spent, MostTime / 8);
            if (uses is not null && Exactly(model, result, uses) is { } sister && !found.Any(one => one.Patterns.SequenceEqual(sister.Patterns)))
            {
                found.Add(sister);
            }
            else if (uses is null && turn >= Weights.Length)
            {
                break;
            }
        }

        return cancellation.IsCancellationRequested ? [] : found.ToImmutable();
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

    private static CuttingResult? Exactly(Model model, CuttingResult result, List<ColumnUse> uses)
    {
        var (exact, missing) = ExactDemand.Of(uses, model);
        if (missing > 0)
        {
            return null;
        }

        var forLeftover = result.Patterns.Where(use => use.ForLeftover).Select(use => model.ToTypes(use.Block)).ToHashSet();
        var (patterns, _) = model.Translate(exact.Select(use => new PatternUse(use.Column.Stock, use.Column.Block, use.Copies)
        {
            ForLeftover = forLeftover.Contains(use.Column.Block),
        }));
        bool same = patterns.GroupBy(use => use.Stock).All(group =>
            group.Sum(use => use.Copies) == result.Patterns.Where(use => use.Stock == group.Key).Sum(use => use.Copies));
        return same && !patterns.SequenceEqual(result.Patterns) ? result with { Patterns = patterns } : null;
    }
}
