using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>What the finished panels weigh.</summary>
/// <param name="Batch">All that are cut.</param>
/// <param name="Pack">Those that go in the painter's pack.</param>
public sealed record Weights(Weight Batch, Weight Pack);
