using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Benchmarks.Suites;

/// <summary>One order for the whole planner.</summary>
/// <param name="Group">What its figures are summed under.</param>
/// <param name="Name">What it is called in the details.</param>
/// <param name="Order">The order.</param>
/// <param name="Proof">Which of the plan's proofs is measured.</param>
public sealed record OrderCase(string Group, string Name, Order Order, Func<Plan, Proof> Proof)
{
    /// <summary>Whether cloth is all there is to it, at one price each: then its bound is that of the engine for lengths.</summary>
    public bool IsCloth { get; init; }

    /// <summary>A price some plan is known to reach, in minor units; null where nothing is known.</summary>
    public long? KnownPlan { get; init; }
}
