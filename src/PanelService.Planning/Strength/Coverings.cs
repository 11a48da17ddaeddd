using System.Collections.Immutable;
using PanelService.Planning.Boards;
using PanelService.Planning.Liquids;
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

    /// <summary>The most a line's panels may carry whatever is planned, kg/m²: its heaviest cloth and the thickest film of adhesive and ground.</summary>
    /// <param name="order">The order.</param>
    /// <param name="line">The line.</param>
    public static double MostOn(Order order, PanelLine line)
    {
        var cloths = order.Cloths.Where(cloth => line.NeedsCloth && KindMatch.Serves(line.Cloth, cloth.Kind)).Select(GramsOf);
        var liquids = line.Surface == Surface.Primed ? order.Primers : line.MountsNow ? order.Adhesives : [];
        var one = new LiquidDemand(line.Mark, null, line.Area);
        var films = liquids.Select(liquid => one.VolumeOf(liquid).Millilitres * StripPractice.DryPerMillilitre / line.Area.SquareMetres);
        return (double)(cloths.DefaultIfEmpty(0).Max() + films.DefaultIfEmpty(0).Max()) / 1000;
    }

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
