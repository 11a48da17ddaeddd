using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>How much of a consumable the batch wears out.</summary>
/// <param name="Consumable">Which.</param>
/// <param name="Amount">How many metres, feet or panels it is used for.</param>
/// <param name="Cost">Price × amount ÷ what it lasts, to the nearest minor unit, halves up.</param>
public sealed record ConsumableUse(Consumable Consumable, decimal Amount, Money Cost);

/// <summary>What the batch bears of a tool.</summary>
/// <param name="Tool">Which.</param>
/// <param name="Panels">How many panels bear a part: those made, at most those it is spread over.</param>
/// <param name="Cost">Price × panels ÷ those it is spread over, to the nearest minor unit, halves up.</param>
public sealed record ToolUse(Tool Tool, int Panels, Money Cost);
