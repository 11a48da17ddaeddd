using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>What a plan spends, and what no plan can spend less than.</summary>
/// <param name="Spent">Bought goods at their price, on-hand goods at their value.</param>
/// <param name="LeastPossible">A true lower bound of that over every plan; never above <paramref name="Spent"/>.</param>
public sealed record Proof(Money Spent, Money LeastPossible)
{
    /// <summary>Whether no cheaper plan exists, to the cent.</summary>
    public bool Proven => Spent == LeastPossible;
}
