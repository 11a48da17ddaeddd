using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Store.Plans;

namespace PanelService.Store.Jobs;

/// <summary>An order that any planner of the workshop may take on.</summary>
/// <param name="Id">The plan's id to be.</param>
/// <param name="Order">The order as it is to be planned.</param>
/// <param name="Remarks">Warnings for the plan to carry.</param>
/// <param name="OrderDocument">The order as it was sent: JSON.</param>
/// <param name="Links">Which of its goods are heaps in stock.</param>
public sealed record PlanTask(
    string Id, Order Order, ImmutableArray<Warning> Remarks, string OrderDocument, ImmutableArray<StockLink> Links);
