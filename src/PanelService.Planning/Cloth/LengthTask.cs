using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Prices;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>The cloth of an order as the engine for lengths takes it: remnants, rolls and ready-made panels as sheets, the rest by the step.</summary>
internal sealed class LengthTask
{
    private readonly Order _order;
    private readonly CutRequest _request;
    private readonly ImmutableArray<ClothStock> _sheets;
    private readonly ImmutableArray<int> _byLength;
    private readonly ImmutableArray<ClothPieces> _pieces;
    private readonly ImmutableArray<int> _ready;

    /// <summary>Writes the problem.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size.</param>
    /// <param name="reach">How many steps of each cloth are of use.</param>
    public LengthTask(Order order, CutRequest request, ClothReach reach)
    {
        (_order, _request, _pieces) = (order, request, ClothPieces.Of(order, request));
        _sheets = [.. ClothStocks.OfFixedLength(order)];
        _byLength = [.. Enumerable.Range(0, order.Cloths.Length).Where(c => order.Cloths[c].Sale is SaleByLength && reach.Useful[c] > 0)];
        _ready = [.. Enumerable.Range(0, _pieces.Length).Where(p => request.ReadyFor(_pieces[p].LineNumber) is not null)];
        Problem = new LengthProblem(
            [.. _sheets.Select(sheet => sheet.ToStock(_pieces)), .. _ready.Select(ReadyStock)],
            [.. _byLength.Select(c => LengthOf(order.Cloths[c], reach.Useful[c]))],
            [.. _pieces.Select((piece, p) => new Piece(piece.Width, piece.Height, piece.Count, TurningOf(piece, p)))]);
    }

    /// <summary>The problem.</summary>
    public LengthProblem Problem { get; }

    /// <summary>Reads a result.</summary>
    /// <param name="result">The result.</param>
    /// <param name="otherwise">A plan that makes everything, for where the result has none.</param>
    public ClothPlan PlanOf(LengthResult result, ImmutableArray<ClothPattern> otherwise)
    {
        ImmutableArray<int> lineOf = [.. _pieces.Select(piece => piece.LineNumber)];
        var nothing = CutOutcome.Nothing(_order.Panels.Length) with { StoppedEarly = result.StoppedEarly };
        var patterns = result.Complete ? PatternsOf(result) : otherwise;
        var spent = result.Complete ? new Money(result.Spent) : ClothPrices.InRun(_order, patterns);
        return new ClothPlan(patterns, lineOf, nothing with
        {
            Spent = spent,
            LeastPossible = new Money(Math.Min(result.LeastPossible, spent.Minor)),
            Ready = ReadyOf(result),
        });
    }

    private ImmutableArray<ClothPattern> PatternsOf(LengthResult result) =>
    [
        .. result.Uses.Where(use => StockOf(use) is not null)
            .GroupBy(use => (Stock: FirstAlike(use.Stock), use.Steps, use.Block))
            .Select(group => new ClothPattern(StockOf(group.First() with { Stock = group.Key.Stock })!, group.Key.Block, group.Sum(use => use.Copies))),
    ];

    // A roll paid for and one that is not are one sort: the plan knows only the latter.
    private int FirstAlike(int stock) =>
        stock + 1 < _sheets.Length && _sheets[stock].IsPaid && _sheets[stock + 1] is { Remnant: null } next && next.Cloth.Id == _sheets[stock].Cloth.Id
            ? stock + 1
            : stock;

    private ImmutableArray<int> ReadyOf(LengthResult result)
    {
        int[] ready = new int[_order.Panels.Length];
        foreach (var use in result.Uses.Where(use => StockOf(use) is null))
        {
            ready[_pieces[_ready[use.Stock - _sheets.Length]].LineNumber] += use.Copies;
        }

        return [.. ready];
    }

    private ClothStock? StockOf(LengthUse use)
    {
        if (use.Stock < _sheets.Length)
        {
            return _sheets[use.Stock];
        }

        int length = use.Stock - _sheets.Length - _ready.Length;
        return length < 0 ? null : ClothStock.Of(_order.Cloths[_byLength[length]], (SaleByLength)_order.Cloths[_byLength[length]].Sale!, use.Steps);
    }

    private Stock ReadyStock(int piece)
    {
        var offer = _request.ReadyFor(_pieces[piece].LineNumber)!;
        return new Stock(_pieces[piece].Width, _pieces[piece].Height, offer.Price.Minor, offer.Most);
    }

    private static LengthStock LengthOf(ClothSupply cloth, int useful)
    {
        var sale = (SaleByLength)cloth.Sale!;
        return new LengthStock((cloth.Width - (cloth.Selvedge * 2)).Steps, sale.Step.Steps, sale.Price.Minor, useful, sale.Paid);
    }

    private ImmutableArray<Turning> TurningOf(ClothPieces piece, int number) =>
    [
        .. _sheets.Select(sheet => ClothFit.TurningOn(piece.Line, sheet.Cloth)),
        .. _ready.Select(other => other == number ? Turning.Upright : Turning.None),
        .. _byLength.Select(c => ClothFit.TurningOn(piece.Line, _order.Cloths[c])),
    ];
}
