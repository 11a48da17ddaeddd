using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Strength;

/// <summary>What panels carry on their boards: cloth, and what is left of adhesive and ground when they are dry.</summary>
/// <param name="Cloth">How each cloth is cut.</param>
/// <param name="Liquids">The liquids used.</param>
internal sealed record Coverings(ImmutableArray<ClothLayout> Cloth, ImmutableArray<LiquidUse> Liquids)
{
    /// <summary>What a line's panels carry, kg/m²; where its cloths differ, the heaviest counts.</summary>
    /// <param name="panel">The line.</param>
    public double On(PanelResult panel) => (double)((panel.Line.NeedsBoard ? ClothOn(panel) : 0) + LiquidOn(panel)) / 1000;

    private decimal ClothOn(PanelResult panel) => Cloth
        .Where(layout => layout.Pieces.Any(piece => piece.Mark == panel.Line.Mark))
        .Select(layout => GramsOf(layout.Cloth))
        .DefaultIfEmpty(0)
        .Max();

    private decimal LiquidOn(PanelResult panel) => panel.Made == 0
        ? 0
        : Liquids.SelectMany(use => use.Shares).Where(share => share.Mark == panel.Line.Mark).Sum(share => share.Volume.Millilitres)
            * StripPractice.DryPerMillilitre / (panel.Line.Area.SquareMetres * panel.Made);

    private static decimal GramsOf(ClothSupply cloth) => cloth.Weight
        ?? (cloth.Kind?.Contains("linen", StringComparison.OrdinalIgnoreCase) == true ? StripPractice.Linen : StripPractice.Cotton);
}
