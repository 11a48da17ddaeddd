using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Work;

/// <summary>Where orders are handed in and plans are picked up.</summary>
internal sealed class PlanDesk(PlanStore store, PlannerQueue queue)
{
    /// <summary>Takes an order in; null where every planner is busy and the queue is full.</summary>
    /// <param name="order">The order.</param>
    /// <param name="remarks">Warnings about how it was read, for the plan to carry.</param>
    internal PlanJob? Take(Order order, ImmutableArray<Warning> remarks)
    {
        var job = new PlanJob(PlanStore.NewId(), order, remarks);
        if (!queue.TryAdd(job))
        {
            return null;
        }

        store.Add(job);
        return job;
    }

    /// <summary>The job with an id; null where none is kept.</summary>
    internal PlanJob? Find(string id) => store.Find(id);

    /// <summary>Ends a job and forgets it; false where none is kept.</summary>
    internal bool Drop(string id)
    {
        PlanJob? job = store.Remove(id);
        job?.Drop();
        return job is not null;
    }
}
