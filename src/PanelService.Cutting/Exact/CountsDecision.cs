// Problem: is there a whole plan within given counts of stocks, and which?
// Idea:    1. take the values under which the counts are tightest: those the whole relaxation came by, or the counts' own
//             (CountsRelaxation). If even all stocks at their best hold less than the demand's worth, there is none.
//          2. Otherwise a plan may waste no more than the difference, so that every pattern of it is close to the best
//             of its stock. Draw many such patterns (PatternDraw) and look for a cover (CoverChoice): of a few stocks at once,
//             of many among the patterns known, or of what whole uses of the relaxation leave.
//          3. To decide for good, bound what each stock can be worth within the demand (BoundedPattern), list every pattern that
//             wastes no more than there is to waste (LabelProgramme), and search the covers of the list to the end.
//             Types without value are left out there: where the others alone have no plan, all have none. Where that is
//             too long, lists of the patterns that waste less (TightCover) still find plans.
// Source:  enumeration of columns by reduced cost: Baldacci, Christofides and Mingozzi, Mathematical Programming 115
//          (2008). The rest: see the parts.
// Cost:    some ten milliseconds to look, some hundred to decide.
// Not:     always decided: lists may grow too long, searches may be cut short. Then it says that it does not know.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Looks for plans within counts of stocks, and decides whether there are any.</summary>
internal sealed class CountsDecision
{
    private const int MostRounds = 100;
    private const int BoundedRounds = 8;
    private const int DrawsForRelaxation = 30;

    // A decision goes so many times as far as a look.
    private const int Deep = 6;

    // Where the counts can waste more than a hundredth a list ends soon or not at all: of six that went deep, of 750 orders,
    // not one came to its end, and each took a third of a search's work.
    private const double Close = 0.01;
    private const long CoverOfDepth = 75_000;

    // Lists of the patterns that waste a part of what there is to waste, where those of all are too long: by work of their own, a
    // part of what there is at the start. Taken from the rest they cost as many plans as they find.
    private const int LabelsOfParts = 150_000;
    private const int PartOfWork = 5;

    // A look, before anything is decided.
    private const int Shallow = 1;

    // What whole uses leave: of the last few stocks first, of more of them where there is no cover.
    private static readonly int[] Rests = [10, 20];
    private const int MostStocks = 40;

    // Patterns drawn of each stock, and the work of choosing among them. Often the patterns known do.
    private static readonly (int Draws, long Units) KnownOnly = (0, 20_000);
    private static readonly (int Draws, long Units) Some = (200, 50_000);
    private static readonly (int Draws, long Units) Many = (1_500, 75_000);

    private readonly Model _model;
    private readonly ColumnPool _pool;
    private readonly IReadOnlyList<DualVector> _known;
    private readonly WorkMeter _work;
    private readonly Pricing _pricing;
    private readonly PatternDraw _draw;
    private readonly CompletePatterns _complete;
    private readonly WorkMeter _aside;

    /// <summary>Makes it.</summary>
    /// <param name="model">The order.</param>
    /// <param name="pool">Columns known; new ones are added.</param>
    /// <param name="known">Values come by elsewhere; there may be more of them at every call.</param>
    /// <param name="work">Where work is counted.</param>
    public CountsDecision(Model model, ColumnPool pool, IReadOnlyList<DualVector> known, WorkMeter work)
    {
        (_model, _pool, _known, _work) = (model, pool, known, work);
        _pricing = new Pricing(model, work);
        _draw = new PatternDraw(model, pool, _pricing, work);
        _complete = new CompletePatterns(model, work);
        _aside = new WorkMeter(work.Left / PartOfWork, work.Cancellation);
    }

    /// <summary>Whether it can be used for an order: exact grids, and counts that a byte holds.</summary>
    /// <param name="model">The order.</param>
    public static bool Suits(Model model) => !model.HasOddSizes && model.Demand.Length <= CoverSearch.MostTypes;

    /// <summary>Looks for a plan.</summary>
    /// <param name="counts">At most so many of each stock; none unlimited.</param>
    /// <param name="briefly">Without patterns bounded by the demand and lists of them, which take most of a look: another one comes after it.</param>
    /// <returns>A plan, or that there is none, or what is known to go on with.</returns>
    public CountsAnswer Look(int[] counts, bool briefly = false)
    {
        using var relaxation = new CountsRelaxation(_model.Demand, counts, _work.Cancellation);
        foreach (var column in _pool.Columns.Where(c => counts[c.Stock] > 0))
        {
            relaxation.Add(column);
        }

        if (Tighten(relaxation, counts, briefly ? 0 : BoundedRounds) is not { } tight)
        {
            return CountsAnswer.Unknown;
        }

        tight = tight with { Bound = Tighter(tight.Bound, counts) };
        var bound = tight.Bound;
        int[] light = [.. Enumerable.Range(0, bound.Values.Length).Where(t => bound.Values[t] == 0)];
        if (Spare(bound, counts) < 0 || (light.Length > 0 && !briefly && Impossible(counts, bound)))
        {
            return new CountsAnswer(null, bound, true);
        }

        if (light.Length > 0)
        {
            relaxation.MakeLight(light);
            tight = Tighten(relaxation, counts, 0) ?? tight;
        }

        return new CountsAnswer(Draw(counts, tight, light), bound, false);
    }

