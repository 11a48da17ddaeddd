// Problem: every pattern of given counts of stocks that wastes no more than there is to waste, and how much each stock can
//          be worth at most within the demand.
// Idea:    BoundedPattern for the one, LabelProgramme for the other; over the true points of the types that have a value
//          alone, which are fewer. A pattern that another one holds all of is left out: a cover may hold too much.
// Source:  see the parts.
// Cost:    some ten to some hundred milliseconds a stock.
// Not:     always: null where labels or patterns are too many.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Every pattern that is close enough to its stock's best, and how good the best is within the demand.</summary>
internal sealed class CompletePatterns
{
    private const int LabelsOfDepth = 60_000;
    private const long CapWorkOfDepth = 60_000;

    // A look asks a dozen times. With 60,000 it took twice as long, and no more of 500 mixed orders were proven.
    private const long CapWorkOfLook = 25_000;
    private const int MostPatterns = 5_000;
    private const long MostGridWork = 80_000_000;

    private readonly Model _model;
    private readonly WorkMeter _work;

    /// <summary>Makes it.</summary>
    /// <param name="model">The order.</param>
    /// <param name="work">Where work is counted.</param>
    public CompletePatterns(Model model, WorkMeter work) => (_model, _work) = (model, work);

    /// <summary>The same values with what a stock can be worth within the demand.</summary>
    /// <param name="vector">Values and what each stock can be worth at most.</param>
    /// <param name="counts">Stocks not used keep what they have.</param>
    /// <param name="depth">How far to go, 1 for a look.</param>
    public DualVector Cap(DualVector vector, int[] counts, int depth)
    {
        long[] best = [.. vector.Best];
        foreach (int s in Enumerable.Range(0, best.Length).Where(s => counts[s] > 0 && !_work.Exhausted))
        {
            best[s] = Math.Min(best[s], Best(s, vector.Values, depth)?.UpperBound ?? best[s]);
        }

        return vector with { Best = best };
    }

    /// <summary>The best pattern of a stock within the demand.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="values">Value of one of each type.</param>
    /// <param name="depth">How far to go, 1 for a look.</param>
    /// <returns>The answer; null where the true points are too many.</returns>
    public BoundedAnswer? Best(int stock, int[] values, int depth)
    {
        if (GridOf(stock, values) is not { } grid)
        {
            return null;
        }

        var own = new WorkMeter(Math.Min(depth == 1 ? CapWorkOfLook : depth * CapWorkOfDepth, _work.Left), _work.Cancellation);
        long before = own.Left;
        var answer = BoundedPattern.Solve(grid, values, _model.Demand, own);
        _work.Spend(before - own.Left);
        return answer;
    }

    /// <summary>Lists, of the patterns of types with a value, all that are worth enough, without those that others hold all of.</summary>
    /// <param name="vector">Values and what each stock can be worth at most.</param>
    /// <param name="counts">Only the stocks used are listed.</param>
    /// <param name="spare">How much less than its stock's best a pattern may be worth.</param>
    /// <param name="depth">How far to go, 1 for a look.</param>
    /// <returns>The patterns; null where they are too many.</returns>
    public List<Column>? List(DualVector vector, int[] counts, long spare, int depth)
    {
        var all = new List<Column>();
        foreach (int s in Enumerable.Range(0, counts.Length).Where(s => counts[s] > 0))
        {
            if (_work.Exhausted || Of(s, vector, spare, depth) is not { } some || all.Count + some.Count > MostPatterns)
            {
                return null;
            }

            all.AddRange(some);
        }

        return all;
    }

    private List<Column>? Of(int stock, DualVector vector, long spare, int depth)
    {
        int[] limits = [.. _model.Demand.Select((d, t) => vector.Values[t] > 0 ? d : 0)];
        var key = new CountKey(limits);
        if (!key.Complete || GridOf(stock, vector.Values) is not { } grid)
        {
            return null;
        }

        if (grid.X.Count == 0 || grid.Y.Count == 0)
        {
            return [];
        }

        var programme = new ValueProgramme(grid);
        _work.Spend(100 + (programme.Fill(vector.Values, long.MaxValue / 2, long.MaxValue / 2, _work.Cancellation) / 1000));
        var labels = new LabelProgramme(programme, vector.Values, key, Math.Max(1, vector.Best[stock] - spare), _work);
        return labels.Run(depth * LabelsOfDepth) ? Maximal(labels, key, stock) : null;
    }

    private List<Column>? Maximal(LabelProgramme labels, CountKey key, int stock)
    {
        var all = labels.Whole()
            .Select(label => (label.Index, Counts: Enumerable.Range(0, _model.Demand.Length).Select(t => key.Counts(t) ? key.Count(label.Key, t) : 0).ToArray()))
            .OrderByDescending(label => label.Counts.Sum())
            .ToList();
        if (all.Count > MostPatterns)
        {
            return null;
        }

        var kept = new List<Column>();
        foreach (var (index, counts) in all)
        {
            if (!kept.Exists(other => Holds(other.Counts, counts)))
            {
                kept.Add(new Column(stock, counts, labels.Trace(index)));
            }
        }

        return kept;
    }

    private static bool Holds(int[] more, int[] less)
    {
        for (int t = 0; t < more.Length; t++)
        {
            if (less[t] > more[t])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The true points of a stock for the types with a value; null where they are too many.</summary>
    private Grid? GridOf(int stock, int[] values)
    {
        var (width, height, _, _) = _model.Stock(stock);
        var turning = _model.Types.Select((type, t) => values[t] > 0 ? type.On[_model.Stocks[stock]] : Turning.None);
        var area = new GridArea(_model.Types, [.. turning], width, height, _model.Kerf) { MostNear = _model.MostNear };
        return Grid.ExactWithin(area, MostGridWork, _work.Cancellation);
    }
}
