// Problem: just so many of each stock are there, and their area (or what the values at hand make of it) is little more
//          than what is wanted: is there a plan, and which?
// Idea:    if no pattern of stock s is worth more than z(s), a plan within the counts n(s) wastes Σ n(s) z(s) − Σ d p in
//          all, and so no sheet more than that. Patterns that good are few: LabelProgramme lists every one of them. From
//          the list the plan is put together by exact cover, always placing next the piece with the fewest patterns
//          left, never wasting more than there is to waste. The list being complete, finding nothing proves that
//          there is no plan within the counts. Where a stock has too many of them, those that waste a 64th, a 32nd … of what
//          there is to waste are listed: plans are found among them, and nothing is proven. What a stock whose list is
//          complete wastes at the least is no longer there for the others to waste.
// Source:  enumeration of columns by reduced cost: Baldacci, Christofides and Mingozzi, Mathematical Programming 115
//          (2008); exact cover: Knuth, "Dancing links" (2000).
// Cost:    one label programme per stock, then a tree search; both stop at a given amount of work.
// Not:     always: for loose counts or many of each piece patterns that good are too many, and it says that it does not know.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Decides tight counts of stocks.</summary>
internal sealed class TightCover
{
    // Whoever has no more is listed at once, however much may be wasted.
    private const int FewLabels = 20_000;

    // The rest at first with no more waste than this part of it.
    private const int FirstPart = 64;
    private const long CoverWork = 25_000;

    // Of so many patterns an integer programme chooses where the search gives up: with thousands it finds little.
    private const int MostOfProgramme = 3_000;
    private const double ProgrammeTime = 0.1;

    // A pattern of pieces worth nothing would not be listed: no piece is worth less than this part of what its area could be.
    private const double LeastValue = 1e-3;
    private const long MostGridWork = 80_000_000;

    // Many of each piece make too many patterns of nearly the same worth: on 80 studio orders of such kind none was
    // decided, at a third of a second each.
    private const int MostPieces = 30;
    private const int MostOfEach = 2;

    // With more to waste than this part of a sheet there are too many patterns.
    private const double MostWasted = 0.3;

    // About half a second: where the counts are tight, some hundredths suffice.
    private static readonly TightEffort Usual = new(150_000, 500_000);

    private readonly Model _model;
    private readonly int[] _counts;
    private readonly int[] _values;
    private readonly WorkMeter _work;
    private CloseList[] _lists = [];
    private long _spare;

    private TightCover(Model model, int[] counts, int[] values, WorkMeter work) =>
        (_model, _counts, _values, _work) = (model, counts, values, work);

    /// <summary>Looks for a plan.</summary>
    /// <param name="model">The order.</param>
    /// <param name="counts">At most so many of each stock; none unlimited.</param>
    /// <param name="inequalities">Values known: those are taken under which there is least to waste, or the areas.</param>
    /// <param name="work">Where work is counted.</param>
    public static TightAnswer Solve(Model model, int[] counts, IEnumerable<DualVector> inequalities, WorkMeter work)
    {
        if (model.Demand.Sum(d => (long)d) > Math.Max(MostPieces, MostOfEach * model.Demand.Length))
        {
            return TightAnswer.Unknown;
        }

        int[]? values = null;
        double least = MostWasted / counts.Sum();
        if (Areas(model) is { } areas)
        {
            double[] room = [.. counts.Select((_, s) => (double)(model.Stock(s).Width + model.Kerf) * (model.Stock(s).Height + model.Kerf))];
            double unit = areas.Length == 0 ? 1 : (double)(model.Sizes[0].Width + model.Kerf) * (model.Sizes[0].Height + model.Kerf) / areas[0];
            (values, least) = Tighter((values, least), model, counts, areas, s => room[s] / unit);
        }

        foreach (var vector in inequalities)
        {
            (values, least) = Tighter((values, least), model, counts, vector.Values, s => vector.Best[s]);
        }

        return values is null ? TightAnswer.Unknown : Solve(model, counts, values, Usual, work);
    }

