using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>All that a batch uses, as the stations before the tally left it.</summary>
/// <param name="Order">The order.</param>
/// <param name="Panels">The lines, then the wishes made.</param>
/// <param name="Sheets">The sheets.</param>
/// <param name="Cloth">The cloth.</param>
/// <param name="Liquids">The liquids.</param>
/// <param name="Strips">The strips.</param>
internal sealed record Goods(
    Order Order,
    ImmutableArray<PanelResult> Panels,
    ImmutableArray<SheetLayout> Sheets,
    ImmutableArray<ClothLayout> Cloth,
    ImmutableArray<LiquidUse> Liquids,
    ImmutableArray<StripLayout> Strips)
{
    /// <summary>What is bought beyond what is cut.</summary>
    public ImmutableArray<Surplus> Surplus { get; init; } = [];

    /// <summary>The shops that charge, of those that something is bought in.</summary>
    public ImmutableArray<Delivery> Deliveries { get; init; } = [];
}