    /// <summary>Decides for good, if that can be done.</summary>
    /// <param name="counts">At most so many of each stock; none unlimited.</param>
    /// <param name="tight">The values that a look has come to.</param>
    public CountsAnswer Decide(int[] counts, DualVector tight)
    {
        var capped = _complete.Cap(tight, counts, Deep);
        if (Spare(capped, counts) < 0)
        {
            return new CountsAnswer(null, capped, true);
        }

        var (covered, plan) = Cover(counts, capped, Share(capped, counts) <= Close ? Deep : Shallow);
        if (plan is not null || covered == false || _work.Exhausted || _aside.Exhausted || counts.Sum() > MostStocks)
        {
            return new CountsAnswer(plan, capped, covered == false);
        }

        var tightly = TightCover.Solve(_model, counts, capped.Values, new TightEffort(LabelsOfParts, _aside.Left), _aside);
        return new CountsAnswer(tightly.Plan, capped, tightly.Impossible);
    }

    private bool Impossible(int[] counts, DualVector vector) => Cover(counts, vector, Shallow).Covered == false;

    /// <summary>Whether all patterns of the types with a value cover these types, and a plan where that is all types.</summary>
    private (bool? Covered, IReadOnlyList<ColumnUse>? Plan) Cover(int[] counts, DualVector vector, int depth)
    {
        if (_complete.List(vector, counts, Spare(vector, counts), depth) is not { } patterns)
        {
            return (null, null);
        }

        int[] demand = [.. _model.Demand.Select((d, t) => vector.Values[t] > 0 ? d : 0)];
        var answer = new CoverChoice(counts, _work).Choose(patterns, vector, demand, CoverOfDepth * depth);
        return (answer.Covered, vector.Values.All(v => v > 0) ? answer.Uses : null);
    }

    /// <summary>Column generation for the greatest multiple of the demand; ends early where the counts are forbidden.</summary>
    private Tightest? Tighten(CountsRelaxation relaxation, int[] counts, int boundedRounds)
    {
        Tightest? tightest = null;
        for (int round = 0; round < MostRounds && !_work.Exhausted && relaxation.Solve() is { } values; round++)
        {
            var vector = _pricing.Evaluate(values.Types);
            long[] known = [.. values.Stocks.Select((z, s) => Math.Min(vector.Best[s], (long)Math.Ceiling(Math.ScaleB(z, vector.Shift) * (1 + 1e-9)) + 1))];
            bool added = Spare(vector, counts) >= 0 && (AddImproving(relaxation, counts, values, vector)
                || (boundedRounds-- > 0 && AddBounded(relaxation, counts, values, vector)));
            var bound = tightest is null || Share(vector, counts) < Share(tightest.Bound, counts) ? vector : tightest.Bound;
            tightest = new Tightest(bound, vector with { Best = known }, values.Uses);
            if (!added)
            {
                break;
            }
        }

        return tightest;
    }

    /// <summary>
    /// Values known from elsewhere if these are tighter. The counts' own say little where pieces that are few would be
    /// worth most: sheets full of them are beyond the demand, and to bound what is within it is dear.
    /// </summary>
    private DualVector Tighter(DualVector own, int[] counts)
    {
        double share = Share(own, counts);
        return _known.Where(vector => Share(vector, counts) < share).MinBy(vector => Share(vector, counts)) ?? own;
    }

    /// <summary>Whether a stock could be worth more than the best column known says.</summary>
    private static bool IsOpen(int stock, CountsValues values, DualVector vector) =>
        Math.ScaleB(vector.Best[stock], -vector.Shift) > values.Stocks[stock] + 1e-9;

    private bool AddImproving(CountsRelaxation relaxation, int[] counts, CountsValues values, DualVector vector)
    {
        bool added = false;
        for (int s = 0; s < counts.Length; s++)
        {
            if (counts[s] > 0 && IsOpen(s, values, vector)
                && (Improving(_pricing.Best(s), values) ?? DrawImproving(s, values, vector)) is { } column)
            {
                relaxation.Add(column);
                added = true;
            }
        }

        return added;
    }

