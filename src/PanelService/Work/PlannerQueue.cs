using Microsoft.Extensions.Options;

namespace PanelService.Work;

/// <summary>A fixed number of planners and a bounded queue before them.</summary>
internal sealed partial class PlannerQueue(
    PlanOrder planOrder, PlanKeeper keeper, IOptions<PlanningOptions> options, MemoryWatch memory, PlanningMeter meter, TimeProvider clock, ILogger<PlannerQueue> log) : BackgroundService
{
    private readonly FairQueue<PlanJob> _waiting = new(options.Value.Waiting, EndIfDropped);

    /// <summary>Whether there is no room for another job.</summary>
    internal bool IsFull => _waiting.IsFull;

    /// <summary>Whether another job of a client would be refused.</summary>
    internal bool IsFullFor(string client) => _waiting.IsFullFor(client);

    /// <summary>Puts a job in the queue; false where the queue is full, or holds as many of this client's as it may.</summary>
    internal bool TryAdd(string client, PlanJob job) => _waiting.TryAdd(client, job);

    /// <inheritdoc/>
    public override void Dispose()
    {
        _waiting.Dispose();
        base.Dispose();
    }

    /// <summary>Plans a job of the shared queue; where the host goes down meanwhile, nothing of it is stored.</summary>
    internal Task PlanNowAsync(PlanJob job, CancellationToken stopping) => PlannerThread.RunAsync(() => Plan(job, isShared: true, stopping));

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken)
    {
        meter.Watch(() => _waiting.Count);
        return Task.WhenAll(Enumerable.Range(0, Math.Max(1, options.Value.Planners)).Select(_ => PlanOneByOneAsync(stoppingToken)));
    }

    private async Task PlanOneByOneAsync(CancellationToken stopping)
    {
        try
        {
            while (true)
            {
                PlanJob job = await _waiting.TakeAsync(stopping);
                await PlannerThread.RunAsync(() => Plan(job, isShared: false, stopping));
            }
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
            // The host goes down; its planners with it.
        }
    }

    private void Plan(PlanJob job, bool isShared, CancellationToken stopping)
    {
        using var clockStop = new CancellationTokenSource(TimeSpan.FromSeconds(options.Value.SafetyStopSeconds), clock);
        using var memoryStop = new CancellationTokenSource();
        using var safetyStop = CancellationTokenSource.CreateLinkedTokenSource(clockStop.Token, memoryStop.Token, stopping);
        using IDisposable watched = memory.Begin(() => EndForMemory(job, memoryStop), () => GiveUp(job));
        using ITimer grace = clock.CreateTimer(_ => GiveUp(job), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        long began = clock.GetTimestamp();
        try
        {
            job.Run(planOrder, snapshot => isShared && stopping.IsCancellationRequested ? snapshot : keeper.Keep(job, snapshot), () => grace.Change(TimeSpan.FromSeconds(options.Value.GraceSeconds), Timeout.InfiniteTimeSpan), safetyStop.Token);
            Wire.Plans.PlanState state = job.Look().Snapshot.State;
            TimeSpan took = clock.GetElapsedTime(began);
            meter.Ended(state, took);
            Planned(log, job.Id, state, took.TotalMilliseconds);
        }
        catch (Exception fault)
        {
            // Whatever it is, it must not take the planner down with it: the client is told, the log has the details.
            Broken(log, fault, job.Id);
            job.Fail();
        }
    }

    // The search may just have ended by itself.
    private void EndForMemory(PlanJob job, CancellationTokenSource stop)
    {
        TooLarge(log, job.Id, options.Value.MostMegabytes);
        try
        {
            stop.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // Then there is nothing left to end.
        }
    }

    // Whoever waits for it, and be it only to find that it was dropped, goes free.
    private static bool EndIfDropped(PlanJob job) => job.IsDropped && (job.GiveUp() || job.Finished.IsCompleted);

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

    [LoggerMessage(Level = LogLevel.Warning, Message = "Plan {Id}: ended early, since the process holds more than {Megabytes} MiB")]
    private static partial void TooLarge(ILogger log, string id, int megabytes);

    [LoggerMessage(Level = LogLevel.Information, Message = "Plan {Id}: {State} after {Milliseconds:0} ms")]
    private static partial void Planned(ILogger log, string id, Wire.Plans.PlanState state, double milliseconds);

    [LoggerMessage(Level = LogLevel.Error, Message = "Plan {Id}: planning broke down")]
    private static partial void Broken(ILogger log, Exception fault, string id);
}
