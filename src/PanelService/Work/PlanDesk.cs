using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Store;
using PanelService.Store.Faults;
using PanelService.Store.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>Where orders are handed in and plans are picked up.</summary>
internal sealed class PlanDesk(PlanStore store, PlannerQueue queue, PlanBook book, Studio studio, PromisedPlans promised, SharedPlans? shared = null)
{
    /// <summary>Takes an order in; null where every planner is busy and the queue is full.</summary>
    /// <param name="client">Whose it is; clients take turns.</param>
    /// <param name="order">The order.</param>
    /// <param name="remarks">Warnings about how it was read, for the plan to carry.</param>
    /// <param name="origin">Where the order came from.</param>
    internal PlanJob? Take(string client, Order order, ImmutableArray<Warning> remarks, PlanOrigin origin)
    {
        var job = new PlanJob(PlanStore.NewId(), order, remarks, origin);
        if (!(shared?.TryAdd(client, job) ?? queue.TryAdd(client, job)))
        {
            return null;
        }

        store.Add(job);
        return job;
    }

    /// <summary>Makes an address that its client goes away with good for whatever happens.</summary>
    /// <exception cref="StoreUnavailableException">It could not be; the job is ended.</exception>
    internal async Task PromiseAsync(string client, PlanJob job, CancellationToken cancellation)
    {
        try
        {
            await promised.PromiseAsync(client, job, cancellation);
        }
        catch (Exception fault) when (fault is StoreUnavailableException or OperationCanceledException)
        {
            Abandon(job.Id);
            throw;
        }
    }

    /// <summary>The job with an id, from memory or from the database; null where there is none.</summary>
    internal PlanJob? Find(string id)
    {
        PlanJob? job = store.Find(id);
        return job is null || IsStale(job) ? FindStored(id) : job;
    }

    /// <summary>Ends a job in the making; a plan that is made stays.</summary>
    internal void Abandon(string id)
    {
        if (store.Find(id) is { } job && job.Look().Snapshot.State is PlanState.Planning or PlanState.Failed)
        {
            job.Drop();
            _ = store.Remove(id);
        }
    }

    /// <summary>Ends a job and forgets it, unless it is cut.</summary>
    internal async Task<PlanRemoval> DropAsync(string id, CancellationToken cancellation)
    {
        // The planner that is storing it at this moment looks again afterwards.
        if (store.Find(id) is { } job && job.Look().Snapshot.State == PlanState.Planning)
        {
            job.Drop();
        }

        PlanRemoval removal = await book.RemoveAsync(id, cancellation);
        if (removal == PlanRemoval.IsCut)
        {
            return removal;
        }

        // An order that waits must not be planned after the next start.
        bool wasPromised = await promised.ForgetAsync(id, cancellation);
        return store.Remove(id) is null && !wasPromised ? removal : PlanRemoval.Removed;
    }

    // Where several hosts share a database, one of them may have deleted what another remembers.
    private bool IsStale(PlanJob job) => studio.Options.UsesPostgres && job.Look().Snapshot.Plan is not null;

    // On the caller's thread: it is one row by its key, and SQLite knows no other way.
    private PlanJob? FindStored(string id)
    {
        PlanFinding found = book.FindAsync(id, CancellationToken.None).GetAwaiter().GetResult();
        if (found is PlanTooNew newer)
        {
            throw new StoreUnavailableException(StoreFault.Newer, $"Plan \"{id}\" was stored by a newer program, as a document of version {newer.Version}.");
        }

        PlanJob? job = found is PlanFound { Plan: var stored } ? PlanJob.Of(stored) : shared is null ? promised.FindFailed(id) : shared.Find(id);
        if (job is not null)
        {
            store.Add(job);
        }

        return job;
    }
}
