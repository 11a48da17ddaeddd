using System.Threading.Channels;
using Microsoft.Extensions.Options;

namespace PanelService.Work;

/// <summary>A fixed number of planners and a bounded queue before them.</summary>
internal sealed partial class PlannerQueue(
    PlanOrder planOrder, PlanKeeper keeper, IOptions<PlanningOptions> options, TimeProvider clock, ILogger<PlannerQueue> log) : BackgroundService
{
    private readonly Channel<PlanJob> _waiting = Channel.CreateBounded<PlanJob>(options.Value.Waiting);

    /// <summary>Puts a job in the queue; false where the queue is full.</summary>
    internal bool TryAdd(PlanJob job) => _waiting.Writer.TryWrite(job);

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) =>
        Task.WhenAll(Enumerable.Range(0, options.Value.Planners).Select(_ => PlanOneByOneAsync(stoppingToken)));

    private async Task PlanOneByOneAsync(CancellationToken stopping)
    {
        try
        {
            await foreach (PlanJob job in _waiting.Reader.ReadAllAsync(stopping))
            {
                await Task.Run(() => Plan(job, stopping), CancellationToken.None);
            }
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
            // The host goes down; its planners with it.
        }
    }

    private void Plan(PlanJob job, CancellationToken stopping)
    {
        using var clockStop = new CancellationTokenSource(TimeSpan.FromSeconds(options.Value.SafetyStopSeconds), clock);
        using var safetyStop = CancellationTokenSource.CreateLinkedTokenSource(clockStop.Token, stopping);
        using ITimer grace = clock.CreateTimer(_ => GiveUp(job), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        long began = clock.GetTimestamp();
        try
        {
            job.Run(planOrder, snapshot => keeper.Keep(job, snapshot), () => grace.Change(TimeSpan.FromSeconds(options.Value.GraceSeconds), Timeout.InfiniteTimeSpan), safetyStop.Token);
            Wire.Plans.PlanState state = job.Look().Snapshot.State;
            double milliseconds = clock.GetElapsedTime(began).TotalMilliseconds;
            Planned(log, job.Id, state, milliseconds);
        }
        catch (Exception fault)
        {
            // Whatever it is, it must not take the planner down with it: the client is told, the log has the details.
            Broken(log, fault, job.Id);
            job.Fail();
        }
    }

    // The planner stays taken until it comes back; only those who wait for it go free.
    private void GiveUp(PlanJob job)
    {
        if (job.GiveUp())
        {
            Overdue(log, job.Id);
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "Plan {Id}: told to end, but the planner does not come back")]
    private static partial void Overdue(ILogger log, string id);

    [LoggerMessage(Level = LogLevel.Information, Message = "Plan {Id}: {State} after {Milliseconds:0} ms")]
    private static partial void Planned(ILogger log, string id, Wire.Plans.PlanState state, double milliseconds);

    [LoggerMessage(Level = LogLevel.Error, Message = "Plan {Id}: planning broke down")]
    private static partial void Broken(ILogger log, Exception fault, string id);
}
