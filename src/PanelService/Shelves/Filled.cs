using System.Collections.Immutable;
using PanelService.Planning.Plans;
using PanelService.Store.Plans;

namespace PanelService.Shelves;

/// <summary>A request with what it left out filled in.</summary>
/// <typeparam name="T">The wire record.</typeparam>
/// <param name="Request">The record.</param>
/// <param name="Links">Which of its goods are heaps in stock.</param>
/// <param name="Remarks">What the plan should say about it.</param>
internal sealed record Filled<T>(T Request, ImmutableArray<StockLink> Links, ImmutableArray<Warning> Remarks);
