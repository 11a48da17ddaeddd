// Problem: of all plans of a small order out of the same stocks, the one whose largest kept leftover is worth most, then the next.
// Idea:    the leftover lies on some stock, beside some of the pieces; the others must have room on the other stocks. Which sets
//          have that, a cover over sets tells (StockSets), and how much a set leaves in one piece, LargestRest. Sets of little area
//          come first, and none is looked at whose area alone leaves too little. The stock so found is settled, and the same is
//          asked of what is left.
// Source:  see the parts.
// Cost:    StockSets, and LargestRest for the sets that are looked at: some milliseconds.
// Not:     for more sets than StockSets takes, where the work does not do, or where more stocks leave something than are settled:
//          then what is found may not be the best. Nor other stocks of the same cost together, but for those that cost nothing.
using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Leftovers;

/// <summary>Chooses among all plans out of given stocks the one with the largest leftovers.</summary>
internal sealed class LeftoverChoice
{
    // How many stocks are settled for their leftovers.
    private const int MostSettled = 4;

    private readonly Model _model;
    private readonly WorkMeter _work;
    private readonly (long Width, long Height) _smallest;
    private readonly StockSets _sets;

    private LeftoverChoice(Model model, StockSets sets, (long Width, long Height) smallest, WorkMeter work) =>
        (_model, _sets, _smallest, _work) = (model, sets, smallest, work);

    /// <summary>Looks for the plan.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="result">The plan; every piece in it.</param>
    /// <param name="smallest">What a leftover must hold, either way round.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>A plan out of the same stocks; null: the order is too large, or the work was done before it was found.</returns>
    public static CuttingResult? Of(CuttingProblem problem, CuttingResult result, (long Width, long Height) smallest, WorkMeter work)
    {
        var used = StockSets.Used(problem, result);
        var withFree = problem.Stocks.Any(SparedStocks.IsFree) ? Of(problem, result, WithFree(problem, used), smallest, work) : null;
        return withFree ?? Of(problem, result, used, smallest, work);
    }

    /// <summary>The same with as many of what costs nothing as there are: pieces that are cut from these make room elsewhere.</summary>
    private static CuttingProblem WithFree(CuttingProblem problem, CuttingProblem used)
    {
        long pieces = problem.Pieces.Sum(piece => (long)piece.Demand);
        return used with
        {
            Stocks = [.. used.Stocks.Select((stock, s) => SparedStocks.IsFree(problem.Stocks[s])
                ? stock with { Limit = (int)Math.Min(problem.Stocks[s].Limit ?? pieces, pieces) }
                : stock)],
        };
    }

    private static CuttingResult? Of(
        CuttingProblem problem, CuttingResult result, CuttingProblem available, (long Width, long Height) smallest, WorkMeter work)
    {
        var model = new Model(available, work.Cancellation);
        if (StockSets.Of(model, work) is not { } sets || new LeftoverChoice(model, sets, smallest, work).Uses() is not { } uses)
        {
            return null;
        }

        var (patterns, _) = model.Translate(uses.OrderBy(use => use.Stock));
        return result with { Patterns = patterns, Spent = patterns.Sum(use => use.Copies * problem.Stocks[use.Stock].Price) };
    }

    /// <summary>The plan's patterns, of types; null where the work did not suffice.</summary>
    private List<PatternUse>? Uses()
    {
        var settled = new List<PatternUse>();
        int rest = _sets.Sets.Count - 1;
        while (settled.Count < MostSettled && rest > 0 && Largest(rest) is { } found)
        {
            settled.Add(new PatternUse(found.Stock, found.Block, 1) { ForLeftover = true });
            rest -= found.Set;
            _sets.Left[found.Stock]--;
        }

        return _sets.Arrange(_sets.Cover(), rest) is not { } others || _work.Exhausted ? null : [.. settled, .. others];
    }

    /// <summary>The leftover that is worth most of any stock left, when these pieces are cut from the stocks left.</summary>
    private Found? Largest(int pieces)
    {
        Found? best = null;
        foreach (int stock in Enumerable.Range(0, _sets.Left.Length).Where(s => _sets.Left[s] > 0 && _model.Stock(s).Price > 0))
        {
            _sets.Left[stock]--;
            best = LargestOf(stock, pieces, best) ?? best;
            _sets.Left[stock]++;
        }

        return best;
    }

    private Found? LargestOf(int stock, int pieces, Found? known)
    {
        var (width, height) = _sets.Grown(stock);
        double each = KeptPieces.WorthOf(_model.Stock(stock), 1);
        var table = _sets.TableFor(stock);
        var others = _sets.Cover();
        var rests = new LargestRest(_sets.Sets, table, _smallest, _model.Kerf, _work);
        Found? best = null;
        long area = (long)((known?.Worth ?? 0) / each);
        foreach (int set in _sets.Sets.Parts(pieces).Where(set => set > 0 && table.Fits(set, width, height)).OrderBy(table.AreaOf))
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

    private sealed record Found(int Stock, int Set, Block Block, double Worth);
}
