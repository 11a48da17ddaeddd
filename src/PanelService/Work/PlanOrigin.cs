using System.Collections.Immutable;
using PanelService.Store.Plans;

namespace PanelService.Work;

/// <summary>Where a plan's order came from.</summary>
/// <param name="Document">The order as it was sent: JSON.</param>
/// <param name="Links">Which of its goods are heaps in stock.</param>
internal sealed record PlanOrigin(string Document, ImmutableArray<StockLink> Links);
