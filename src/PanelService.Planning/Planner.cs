using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning;

/// <summary>An order in, a plan out. Pure: the same order gives the same plan.</summary>
public static class Planner
{
    /// <summary>Plans an order.</summary>
    /// <param name="order">The order; its shape has been checked.</param>
    /// <param name="progress">Told when the best plan or the bound gets better; null: nobody listens.</param>
    /// <param name="cancellation">Ends the search early and keeps the best plan so far.</param>
    /// <returns>The plan, or why there is none.</returns>
    public static PlanOutcome Plan(
        Order order, IProgress<PlanProgress>? progress = null, CancellationToken cancellation = default) =>
        throw new NotImplementedException("Planned next.");
}
