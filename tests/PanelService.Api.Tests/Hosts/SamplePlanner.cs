using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Api.Tests.Hosts;

/// <summary>A planner that answers what the test says, when the test says so; it waits for its gate, never for time.</summary>
internal sealed class SamplePlanner : IDisposable
{
    private readonly SemaphoreSlim _begun = new(0);
    private readonly ManualResetEventSlim _gate = new();

    /// <summary>The orders it was given, in order.</summary>
    internal List<Order> Orders { get; } = [];

    /// <summary>Lets every search end.</summary>
    internal void Open() => _gate.Set();

    /// <summary>Ends when one more search has begun.</summary>
    internal Task BegunAsync() => _begun.WaitAsync();

    /// <summary>Reports a bound of 5.00, waits for the gate or a stop, and answers with a plan without sheets.</summary>
    internal PlanOutcome PlanBehindGate(Order order, IProgress<PlanProgress>? progress, CancellationToken cancellation, CancellationToken unwanted)
    {
        lock (Orders)
        {
            Orders.Add(order);
        }

        progress?.Report(new PlanProgress(null, new Money(500)));
        progress?.Report(new PlanProgress(new Money(700), new Money(500)));
        _begun.Release();
        WaitHandle.WaitAny([_gate.WaitHandle, cancellation.WaitHandle]);
        return new Planned(PlanOf(order) with { StoppedEarly = cancellation.IsCancellationRequested });
    }

    /// <summary>Answers at once.</summary>
    internal PlanOutcome PlanAtOnce(Order order, IProgress<PlanProgress>? progress, CancellationToken cancellation, CancellationToken unwanted)
    {
        lock (Orders)
        {
            Orders.Add(order);
        }

        return new Planned(PlanOf(order));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _gate.Set();
        _begun.Dispose();
        _gate.Dispose();
    }

    /// <summary>A plan that spends 7.00, proven from 5.00 on, with nothing to cut.</summary>
    internal static Plan PlanOf(Order order) => new()
    {
        Order = order,
        Panels = [],
        Proof = new Proof(new Money(700), new Money(500)),
        BoardProof = new Proof(new Money(700), new Money(500)),
        ClothProof = new Proof(Money.Zero, Money.Zero),
        Sheets = [],
        SawRun = [],
        SawProof = new SawProof(0, 0, 0),
        Cloth = [],
        Liquids = [],
        Buy = [],
        Cost = new Tally
        {
            Cash = new Money(700),
            OnHandUsed = Money.Zero,
            Used = new Money(700),
            BackOnRack = Money.Zero,
            Lines = [],
            Waste = new WasteTally(Area.Zero, Area.Zero, Area.Zero, Area.Zero, Money.Zero, Money.Zero),
        },
        Warnings = [],
    };
}
