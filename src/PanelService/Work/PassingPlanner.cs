using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Work;

/// <summary>
/// Plans for whoever waits, and keeps nothing: no address, no place on the desk, no row in the database. By the same
/// planners and through the same queue as any other order of this host; the queue that hosts share is for what is kept,
/// since it stores an order before it answers.
/// </summary>
internal sealed class PassingPlanner(PlannerQueue queue)
{
    /// <summary>Plans it; null where every planner is busy and the queue is full.</summary>
    /// <param name="client">Who asked; clients take turns.</param>
    /// <param name="order">The order.</param>
    /// <param name="remarks">Warnings about how it was read, for the plan to carry.</param>
    /// <param name="gone">Ends the search: nobody wants the plan any more.</param>
    /// <returns>The job, ended.</returns>
    internal async Task<PlanJob?> PlanAsync(string client, Order order, ImmutableArray<Warning> remarks, CancellationToken gone)
    {
        // Without an origin: that is what is not stored.
        var job = new PlanJob(PlanStore.NewId(), order, remarks);
        if (!queue.TryAdd(client, job))
        {
            return null;
        }

        await using (gone.Register(job.Drop))
        {
            _ = await job.Finished;
            return job;
        }
    }
}
