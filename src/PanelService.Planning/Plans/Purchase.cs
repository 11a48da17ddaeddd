using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>What a purchase is counted in.</summary>
public enum SaleUnit
{
    /// <summary>A sheet of board.</summary>
    Sheet,

    /// <summary>A step of cloth sold by length.</summary>
    Step,

    /// <summary>A roll of cloth.</summary>
    Roll,

    /// <summary>A strip for cradles.</summary>
    Strip,

    /// <summary>A bottle, tin or tub.</summary>
    Container,

    /// <summary>A ready-made panel.</summary>
    Panel,

    /// <summary>What a shop charges for delivery, or for the way.</summary>
    Delivery,
}

/// <summary>One line of the shopping list.</summary>
/// <param name="Id">The good's id; a ready-made panel's is its mark, a delivery's its shop.</param>
/// <param name="Name">What to ask for.</param>
/// <param name="Quantity">How many.</param>
/// <param name="SaleUnit">Of what.</param>
/// <param name="UnitPrice">Price of one.</param>
public sealed record Purchase(string Id, string Name, int Quantity, SaleUnit SaleUnit, Money UnitPrice)
{
    /// <summary>What the line costs.</summary>
    public Money Cost => UnitPrice * Quantity;
}
