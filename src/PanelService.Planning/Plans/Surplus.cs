using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>Goods bought beyond what is cut, because that is cheaper: they go back on the rack whole.</summary>
/// <param name="Id">The board, cloth or strip.</param>
/// <param name="SaleUnit">Sheets, steps, rolls or strips.</param>
/// <param name="Quantity">How many.</param>
/// <param name="UnitPrice">What one was bought at.</param>
/// <param name="Reason">Why.</param>
public sealed record Surplus(string Id, SaleUnit SaleUnit, int Quantity, Money UnitPrice, SurplusReason Reason)
{
    /// <summary>What they cost together.</summary>
    public Money Cost => UnitPrice * Quantity;
}

/// <summary>Why more is bought than is cut.</summary>
public enum SurplusReason
{
    /// <summary>So many have a lower price each, and cost less together.</summary>
    QuantityPrice,

    /// <summary>Then nothing is charged for delivery.</summary>
    FreeDelivery,
}
