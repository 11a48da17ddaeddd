using PanelService.Planning.Measures;

namespace PanelService.Store.Stock;

/// <summary>A heap that is to enter the stock.</summary>
/// <param name="Sort">Of what sort.</param>
/// <param name="Good">What it is.</param>
/// <param name="Quantity">Pieces or nanolitres; 1 or more.</param>
/// <param name="Value">What one piece, or all of a liquid, counts as.</param>
/// <param name="Units">The unit it is shown in.</param>
/// <param name="Currency">ISO 4217 code of its value.</param>
public sealed record StockDraft(StockSort Sort, StockGood Good, long Quantity, Money Value, LengthUnit Units, string Currency);
