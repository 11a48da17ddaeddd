using Hangfire;
using Microsoft.Extensions.Options;
using PanelService.Planning.Plans;
using PanelService.Store.Jobs;
using PanelService.Store.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>
/// Orders handed to whichever planner of the workshop is free: the order is stored, then queued in the same database by a
/// library for durable jobs, and only then answered. What becomes of it is read from the database.
/// </summary>
internal sealed partial class SharedPlans(
    JobBook jobs, PlanBook plans, IOptions<PlanningOptions> options, TimeProvider clock, SharedQueue queue, ILogger<SharedPlans> log)
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(100);

    /// <summary>Hands an order in; false where as many wait as may, or as many of this client's.</summary>
    internal bool TryAdd(string client, PlanJob job)
    {
        var task = new PlanTask(job.Id, job.Order, job.Remarks, job.Origin!.Document, job.Origin.Links);
        int most = Math.Max(1, options.Value.Planners) + options.Value.Waiting;
        if (!jobs.AddAsync(task, client, most, CancellationToken.None).GetAwaiter().GetResult())
        {
            return false;
        }

        // A turn: the planner that gets it asks whose it is.
        queue.Client.Enqueue<SharedPlanner>(planner => planner.PlanAsync(job.Id, CancellationToken.None));
        _ = FollowAsync(job);
        return true;
    }

    /// <summary>A job that another host was handed; null where there is none.</summary>
    internal PlanJob? Find(string id)
    {
        if (jobs.StatusAsync(id, CancellationToken.None).GetAwaiter().GetResult() is null or { State: JobState.Dropped }
            || jobs.TaskOfAsync(id, CancellationToken.None).GetAwaiter().GetResult() is not { } task)
        {
            return null;
        }

        var job = new PlanJob(id, task.Order, task.Remarks, new PlanOrigin(task.OrderDocument, task.Links));
        _ = FollowAsync(job);
        return job;
    }

    // Shows here what happens there, until it has ended.
    private async Task FollowAsync(PlanJob job)
    {
        try
        {
            bool isStopTold = false;
            while (!job.Finished.IsCompleted)
            {
                if (job.IsDropped)
                {
                    await jobs.EndAsync(job.Id, JobState.Dropped, null, CancellationToken.None);
                    _ = job.GiveUp();
                    return;
                }

                if (job.IsStopAsked && !isStopTold)
                {
                    await jobs.StopAsync(job.Id, CancellationToken.None);
                    isStopTold = true;
                }

                await ShowAsync(job);
                await Task.Delay(Look, clock);
            }
        }
        catch (Exception fault)
        {
            // Whatever it is, whoever waits must not wait for ever.
            Lost(log, fault, job.Id);
            job.Fail();
        }
    }

    private async Task ShowAsync(PlanJob job)
    {
        JobStatus? now = await jobs.StatusAsync(job.Id, CancellationToken.None);
        switch (now?.State)
        {
            case JobState.Done when await plans.FindAsync(job.Id, CancellationToken.None) is PlanFound { Plan: var stored }:
                job.EndElsewhere(PlanSnapshot.Of(stored.Plan, stored.Stopped ? PlanState.Stopped : PlanState.Done));
                break;
            case JobState.Failed:
                job.EndElsewhere(PlanSnapshot.Of(SharedProblem.Read(now.Problem)));
                break;
            case JobState.Waiting or JobState.Planning:
                if (now.LeastPossible is { } least)
                {
                    job.Report(new PlanProgress(now.Spent, least));
                }

                break;
            default:
                _ = job.GiveUp();
                break;
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "Plan {Id}: what becomes of it cannot be read")]
    private static partial void Lost(ILogger log, Exception fault, string id);
}
