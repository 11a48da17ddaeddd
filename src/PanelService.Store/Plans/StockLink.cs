namespace PanelService.Store.Plans;

/// <summary>A good of an order that is a heap in stock.</summary>
/// <param name="List">The order's list: "boards", "cloths", "adhesives", "primers" or "strips".</param>
/// <param name="Good">The good's id there.</param>
/// <param name="Remnant">The remnant's id, where it is a cloth's.</param>
/// <param name="Stock">The heap's id.</param>
public sealed record StockLink(string List, string Good, string? Remnant, string Stock);
