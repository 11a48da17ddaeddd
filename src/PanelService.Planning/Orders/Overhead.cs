using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>A cost of the batch as a whole.</summary>
/// <param name="Name">What it is for.</param>
/// <param name="Cost">What it costs.</param>
public sealed record Overhead(string Name, Money Cost);
