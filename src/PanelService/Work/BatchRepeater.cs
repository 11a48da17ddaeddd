using PanelService.Cutting;
using PanelService.Planning.Orders;

namespace PanelService.Work;

/// <summary>Plans an order several times over, by the same planners and through the same queue as any other order.</summary>
internal sealed class BatchRepeater(PassingPlanner planner)
{
    /// <summary>The order with every line's quantity and spares taken so many times; what there is to make it from stays.</summary>
    /// <param name="order">The order.</param>
    /// <param name="times">How many times, 1 or more.</param>
    internal static Order Repeat(Order order, int times) => order with
    {
        Panels = [.. order.Panels.Select(line => line with { Quantity = line.Quantity * times, Spares = line.Spares * times })],
        Effort = Effort.Quick,
    };

    /// <summary>Plans it; null where every planner is busy and the queue is full.</summary>
    /// <param name="client">Who asked; clients take turns.</param>
    /// <param name="order">The order.</param>
    /// <param name="times">How many times, 1 or more.</param>
    /// <param name="gone">Ends the search: nobody wants the plan any more.</param>
    /// <returns>The last snapshot.</returns>
    internal async Task<PlanSnapshot?> PlanAsync(string client, Order order, int times, CancellationToken gone) =>
        (await planner.PlanAsync(client, Repeat(order, times), [], gone))?.Look().Snapshot;
}
