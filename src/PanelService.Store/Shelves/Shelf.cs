using System.Collections.Immutable;
using PanelService.Store.Settings;
using PanelService.Store.Stock;
using PanelService.Store.Supplies;

namespace PanelService.Store.Shelves;

/// <summary>What an order that leaves something out is filled in from, at one moment.</summary>
/// <param name="Settings">The studio's settings; null where none are saved.</param>
/// <param name="Supplies">What can be bought.</param>
/// <param name="Stock">What is there; heaps of which nothing is left are not.</param>
public sealed record Shelf(SavedSettings? Settings, ImmutableArray<Supply> Supplies, ImmutableArray<StockItem> Stock);
