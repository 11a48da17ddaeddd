using PanelService.Planning.Measures;

namespace PanelService.Store.Stock;

/// <summary>What a heap really is; null where it is as it stands.</summary>
/// <param name="Good">What it is.</param>
/// <param name="Quantity">How many pieces or nanolitres there are.</param>
/// <param name="Value">What one piece, or all of a liquid, counts as.</param>
/// <param name="Note">Why, for the ledger.</param>
public sealed record StockCorrection(Func<StockGood, StockGood>? Good, long? Quantity, Money? Value, string? Note);
