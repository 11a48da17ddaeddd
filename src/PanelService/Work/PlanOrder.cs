using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Work;

/// <summary>An order in, a plan out: the planner's one function.</summary>
/// <param name="order">The order; its shape has been checked.</param>
/// <param name="progress">Told when the best plan or the bound gets better.</param>
/// <param name="cancellation">Ends the search early and keeps the best plan so far.</param>
/// <param name="unwanted">Ends everything, with an exception: nobody wants the plan any more.</param>
internal delegate PlanOutcome PlanOrder(Order order, IProgress<PlanProgress>? progress, CancellationToken cancellation, CancellationToken unwanted);
