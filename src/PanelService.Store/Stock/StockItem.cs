using PanelService.Planning.Measures;

namespace PanelService.Store.Stock;

/// <summary>A heap of alike pieces, or one liquid, as it is now.</summary>
/// <param name="Id">What is written on it in pencil.</param>
/// <param name="Sort">Of what sort.</param>
/// <param name="Good">What it is.</param>
/// <param name="Quantity">Pieces or nanolitres: the sum of its movements.</param>
/// <param name="Value">What one piece, or all that is there of a liquid, counts as.</param>
/// <param name="Units">The unit it is shown in.</param>
/// <param name="Currency">ISO 4217 code of its value.</param>
/// <param name="AddedAt">When it first came in.</param>
/// <param name="Version">1 and up; grows with each correction.</param>
public sealed record StockItem(
    string Id, StockSort Sort, StockGood Good, long Quantity, Money Value, LengthUnit Units, string Currency, DateTimeOffset AddedAt, int Version);
