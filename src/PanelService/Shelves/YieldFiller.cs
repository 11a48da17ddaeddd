using PanelService.Store.Shelves;
using PanelService.Validation;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;
using PanelService.Wire.Yields;

namespace PanelService.Shelves;

/// <summary>Questions about yields that name no board are asked of all saved boards and all board in stock; the saw is the saved one, as for an order.</summary>
/// <param name="orders">Fills orders.</param>
internal sealed class YieldFiller(IBodyFiller<OrderRequest> orders) : IBodyFiller<YieldRequest>
{
    /// <inheritdoc/>
    public Task<Shelf> LoadAsync(CancellationToken cancellation) => orders.LoadAsync(cancellation);

    /// <inheritdoc/>
    public Filled<YieldRequest> Fill(YieldRequest request, OrderMeasures measures, Shelf shelf, Faults faults)
    {
        // Goods that a yield does not ask for are there, and none.
        var order = new OrderRequest
        {
            Units = request.Units,
            Currency = request.Currency,
            Boards = request.Board is null ? request.Boards : [],
            Cloths = [],
            Adhesives = [],
            Primers = [],
            Strips = [],
            Saw = request.Saw,
        };
        OrderRequest filled = orders.Fill(order, measures, shelf, faults).Request;
        return new(request with { Boards = request.Board is null ? filled.Boards : request.Boards, Saw = filled.Saw }, [], []);
    }
}
