using PanelService.Http;
using PanelService.Store;
using PanelService.Store.Faults;
using PanelService.Store.Jobs;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>
/// Orders whose clients were given an address before there was a plan, where no hosts share a queue: written down before
/// the answer goes out, so that a service that is killed, or stopped while they wait, plans them when it is up again.
/// </summary>
internal sealed partial class PromisedPlans(
    JobBook jobs, PlanStore store, PlannerQueue queue, Studio studio, IHostApplicationLifetime lifetime, TimeProvider clock, ILogger<PromisedPlans> log)
    : IHostedService
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(100);

    // Hosts on one PostgreSQL that share no queue cannot tell whose orders these are.
    private bool IsKept => !studio.Options.UsesPostgres;

    /// <summary>Writes an order down; once this returns, its address is good whatever happens.</summary>
    /// <exception cref="StoreUnavailableException">It could not be written down.</exception>
    internal async Task PromiseAsync(string client, PlanJob job, CancellationToken cancellation)
    {
        if (IsKept)
        {
            await jobs.PromiseAsync(new PlanTask(job.Id, job.Order, job.Remarks, job.Origin!.Document, job.Origin.Links), client, cancellation);
            _ = EndWithAsync(job);
        }
    }

    /// <summary>Forgets an order, in the making or failed.</summary>
    internal async Task<bool> ForgetAsync(string id, CancellationToken cancellation) => IsKept && await jobs.RemoveAsync(id, cancellation);

    /// <summary>An order that failed in an earlier run; null where there is none.</summary>
    internal PlanJob? FindFailed(string id)
    {
        if (!IsKept || jobs.StatusAsync(id, CancellationToken.None).GetAwaiter().GetResult() is not { State: JobState.Failed } status
            || jobs.TaskOfAsync(id, CancellationToken.None).GetAwaiter().GetResult() is not { } task)
        {
            return null;
        }

        PlanJob job = JobOf(task);
        job.EndElsewhere(PlanSnapshot.Of(SharedProblem.Read(status.Problem)));
        return job;
    }

    /// <inheritdoc/>
    public async Task StartAsync(CancellationToken cancellationToken)
    {
        if (!IsKept)
        {
            return;
        }

        try
        {
            (PlanJob Job, string Client)[] left = [.. (await jobs.ResumeAsync(SharedProblem.Write(Problems.StoppedTooSoon()), cancellationToken))
                .Select(order => (JobOf(order.Task, again: true), order.Client))];
            foreach ((PlanJob job, _) in left)
            {
                store.Add(job);
                _ = EndWithAsync(job);
                Resumed(log, job.Id);
            }

            _ = QueueAsync(left);
        }
        catch (StoreUnavailableException)
        {
            // Logged where it was found; they wait for a start with a memory that opens.
        }
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    private PlanJob JobOf(PlanTask task, bool again = false) => new(
        task.Id, task.Order, task.Remarks, new PlanOrigin(task.OrderDocument, task.Links), again ? () => BeginAgain(task.Id) : null);

    // The room in the queue is for new orders: these wait before it where it is full.
    private async Task QueueAsync((PlanJob Job, string Client)[] left)
    {
        foreach ((PlanJob job, string client) in left)
        {
            while (!lifetime.ApplicationStopping.IsCancellationRequested && !queue.TryAdd(client, job))
            {
                await Task.Delay(Look, clock);
            }
        }
    }

    private void BeginAgain(string id)
    {
        try
        {
            jobs.BeginAgainAsync(id, CancellationToken.None).GetAwaiter().GetResult();
        }
        catch (StoreUnavailableException)
        {
            // Logged where it was found. If the memory still fails at the end, the client is told then.
        }
    }

    // The plan itself is stored before anybody is told, so whatever happens between the two, nothing is lost.
    private async Task EndWithAsync(PlanJob job)
    {
        PlanSnapshot last = await job.Finished;
        try
        {
            if (last.Plan is not null || job.IsDropped)
            {
                _ = await jobs.RemoveAsync(job.Id, CancellationToken.None);
            }
            else if (!lifetime.ApplicationStopping.IsCancellationRequested)
            {
                await jobs.EndAsync(job.Id, JobState.Failed, SharedProblem.Write(last.Problem!), CancellationToken.None);
            }
        }
        catch (StoreUnavailableException)
        {
            // Logged where it was found; the next start plans it again, and a plan is stored once however often it is made.
        }
    }

    [LoggerMessage(Level = LogLevel.Information, Message = "Plan {Id}: left by an earlier run, planned now")]
    private static partial void Resumed(ILogger log, string id);
}
