// Problem: of all plans of a small order out of the same stocks, the one whose largest kept leftover is worth most, then the next.
// Idea:    the leftover lies on some stock, beside some of the pieces; the others must have room on the other stocks. Which sets
//          have that, a cover over sets tells (SetCover), and how much a set leaves in one piece, LargestRest. Sets of little area
//          come first, and none is looked at whose area alone leaves too little. The stock so found is settled, and the same is
//          asked of what is left.
// Source:  see the parts.
// Cost:    FrontTable, a SetCover for each kind of stock, and LargestRest for the sets that are looked at: some milliseconds.
// Not:     for more sets or parts than below, where the work does not do, or where more stocks leave something than are settled:
//          then what is found may not be the best. Nor other stocks of the same cost together.
using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Leftovers;

/// <summary>Chooses among all plans out of given stocks the one with the largest leftovers.</summary>
internal sealed class LeftoverChoice
{
    private const double MostSets = 1 << 15;
    private const double MostSplits = 500_000;
    private const long MostPriced = 1_000_000;

    // How many stocks are settled for their leftovers.
    private const int MostSettled = 4;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly (long Width, long Height) _smallest;
    private readonly MultisetIndex _sets;
    private readonly FrontTable[] _tables;
    private readonly int[] _left;

    private LeftoverChoice(Model model, (long Width, long Height) smallest, WorkMeter work)
    {
        (_model, _smallest, _work) = (model, smallest, work);
        _sets = new MultisetIndex(model.Demand);
        _left = [.. model.Stocks.Select((_, s) => model.Stock(s).Limit!.Value)];
        _tables = [.. model.Classes.Select((_, c) => TableOf([.. Enumerable.Range(0, _left.Length).Where(s => model.ClassOf[s] == c)]))];
    }

    /// <summary>Looks for the plan.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="result">The plan; every piece in it.</param>
    /// <param name="smallest">What a leftover must hold, either way round.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>A plan out of the same stocks; null: the order is too large, or the work was done before it was found.</returns>
    public static CuttingResult? Of(CuttingProblem problem, CuttingResult result, (long Width, long Height) smallest, WorkMeter work)
    {
        var model = new Model(StocksOf(problem, result), work.Cancellation);
        double sets = MultisetIndex.Number(model.Demand);
        if (sets > MostSets || (sets * result.Patterns.Sum(use => (double)use.Copies)) > MostPriced)
        {
            return null;
        }

        var choice = new LeftoverChoice(model, smallest, work);
        if (choice._tables.Sum(table => table.Splits) > MostSplits || !choice._tables.All(table => table.Fill()) || choice.Uses() is not { } uses)
        {
            return null;
        }

        var (patterns, _) = model.Translate(uses.OrderBy(use => use.Stock));
        return result with { Patterns = patterns, Spent = patterns.Sum(use => use.Copies * problem.Stocks[use.Stock].Price) };
    }

    private static CuttingProblem StocksOf(CuttingProblem problem, CuttingResult result) => problem with
    {
        Stocks = [.. problem.Stocks.Select((stock, s) => stock with { Limit = result.Patterns.Where(use => use.Stock == s).Sum(use => use.Copies) })],
    };

    private FrontTable TableOf(int[] stocks)
    {
        int original = _model.Stocks[stocks[0]];
        var shapes = Patterns.Shape.Of(_model.Types, [.. _model.Types.Select(type => type.On[original])], _model.Kerf);
        return new FrontTable(_sets, shapes, stocks.Select(Grown), _work);
    }

    /// <summary>The plan's patterns, of types; null where the work did not suffice.</summary>
    private List<PatternUse>? Uses()
    {
        var uses = new List<PatternUse>();
        int rest = _sets.Count - 1;
        for (int settled = 0; settled < MostSettled && rest > 0 && Largest(rest) is { } found; settled++)
        {
            uses.Add(new PatternUse(found.Stock, found.Block, 1) { ForLeftover = true });
            rest -= found.Set;
            _left[found.Stock]--;
        }

        var cover = Cover();
        if (cover.PriceOf(rest) == long.MaxValue)
        {
            return null;
        }

        foreach (var (stock, set) in cover.Uses(rest))
        {
            int own = _sets.Common(set, rest);
            if (own > 0)
            {
                var (width, height) = Grown(stock);
                uses.Add(new PatternUse(stock, TableFor(stock).Arrange(own, width, height), 1));
                rest -= own;
            }
        }

        return rest > 0 || _work.Exhausted ? null : uses;
    }

    /// <summary>The leftover that is worth most of any stock left, when these pieces are cut from the stocks left.</summary>
    private Found? Largest(int pieces)
    {
        Found? best = null;
        foreach (int stock in Enumerable.Range(0, _left.Length).Where(s => _left[s] > 0 && _model.Stock(s).Price > 0))
        {
            _left[stock]--;
            best = LargestOf(stock, pieces, best) ?? best;
            _left[stock]++;
        }

        return best;
    }

    private Found? LargestOf(int stock, int pieces, Found? known)
    {
        var (width, height) = Grown(stock);
        double each = KeptPieces.WorthOf(_model.Stock(stock), 1);
        var table = TableFor(stock);
        var others = Cover();
        var rests = new LargestRest(_sets, table, _smallest, _model.Kerf, _work);
        Found? best = null;
        long area = (long)((known?.Worth ?? 0) / each);
        foreach (int set in _sets.Parts(pieces).Where(set => set > 0 && table.Fits(set, width, height)).OrderBy(table.AreaOf))
        {
            if ((width * height) - table.AreaOf(set) <= area || _work.Exhausted)
            {
                break;
            }

            if (others.PriceOf(pieces - set) != long.MaxValue && rests.Above(set, width, height, area) is { } found)
            {
                area = found.Area;
                best = new Found(stock, set, found.Block, area * each);
            }
        }

        return best;
    }

    /// <summary>A cover out of the stocks left, for nothing.</summary>
    private SetCover Cover()
    {
        var cover = new SetCover(_sets, new long[_sets.Types], _work);
        for (int s = 0; s < _left.Length; s++)
        {
            if (_left[s] > 0)
            {
                var (width, height) = Grown(s);
                var table = TableFor(s);
                cover.AddUnits(s, _left[s], price: 0, set => table.Fits(set, width, height));
            }
        }

        return cover;
    }

    private FrontTable TableFor(int stock) => _tables[_model.ClassOf[stock]];

    private (long Width, long Height) Grown(int stock) => (_model.Stock(stock).Width + _model.Kerf, _model.Stock(stock).Height + _model.Kerf);

    private sealed record Found(int Stock, int Set, Block Block, double Worth);
}
