using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Store.Plans;

/// <summary>A plan to be stored, or as it was stored.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Plan">The plan, with its order.</param>
/// <param name="Stopped">Whether the search was ended on request.</param>
/// <param name="OrderDocument">The order as it was sent: JSON.</param>
/// <param name="Links">Which of the order's goods are heaps in stock.</param>
public sealed record FinishedPlan(string Id, Plan Plan, bool Stopped, string OrderDocument, ImmutableArray<StockLink> Links);
