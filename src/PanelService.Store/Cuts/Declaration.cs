using PanelService.Store.Stock;

namespace PanelService.Store.Cuts;

/// <summary>Goods that an order itself said were on hand: booked in, and what the plan takes of them out again.</summary>
/// <param name="Draft">All that was there.</param>
/// <param name="Used">How much of it the plan takes.</param>
internal sealed record Declaration(StockDraft Draft, long Used);
