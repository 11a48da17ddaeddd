// Problem: just so many of each good are taken: is there a plan, and which?
// Idea:    the rectangles that they make are stocks of their own number, and the pieces an order for these. Ruin and recreate
//          looks for a plan (GoalSearch), what was cut up without waste is put together again (StripJigsaw), and sections drawn
//          and put together do (SectionMix); where there is little to waste under the tightest values (TightValues) all patterns
//          that waste no more are listed, or those that waste a part of it, which finds a plan or proves that there is none (TightCover).
// Source:  see there.
// Cost:    the work given.
using PanelService.Cutting.Exact;
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Counts of goods as an order of their own.</summary>
internal sealed class FixedGoods
{
    private readonly GoodsModel _goods;
    private readonly int[] _used;
    private readonly int[] _rectangles;
    private readonly Model _model;
    private DualVector? _tight;

    /// <summary>Fixes the counts.</summary>
    /// <param name="goods">The goods.</param>
    /// <param name="counts">Per good.</param>
    public FixedGoods(GoodsModel goods, int[] counts)
    {
        _goods = goods;
        _used = [.. Enumerable.Range(0, counts.Length).Where(g => counts[g] > 0)];
        _rectangles = [.. _used.Select(g => goods.Goods[g].Rectangles(counts[g]))];
        var stocks = _used.Select((g, i) => new Stock(goods.Goods[g].Width, goods.Goods[g].LengthOf(counts[g]), 1, _rectangles[i]));
        var pieces = goods.Model.Types.Select(type => type with { On = [.. _used.Select(g => type.On[goods.Model.Stocks[g]])] });
        _model = new Model(new CuttingProblem([.. stocks], [.. pieces], Kerf: 0));
    }

    /// <summary>Looks for a plan by ruin and recreate.</summary>
    /// <param name="units">The work allowed.</param>
    /// <param name="seed">Decides all chance.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>What is cut from what; null where no plan was found.</returns>
    public List<FilledGood>? Look(long units, ulong seed, WorkMeter work)
    {
        if (!Whole || !ManyOrders.CanHold(_model))
        {
            return null;
        }

        List<ColumnUse>? found = null;
        ManyOrders.Improve(_model, new ManyRequest(long.MaxValue, long.MaxValue, units, seed), work, uses => found = uses);
        return found is null ? null : Filled(found);
    }

    /// <summary>Looks for a plan section by section.</summary>
    /// <param name="reaches">Sections are no longer than so many of the longest piece: one search for each.</param>
    /// <param name="effort">How much each search does.</param>
    /// <param name="seed">Decides all chance.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>What is cut from what; null where no plan was found.</returns>
    public List<FilledGood>? Mix(IEnumerable<double> reaches, MixEffort effort, ulong seed, WorkMeter work)
    {
        if (!IsAsGiven || _model.HasOddSizes)
        {
            return null;
        }

        var mix = new SectionMix(_model, _rectangles, seed, work);
        return reaches.Select(reach => work.Exhausted ? null : mix.Find(reach, effort))
            .FirstOrDefault(found => found is not null) is { } uses ? Filled(uses) : null;
    }

    /// <summary>Whether this is one rectangle with little to waste, and pieces that are mostly different.</summary>
    public bool IsJigsaw => IsAsGiven && _rectangles is [1] && StripJigsaw.Suits(_model);

    /// <summary>Looks for a plan without waste where one rectangle is all there is.</summary>
    /// <param name="effort">How many blocks are kept.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>What is cut from what; null where no plan was found.</returns>
    public List<FilledGood>? PutTogether(JigsawEffort effort, WorkMeter work) =>
        IsAsGiven && _rectangles is [1] ? Filled(StripJigsaw.Find(_model, [.. _goods.Given], effort, work)) : null;

    /// <summary>Looks for a plan that wastes a little, by sections, where one rectangle is all there is.</summary>
    /// <param name="units">The work allowed for drawing sections.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>What is cut from what; null where no plan was found.</returns>
    public List<FilledGood>? PutSections(long units, WorkMeter work) =>
        IsJigsaw ? Filled(StripJigsaw.FindSections(_model, [.. _goods.Given], units, work)) : null;

    /// <summary>Decides by listing every pattern that is good enough, where these are few; by a part of them finds some plans where they are not.</summary>
    /// <param name="values">Value of one of each type, under which the goods hold little more than all pieces are worth.</param>
    /// <param name="effort">How far to go.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>A plan, or that there is none, or neither.</returns>
    public (List<FilledGood>? Plan, bool Impossible) Decide(double[] values, TightEffort effort, WorkMeter work)
    {
        if (!IsAsGiven)
        {
            return (null, false);
        }

        _tight ??= TightValues.Find(_model, _rectangles, values, work);
        if (_tight.Spare(_model.Demand, _rectangles) < 0)
        {
            return (null, true);
        }

        var answer = TightCover.Solve(_model, _rectangles, _tight.Values, effort, work);
        return (answer.Plan is null ? null : Filled(answer.Plan), answer.Impossible);
    }

    /// <summary>Whether every piece has some place at all.</summary>
    private bool Whole => _model.Demand.Sum(d => (long)d) == _goods.Pieces;

    /// <summary>Whether types and rectangles are those that were given: none left out, none joined.</summary>
    private bool IsAsGiven => Whole && _model.Types.Length == _goods.Model.Types.Length && _model.Stocks.Length == _used.Length;

    private List<FilledGood>? Filled(Block? block) => block is null
        ? null
        : Filled([new ColumnUse(new Column(0, BlockMath.Counts(block, _model.Types.Length), block), 1)]);

    private List<FilledGood> Filled(IEnumerable<ColumnUse> uses)
    {
        var (patterns, _) = _model.Translate(uses.Select(use => new PatternUse(use.Column.Stock, use.Column.Block, use.Copies)));
        return [.. patterns.SelectMany(use => Enumerable.Repeat(new FilledGood(_used[use.Stock], use.Block), use.Copies))];
    }
}
