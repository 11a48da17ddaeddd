namespace PanelService.Cutting;

/// <summary>What is known so far of the least price.</summary>
/// <param name="Spent">The price of the best plan found; null before the first.</param>
/// <param name="LeastPossible">A true lower bound of every plan's price.</param>
public readonly record struct CuttingProgress(long? Spent, long LeastPossible);
