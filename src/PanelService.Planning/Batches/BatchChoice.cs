using PanelService.Planning.Measures;

namespace PanelService.Planning.Batches;

/// <summary>The cheapest batch found, and what no batch can spend less than.</summary>
/// <param name="Best">The batch.</param>
/// <param name="LeastPossible">The bound over everything that may be made or bought.</param>
internal sealed record BatchChoice(Batch Best, Money LeastPossible);
