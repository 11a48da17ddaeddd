using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PanelService.Http;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Store.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>
/// One order on its way to a plan. Whoever waits for it sees a snapshot and is told of the next one; whoever stops it
/// keeps the best plan so far; whoever drops it keeps nothing.
/// </summary>
[SuppressMessage("Design", "CA1001", Justification = "A token source without a timer holds nothing that wants disposing, and a late stop must not throw.")]
internal sealed class PlanJob(string id, Order order, ImmutableArray<Warning> remarks, PlanOrigin? origin = null, Action? beginning = null) : IProgress<PlanProgress>
{
    private readonly Lock _gate = new();
    private readonly CancellationTokenSource _search = new();
    private readonly CancellationTokenSource _unwanted = new();
    private readonly TaskCompletionSource<PlanSnapshot> _finished = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private TaskCompletionSource _changed = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private PlanSnapshot _snapshot = new(PlanState.Planning);
    private bool _stopAsked;
    private bool _dropped;
    private bool _ended;

    internal string Id => id;

    internal Order Order => order;

    /// <summary>Where its order came from; null for a plan that is not stored.</summary>
    internal PlanOrigin? Origin => origin;

    /// <summary>Warnings for the plan to carry.</summary>
    internal ImmutableArray<Warning> Remarks => remarks;

    /// <summary>Whether the best plan so far was asked for.</summary>
    internal bool IsStopAsked => Volatile.Read(ref _stopAsked);

    /// <summary>Whether nobody wants it any more.</summary>
    internal bool IsDropped => Volatile.Read(ref _dropped);

    /// <summary>The last snapshot, once there will be no other. Never faults.</summary>
    internal Task<PlanSnapshot> Finished => _finished.Task;

    /// <summary>A plan that was stored, as a job that has ended.</summary>
    internal static PlanJob Of(FinishedPlan stored)
    {
        var job = new PlanJob(stored.Id, stored.Plan.Order, [], new PlanOrigin(stored.OrderDocument, stored.Links));
        _ = job.End(PlanSnapshot.Of(stored.Plan, stored.Stopped ? PlanState.Stopped : PlanState.Done));
        return job;
    }

    /// <summary>How it stands, and a task that ends when it stands otherwise.</summary>
    internal (PlanSnapshot Snapshot, Task Changed) Look()
    {
        lock (_gate)
        {
            return (_snapshot, _changed.Task);
        }
    }

    /// <summary>Ends the search; the best plan so far becomes the plan.</summary>
    internal void Stop()
    {
        lock (_gate)
        {
            _stopAsked = true;
        }

        _search.Cancel();
    }

    /// <summary>Ends the search, or keeps it from beginning; nobody wants the plan.</summary>
    internal void Drop()
    {
        lock (_gate)
        {
            _dropped = true;
        }

        _search.Cancel();
        _unwanted.Cancel();
    }

    /// <summary>Told by the planner.</summary>
    /// <param name="value">The best plan and the bound so far.</param>
    public void Report(PlanProgress value) =>
        _ = Show(new PlanSnapshot(PlanState.Planning, value.Spent, value.LeastPossible), isLast: false);

    /// <summary>Plans, on the caller's thread.</summary>
    /// <param name="planOrder">The planner.</param>
    /// <param name="keep">Stores what came of it, before anybody is told; what it gives back is what they are told.</param>
    /// <param name="stopped">Told when the search is to end, for whatever reason.</param>
    /// <param name="safetyStop">Ends a search that runs away.</param>
    internal void Run(PlanOrder planOrder, Func<PlanSnapshot, PlanSnapshot> keep, Action stopped, CancellationToken safetyStop)
    {
        if (_dropped)
        {
            _ = GiveUp();
            return;
        }

        beginning?.Invoke();
        using var either = CancellationTokenSource.CreateLinkedTokenSource(_search.Token, safetyStop);
        using CancellationTokenRegistration told = either.Token.Register(stopped);
        try
        {
            PlanOutcome outcome = planOrder(order, this, either.Token, _unwanted.Token);
            _ = End(keep(After(outcome, either.IsCancellationRequested)));
        }
        catch (OperationCanceledException) when (either.IsCancellationRequested)
        {
            _ = GiveUp();
        }
    }

    /// <summary>Ends it for those who wait; the planner hears that nobody does any more.</summary>
    /// <returns>Whether anybody could still be waiting.</returns>
    internal bool GiveUp()
    {
        bool isFirst = End(PlanSnapshot.Of(Problems.StoppedTooSoon()));
        _search.Cancel();
        _unwanted.Cancel();
        return isFirst;
    }

    /// <summary>Ends it with what another host's planner made of it.</summary>
    internal void EndElsewhere(PlanSnapshot last) => _ = End(last);

    /// <summary>Ends it after a fault of the service's own.</summary>
    internal void Fail() => _ = End(PlanSnapshot.Of(Problems.Internal()));

    // A search that was cut short has not shown that there is too little: it has only not found enough.
    private PlanSnapshot After(PlanOutcome outcome, bool cutShort) => outcome switch
    {
        CannotBeMade { Reason: CannotReason.NotEnoughStock } when cutShort => PlanSnapshot.Of(Problems.StoppedTooSoon()),
        Planned { Plan: var plan } => PlanSnapshot.Of(
            plan with { Warnings = [.. plan.Warnings, .. remarks] },
            _stopAsked && plan.StoppedEarly ? PlanState.Stopped : PlanState.Done),
        CannotBeMade reason => PlanSnapshot.Of(Problems.Impossible(reason)),
        _ => throw new InvalidOperationException($"An outcome of an unknown sort: {outcome.GetType().Name}."),
    };

    private bool End(PlanSnapshot last) => Show(last, isLast: true) && _finished.TrySetResult(last);

    // The first end counts: whoever waited has been answered by it, and a late report changes nothing.
    private bool Show(PlanSnapshot next, bool isLast)
    {
        TaskCompletionSource before;
        lock (_gate)
        {
            if (_ended)
            {
                return false;
            }

            _ended = isLast;
            _snapshot = next;
            before = _changed;
            _changed = new(TaskCreationOptions.RunContinuationsAsynchronously);
        }

        before.SetResult();
        return true;
    }
}