    /// <summary>Looks for a plan under given values, however many of each piece there are.</summary>
    /// <param name="model">The order.</param>
    /// <param name="counts">At most so many of each stock; none unlimited.</param>
    /// <param name="values">Value of one of each type; some above 0.</param>
    /// <param name="effort">How far to go.</param>
    /// <param name="work">Where work is counted.</param>
    public static TightAnswer Solve(Model model, int[] counts, int[] values, TightEffort effort, WorkMeter work)
    {
        var part = work.Part(effort.Units);
        var answer = new TightCover(model, counts, AllWorthSomething(model, values), part).Solve(effort.Labels);
        work.Join(part);
        return answer;
    }

    private static int[] AllWorthSomething(Model model, int[] values)
    {
        double density = values.Select((value, t) => value / model.PieceArea(t)).DefaultIfEmpty(0).Max();
        return [.. values.Select((value, t) => Math.Max(value, (int)Math.Ceiling(LeastValue * density * model.PieceArea(t))))];
    }

    /// <summary>The values under which a smaller share of the counts' worth is wasted.</summary>
    private static (int[]? Values, double Share) Tighter(
        (int[]? Values, double Share) known, Model model, int[] counts, int[] values, Func<int, double> best)
    {
        if (values.Any(value => value <= 0))
        {
            // Patterns of pieces worth nothing would not be listed.
            return known;
        }

        double worth = Enumerable.Range(0, counts.Length).Sum(s => counts[s] * best(s));
        double wanted = values.Select((v, t) => (double)v * model.Demand[t]).Sum();
        double share = worth <= 0 ? double.PositiveInfinity : (worth - wanted) / worth;
        return share < known.Share ? (values, share) : known;
    }

    /// <summary>Areas, kerf included, in the sizes' common unit; null where they are too large to count with.</summary>
    private static int[]? Areas(Model model)
    {
        long unit = model.Sizes.Aggregate(0L, (d, s) => Divisor(Divisor(d, s.Width + model.Kerf), s.Height + model.Kerf));
        double most = Enumerable.Range(0, model.Stocks.Length)
            .Max(s => (double)((model.Stock(s).Width + model.Kerf) / unit) * ((model.Stock(s).Height + model.Kerf) / unit));
        return most >= 1 << 30
            ? null
            : [.. model.Sizes.Select(s => (int)((s.Width + model.Kerf) / unit * ((s.Height + model.Kerf) / unit)))];
    }

    private static long Divisor(long a, long b) => (long)System.Numerics.BigInteger.GreatestCommonDivisor(a, b);

    private TightAnswer Solve(int mostLabels)
    {
        var lists = new List<CloseList>();
        foreach (int s in Enumerable.Range(0, _counts.Length).Where(s => _counts[s] > 0))
        {
            if (Prepare(s) is not { } programme)
            {
                return TightAnswer.Unknown;
            }

            lists.Add(new CloseList(s, _counts[s], programme, _values, _model.Demand, _work));
        }

        _lists = [.. lists.OrderBy(list => _model.Stock(list.Stock).Width * (double)_model.Stock(list.Stock).Height)];
        _spare = _lists.Sum(list => list.Most * list.Count) - _values.Select((v, t) => (long)v * _model.Demand[t]).Sum();
        foreach (var list in _lists)
        {
            if (Spare < 0)
            {
                return TightAnswer.None;
            }

            list.Extend(SpareOf(list), Math.Min(FewLabels, mostLabels), all: true);
        }

        return Ladder(mostLabels);
    }

    /// <summary>Longer and longer lists of the stocks that have too many patterns for short ones.</summary>
    private TightAnswer Ladder(int mostLabels)
    {
        for (int part = FirstPart; Spare >= 0 && !_work.Exhausted; part /= 2)
        {
            bool any = _lists.All(list => list.IsComplete);
            foreach (var list in _lists.Where(list => !list.IsDone))
            {
                bool listed = list.Extend(SpareOf(list) / part, mostLabels, all: part == 1);
                any |= listed;
                if (!listed)
                {
                    list.GiveUp();
                }
            }

            if (any && Cover() is { } answer)
            {
                return answer;
            }

            if (_lists.All(list => list.IsDone))
            {
                return TightAnswer.Unknown;
            }
        }

        return Spare < 0 ? TightAnswer.None : TightAnswer.Unknown;
    }