    /// <summary>The same with regard to the demand, exactly; what a stock can be worth at most then is lowered in the vector.</summary>
    private bool AddBounded(CountsRelaxation relaxation, int[] counts, CountsValues values, DualVector vector)
    {
        bool added = false;
        for (int s = 0; s < counts.Length; s++)
        {
            if (counts[s] == 0 || !IsOpen(s, values, vector) || _complete.Best(s, vector.Values, Shallow) is not { } answer)
            {
                continue;
            }

            vector.Best[s] = Math.Min(vector.Best[s], answer.UpperBound);
            var column = answer.Block is { } block ? new Column(s, BlockMath.Counts(block, values.Types.Length), block) : null;
            if (Improving(column, values) is { } improving)
            {
                relaxation.Add(improving);
                added = true;
            }
        }

        return added;
    }

    private Column? Improving(Column? column, CountsValues values)
    {
        double worth = 0;
        for (int t = 0; t < values.Types.Length; t++)
        {
            worth += Math.Min(column?.Counts[t] ?? 0, _model.Demand[t]) * values.Types[t];
        }

        return column is not null && worth > values.Stocks[column.Stock] + 1e-9 && _pool.Add(column) ? column : null;
    }

    private Column? DrawImproving(int stock, CountsValues values, DualVector vector)
    {
        for (int draw = 0; draw < DrawsForRelaxation; draw++)
        {
            long loss = vector.Best[stock] / 20 * draw / DrawsForRelaxation;
            if (Improving(_draw.One(stock, vector.Values, loss), values) is { } column)
            {
                return column;
            }
        }

        return null;
    }

    /// <summary>Looks for a cover among patterns that waste little.</summary>
    private List<ColumnUse>? Draw(int[] counts, Tightest tight, int[] light)
    {
        var whole = new WholePart([], _model.Demand, counts);
        if (Spare(tight.Known, counts) < 0)
        {
            return null;
        }

        return counts.Sum() <= CoverChoice.FewStocks
            ? Choose(tight.Known, whole, KnownOnly) ?? Choose(tight.Known, whole, Some) ?? Choose(tight.Known, whole, Many)
            : Choose(tight.Known, whole, KnownOnly) ?? DrawForRests(counts, tight, light) ?? Choose(tight.Known, whole, Some);
    }

    /// <summary>Looks for a cover of what whole uses of the relaxation leave.</summary>
    private List<ColumnUse>? DrawForRests(int[] counts, Tightest tight, int[] light)
    {
        int before = 0;
        foreach (int rest in Rests)
        {
            var part = WholePart.Of(tight.Uses, _model.Demand, counts, (rest, light));
            int left = part.Left.Sum();
            if (left == before || left > MostStocks)
            {
                return null;
            }

            before = left;
            if (ChooseForRest(tight, part) is { } covered)
            {
                return [.. part.Uses, .. covered];
            }
        }

        return null;
    }

    private List<ColumnUse>? ChooseForRest(Tightest tight, WholePart rest)
    {
        if (_work.Exhausted)
        {
            return null;
        }

        var patterns = Drawn(tight.Known, rest, Many.Draws);
        return new RandomRounding(patterns, tight.Known, _work).Cover(rest, tight.Uses)
            ?? new CoverChoice(rest.Left, _work) { OfRest = true }.Choose(patterns, tight.Known, rest.Open, Many.Units).Uses;
    }

    /// <summary>Chooses among patterns known and drawn for all that is wanted.</summary>
    private List<ColumnUse>? Choose(DualVector known, WholePart whole, (int Draws, long Units) look) => _work.Exhausted
        ? null
        : new CoverChoice(whole.Left, _work).Choose(Drawn(known, whole, look.Draws), known, whole.Open, look.Units).Uses;

    /// <summary>Patterns known and drawn that waste no more than there is to waste.</summary>
    private IReadOnlyList<Column> Drawn(DualVector known, WholePart part, int draws) =>
        _draw.Many(known, part.Open, part.Left, (long)known.Spare(part.Open, part.Left), draws).Columns;

    private long Spare(DualVector vector, int[] counts) => (long)vector.Spare(_model.Demand, counts);

    private double Share(DualVector vector, int[] counts) => vector.Share(_model.Demand, counts);

    /// <summary>What a relaxation of counts came to.</summary>
    /// <param name="Bound">The tightest values, with what no pattern exceeds.</param>
    /// <param name="Known">The last values, with the best of the patterns known.</param>
    /// <param name="Uses">The last solution.</param>
    private sealed record Tightest(DualVector Bound, DualVector Known, (Column Column, double Copies)[] Uses);
}

/// <summary>What is known of counts of stocks.</summary>
/// <param name="Plan">A plan within them; null where none was found.</param>
/// <param name="Tight">Values under which they are tight: an inequality that holds for every plan; null where none was found.</param>
/// <param name="Impossible">Whether it is proven that there is no plan.</param>
internal sealed record CountsAnswer(IReadOnlyList<ColumnUse>? Plan, DualVector? Tight, bool Impossible)
{
    /// <summary>Nothing is known.</summary>
    public static readonly CountsAnswer Unknown = new(null, null, false);

    /// <summary>Whether there is a plan, or is none, for certain.</summary>
    public bool IsDecided => Plan is not null || Impossible;
}
