// Problem: the least price of a whole order of a few pieces, with proof.
// Idea:    FrontTable tells for every set of pieces which stocks it fits. The price of a set is then that of the
//          cheapest cover: one stock more, filled with one of its greatest sets, and the price of what that leaves. Stocks that cost as much as a plan
//          already known do not matter, which leaves the small ones to look at.
// Source:  Held and Karp's programme over subsets, J. SIAM 10 (1962), applied to set covering.
// Cost:    FrontTable, then SetCover.
// Not:     for more than a few million parts of sets that have room on a stock: it answers null at once.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Plans small orders exactly.</summary>
internal sealed class SmallOrder
{
    // SetCover goes as deep as there are stocks in a plan.
    private const int MostPieces = 400;
    private const double MostSets = 1 << 18;

    // Half a million parts take about a tenth of a second.
    private const double MostSplits = 3_000_000;
    private const long MostPriced = 4_000_000;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly MultisetIndex _sets;
    private readonly int[] _stocks;
    private readonly FrontTable?[] _tables;

    private SmallOrder(Model model, long below, WorkMeter work)
    {
        (_model, _work) = (model, work);
        _sets = new MultisetIndex(model.Demand);
        _stocks = [.. Enumerable.Range(0, model.Stocks.Length).Where(s => model.Stock(s).Price < below)];
        _tables = [.. model.Classes.Select((_, c) => TableOf([.. _stocks.Where(s => model.ClassOf[s] == c)]))];
    }

    /// <summary>Looks for the cheapest of all plans below a price.</summary>
    /// <param name="model">The order.</param>
    /// <param name="below">Only cheaper plans are of interest.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>The cheapest plan's columns; empty where no plan is cheaper, which is proof; null where the order is
    /// too large or the work was done before the end.</returns>
    public static IReadOnlyList<ColumnUse>? Solve(Model model, long below, WorkMeter work)
    {
        if (model.Demand.Sum(d => (long)d) > MostPieces || MultisetIndex.Number(model.Demand) > MostSets || work.Exhausted)
        {
            return null;
        }

        var order = new SmallOrder(model, below, work);
        return order.IsSmall && order._tables.All(table => table is null || table.Fill()) ? order.Cover(below) : null;
    }

    private bool IsSmall => _tables.Sum(table => table?.Splits ?? 0) <= MostSplits
        && _stocks.Sum(s => (long)(Units(s) ?? 0)) * _sets.Count <= MostPriced;

    /// <summary>The staircases for stocks of one class; null where none of them is of interest.</summary>
    private FrontTable? TableOf(int[] stocks)
    {
        if (stocks.Length == 0)
        {
            return null;
        }

        int original = _model.Stocks[stocks[0]];
        var shapes = Shape.Of(_model.Types, [.. _model.Types.Select(type => type.On[original])], _model.Kerf);
        return new FrontTable(_sets, shapes, stocks.Select(s => (Width(s), Height(s))), _work);
    }

    private IReadOnlyList<ColumnUse>? Cover(long below)
    {
        var cover = new SetCover(_sets, LeastOfOne(), _work);
        foreach (int s in _stocks.OrderBy(s => _model.Stock(s).Price))
        {
            if (Units(s) is { } units)
            {
                cover.AddUnits(s, units, _model.Stock(s).Price, set => Fits(set, s));
            }
            else
            {
                cover.AddUnlimited(s, _model.Stock(s).Price, set => Fits(set, s));
            }
        }

        return cover.Solve() is not { } price ? null
            : price < below ? [.. cover.Uses().Select(use => new ColumnUse(ColumnOf(use.Stock, use.Set), 1))]
            : [];
    }

    /// <summary>Per type: what its area costs at least from stocks of which there are enough.</summary>
    private long[] LeastOfOne()
    {
        double perArea = _stocks.Where(s => Units(s) is null)
            .Select(s => _model.Stock(s).Price / ((double)Width(s) * Height(s)))
            .DefaultIfEmpty(0)
            .Min();
        return [.. _model.Sizes.Select(s => (long)Math.Floor(perArea * (s.Width + _model.Kerf) * (s.Height + _model.Kerf) * (1 - 1e-9)))];
    }

    /// <summary>How many of a stock there are; null where there are as many as pieces.</summary>
    private int? Units(int stock) => _model.Stock(stock).Limit is { } limit && limit < _model.Demand.Sum() ? limit : null;

    private bool Fits(int set, int stock) => _tables[_model.ClassOf[stock]]!.Fits(set, Width(stock), Height(stock));

    private Column ColumnOf(int stock, int set) => new(
        stock, _sets.Digits(set), _tables[_model.ClassOf[stock]]!.Arrange(set, Width(stock), Height(stock)));

    private long Width(int stock) => _model.Stock(stock).Width + _model.Kerf;

    private long Height(int stock) => _model.Stock(stock).Height + _model.Kerf;
}
