using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>
/// A format that what is left after the batch is enough for: such panels cost only the work. Each entry by itself, had it all
/// that is left.
/// </summary>
/// <param name="Mark">The line of the order it is another one of; null for a standard format.</param>
/// <param name="Name">The standard format's name; empty for a line.</param>
/// <param name="Width">Width as it hangs.</param>
/// <param name="Height">Height as it hangs.</param>
/// <param name="Surface">The finish.</param>
/// <param name="Count">How many; 1 or more.</param>
public sealed record SparePanel(string? Mark, string Name, Length Width, Length Height, Surface Surface, int Count);
