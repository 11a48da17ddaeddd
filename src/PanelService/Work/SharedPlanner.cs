using Hangfire;
using PanelService.Store.Jobs;
using PanelService.Store.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>
/// Plans one order of the shared queue. Killed in the middle, it leaves the order to the next: the queue gives out a job
/// again that nobody has been seen at for a while, and a plan is stored once however often it is made.
/// </summary>
internal sealed class SharedPlanner(JobBook jobs, PlanBook plans, PlannerQueue planners, TimeProvider clock)
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(250);

    /// <summary>Plans the order whose turn it is; run by the queue.</summary>
    /// <param name="ticket">The queue's entry: a turn.</param>
    /// <param name="stopping">The host goes down: the job goes back into the queue.</param>
    [AutomaticRetry(Attempts = 3)]
    public async Task PlanAsync(string ticket, CancellationToken stopping)
    {
        if (await jobs.TakeAsync(ticket, Environment.MachineName, stopping) is not { } task)
        {
            return;
        }

        var job = new PlanJob(task.Id, task.Order, task.Remarks, new PlanOrigin(task.OrderDocument, task.Links));
        Task planning = planners.PlanNowAsync(job, stopping);
        while (await Task.WhenAny(planning, Task.Delay(Look, clock, CancellationToken.None)) != planning)
        {
            await KeepInTouchAsync(job, stopping);
        }

        await planning;
        stopping.ThrowIfCancellationRequested();
        await EndAsync(job);
    }

    private async Task KeepInTouchAsync(PlanJob job, CancellationToken stopping)
    {
        PlanSnapshot now = job.Look().Snapshot;
        if (now.LeastPossible is { } least && now.State == PlanState.Planning)
        {
            await jobs.ReportAsync(job.Id, now.Spent, least, stopping);
        }

        JobStatus? asked = await jobs.StatusAsync(job.Id, stopping);
        if (asked is null or { State: JobState.Dropped })
        {
            job.Drop();
        }
        else if (asked.StopAsked)
        {
            job.Stop();
        }
    }

    private async Task EndAsync(PlanJob job)
    {
        PlanSnapshot last = job.Look().Snapshot;
        if ((await jobs.StatusAsync(job.Id, CancellationToken.None))?.State == JobState.Dropped)
        {
            _ = await plans.RemoveAsync(job.Id, CancellationToken.None);
            return;
        }

        await jobs.EndAsync(
            job.Id,
            last.Plan is null ? JobState.Failed : JobState.Done,
            last.Plan is null ? SharedProblem.Write(last.Problem!) : null,
            CancellationToken.None);
    }
}
