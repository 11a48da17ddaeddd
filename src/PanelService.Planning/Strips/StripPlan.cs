using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Strips;

/// <summary>The strips of a batch.</summary>
/// <param name="Layouts">How each is cut.</param>
/// <param name="Spent">What they cost.</param>
/// <param name="LeastPossible">What no way of cutting them can spend less than.</param>
/// <param name="Missing">Per line: how many of its pieces found no strip.</param>
/// <param name="Warnings">What is missing.</param>
internal sealed record StripPlan(
    ImmutableArray<StripLayout> Layouts,
    Money Spent,
    Money LeastPossible,
    ImmutableArray<int> Missing,
    ImmutableArray<Warning> Warnings)
{
    /// <summary>Whether a search was stopped.</summary>
    public bool StoppedEarly { get; init; }

    /// <summary>Whether everything was placed.</summary>
    public bool Complete => Missing.All(count => count == 0);

    /// <summary>No strips.</summary>
    public static StripPlan None { get; } = new([], Money.Zero, Money.Zero, [], []);
}