    /// <summary>What a plan may waste beyond what every stock is known to waste.</summary>
    private long Spare => _spare - _lists.Sum(list => list.Least * list.Count);

    /// <summary>What one of a stock may waste: all that the others do not.</summary>
    private long SpareOf(CloseList list) => Spare + list.Least;

    /// <summary>Looks for a cover among the patterns listed; null where there is none and more may be listed, or that stays unknown.</summary>
    private TightAnswer? Cover()
    {
        bool complete = _lists.All(list => list.IsComplete);
        var part = _work.Part(complete ? _work.Left / 2 : CoverWork);
        var cover = new ExactCover(_model.Demand, _counts, _spare, part);
        foreach (var pattern in _lists.SelectMany(list => list.Patterns))
        {
            cover.Add(pattern);
        }

        var found = cover.Solve();
        _work.Join(part);
        var (covered, uses) = found is null
            ? Choose()
            : new CoverAnswer(found.Count > 0, [.. found.Select(f => new ColumnUse(new Column(f.Stock, f.Counts, f.Arrange()), 1))]);
        return covered switch
        {
            true => new TightAnswer(uses, false),
            false when complete => TightAnswer.None,
            _ => complete ? TightAnswer.Unknown : null,
        };
    }

    /// <summary>An integer programme sees all stocks at once, and that fractions of the patterns do not do.</summary>
    private CoverAnswer Choose()
    {
        if (_work.Exhausted || _lists.Sum(list => list.Patterns.Count) > MostOfProgramme)
        {
            return new CoverAnswer(null, null);
        }

        Column[] columns = [.. _lists.SelectMany(list => list.Patterns).Select(pattern => new Column(pattern.Stock, pattern.Counts, pattern.Arrange()))];
        var answer = PoolProgramme.Cover(columns, _model.Demand, _counts, new PoolEffort(ProgrammeTime, AtOnce: true), _work);
        return answer with { Uses = answer.Uses is null ? null : JustWanted(answer.Uses) };
    }

    /// <summary>A cover without what it holds beyond the demand.</summary>
    private List<ColumnUse> JustWanted(List<ColumnUse> uses)
    {
        int[] open = [.. _model.Demand];
        var kept = new List<ColumnUse>();
        foreach (var use in uses.SelectMany(use => Enumerable.Repeat(use.Column, use.Copies)))
        {
            if (BlockMath.Prune(use.Block, open) is { } block)
            {
                kept.Add(new ColumnUse(new Column(use.Stock, BlockMath.Counts(block, open.Length), block), 1));
            }
        }

        return kept;
    }

    /// <summary>The programme over the true points of a stock, filled; null where that is too much work.</summary>
    private ValueProgramme? Prepare(int stock)
    {
        var (width, height, _, _) = _model.Stock(stock);
        var area = new GridArea(_model.Types, [.. _model.Types.Select(t => t.On[_model.Stocks[stock]])], width, height, _model.Kerf) { MostNear = _model.MostNear };
        if (Grid.ExactWithin(area, MostGridWork, _work.Cancellation) is not { } grid || grid.X.Count == 0 || grid.Y.Count == 0 || _work.Exhausted)
        {
            return null;
        }

        var programme = new ValueProgramme(grid);
        _work.Spend(100 + (programme.Fill(_values, long.MaxValue / 2, long.MaxValue / 2, _work.Cancellation) / 1000));
        return programme;
    }
}

/// <summary>How far to go.</summary>
/// <param name="Labels">A list of more labels is too long.</param>
/// <param name="Units">The work allowed.</param>
internal sealed record TightEffort(int Labels, long Units);

/// <summary>What is known of counts of stocks.</summary>
/// <param name="Plan">A plan within them; null where none was found.</param>
/// <param name="Impossible">Whether it is proven that there is none.</param>
internal sealed record TightAnswer(IReadOnlyList<ColumnUse>? Plan, bool Impossible)
{
    /// <summary>Nothing is known.</summary>
    public static readonly TightAnswer Unknown = new(null, false);

    /// <summary>There is no plan.</summary>
    public static readonly TightAnswer None = new(null, true);
}
