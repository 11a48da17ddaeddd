using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>A size that pieces have to fit into, either way round.</summary>
/// <param name="First">One side; above zero.</param>
/// <param name="Second">The other; above zero.</param>
public sealed record SizeLimit(Length First, Length Second);
