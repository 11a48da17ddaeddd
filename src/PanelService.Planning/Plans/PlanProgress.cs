using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>How far planning has come.</summary>
/// <param name="Spent">What the best plan so far spends; null before the first.</param>
/// <param name="LeastPossible">What no plan can spend less than, as known so far.</param>
public sealed record PlanProgress(Money? Spent, Money LeastPossible);
