using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>What a budget is enough for.</summary>
/// <param name="Budget">The cash there is, tax and deliveries included.</param>
/// <param name="ByArea">Whether panels count by their area in square millimetres; else by worth in minor units.</param>
/// <param name="Worth">What the panels made are worth together.</param>
/// <param name="MostPossible">No choice of panels within the budget is worth more.</param>
/// <param name="Lines">Per line of the order: how many were wanted and how many are made.</param>
public sealed record BudgetAnswer(Money Budget, bool ByArea, long Worth, long MostPossible, ImmutableArray<BudgetLine> Lines)
{
    /// <summary>Whether no choice within the budget is worth more.</summary>
    public bool Proven => Worth == MostPossible;
}

/// <summary>A line of an order with a budget.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Wanted">How many the order asks for at most.</param>
/// <param name="Made">How many are made.</param>
public sealed record BudgetLine(string Mark, int Wanted, int Made);
