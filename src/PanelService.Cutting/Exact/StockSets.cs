// Problem: which sets of a small order's pieces have room on the stocks of a plan, and how do they lie there?
// Idea:    the staircases of all sets (FrontTable), one table for stocks on which the pieces may lie alike; which sets several
//          stocks hold together, a cover for nothing tells (SetCover).
// Source:  see the parts.
// Cost:    see the parts: some milliseconds within the limits below.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>The sets of a small order on the stocks of a plan.</summary>
internal sealed class StockSets
{
    private const double MostSets = 1 << 15;
    private const double MostSplits = 500_000;
    private const long MostPriced = 1_000_000;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly FrontTable[] _tables;

    private StockSets(Model model, WorkMeter work)
    {
        (_model, _work) = (model, work);
        Sets = new MultisetIndex(model.Demand);
        Left = [.. model.Stocks.Select((_, s) => model.Stock(s).Limit!.Value)];
        _tables = [.. model.Classes.Select((_, c) => TableOf([.. Enumerable.Range(0, Left.Length).Where(s => model.ClassOf[s] == c)]))];
    }

    /// <summary>The numbering of the sets.</summary>
    public MultisetIndex Sets { get; }

    /// <summary>How many there are of each stock: what is taken off is not covered with.</summary>
    public int[] Left { get; }

    /// <summary>Computes the staircases.</summary>
    /// <param name="model">The order, its stocks limited to those of a plan.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>The sets; null: the order is too large, or the work was done.</returns>
    public static StockSets? Of(Model model, WorkMeter work)
    {
        double number = MultisetIndex.Number(model.Demand);
        if (number > MostSets || number * Enumerable.Range(0, model.Stocks.Length).Sum(s => (double)model.Stock(s).Limit!.Value) > MostPriced)
        {
            return null;
        }

        var sets = new StockSets(model, work);
        return sets._tables.Sum(table => table.Splits) <= MostSplits && sets._tables.All(table => table.Fill()) ? sets : null;
    }

    /// <summary>A problem with no more of its stocks than a plan uses.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="result">The plan.</param>
    public static CuttingProblem Used(CuttingProblem problem, CuttingResult result) => problem with
    {
        Stocks = [.. problem.Stocks.Select((stock, s) => stock with { Limit = result.Patterns.Where(use => use.Stock == s).Sum(use => use.Copies) })],
    };

    /// <summary>The staircases for a stock.</summary>
    /// <param name="stock">The stock.</param>
    public FrontTable TableFor(int stock) => _tables[_model.ClassOf[stock]];

    /// <summary>A stock's size, grown by the kerf.</summary>
    /// <param name="stock">The stock.</param>
    public (long Width, long Height) Grown(int stock) => (_model.Stock(stock).Width + _model.Kerf, _model.Stock(stock).Height + _model.Kerf);

    /// <summary>A cover out of the stocks left, for nothing.</summary>
    public SetCover Cover()
    {
        var cover = new SetCover(Sets, new long[Sets.Types], _work);
        for (int s = 0; s < Left.Length; s++)
        {
            if (Left[s] > 0)
            {
                var (width, height) = Grown(s);
                var table = TableFor(s);
                cover.AddUnits(s, Left[s], price: 0, set => table.Fits(set, width, height));
            }
        }

        return cover;
    }

    /// <summary>How a set lies on the stocks left.</summary>
    /// <param name="cover">Their cover.</param>
    /// <param name="set">The set's number.</param>
    /// <returns>A pattern, of types, for each stock that holds some of it; null: they do not hold it, as far as the work sufficed.</returns>
    public List<PatternUse>? Arrange(SetCover cover, int set)
    {
        if (cover.PriceOf(set) == long.MaxValue)
        {
            return null;
        }

        var uses = new List<PatternUse>();
        foreach (var (stock, most) in cover.Uses(set))
        {
            int own = Sets.Common(most, set);
            if (own > 0)
            {
                var (width, height) = Grown(stock);
                uses.Add(new PatternUse(stock, TableFor(stock).Arrange(own, width, height), 1));
                set -= own;
            }
        }

        return uses;
    }

    private FrontTable TableOf(int[] stocks)
    {
        int original = _model.Stocks[stocks[0]];
        var shapes = Shape.Of(_model.Types, [.. _model.Types.Select(type => type.On[original])], _model.Kerf);
        return new FrontTable(Sets, shapes, stocks.Select(Grown), _work);
    }
}
