using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Liquids;

/// <summary>Containers that hold enough.</summary>
/// <param name="Bought">Which and how many, none with a count of 0.</param>
/// <param name="Cost">What they cost.</param>
/// <param name="LeastCost">What no choice can cost less than; equal to the cost unless the search was cut off.</param>
internal sealed record ContainerChoice(ImmutableArray<ContainerCount> Bought, Money Cost, Money LeastCost)
{
    /// <summary>Nothing to buy.</summary>
    public static ContainerChoice None { get; } = new([], Money.Zero, Money.Zero);
}
