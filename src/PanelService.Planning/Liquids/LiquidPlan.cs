using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Liquids;

/// <summary>The liquids of a batch.</summary>
/// <param name="Uses">Adhesives first, each liquid that is used.</param>
/// <param name="LeastPossible">What no choice of liquids and containers can spend less than.</param>
/// <param name="Warnings">What is missing.</param>
internal sealed record LiquidPlan(ImmutableArray<LiquidUse> Uses, Money LeastPossible, ImmutableArray<Warning> Warnings)
{
    /// <summary>Bought containers at their price, on-hand liquid at the used share of its value.</summary>
    public Money Spent => Uses.Aggregate(Money.Zero, (sum, use) => sum + use.Spent);
}
