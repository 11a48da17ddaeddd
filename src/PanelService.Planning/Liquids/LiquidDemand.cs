using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Liquids;

/// <summary>What one line wants of the adhesives, or of the primers.</summary>
/// <param name="Mark">The line or wish.</param>
/// <param name="Named">The id of the liquid it names; null: any.</param>
/// <param name="Area">Nominal area of all its panels, one face, one coat.</param>
internal sealed record LiquidDemand(string Mark, string? Named, Area Area)
{
    /// <summary>What this takes of a liquid: area × coats × faces at its coverage, less what thins it, and what is lost.</summary>
    /// <param name="liquid">The liquid.</param>
    public Volume VolumeOf(LiquidSupply liquid) => VolumeFor(Area, liquid);

    /// <summary>What an area takes of a liquid, with all its coats.</summary>
    /// <param name="area">The area.</param>
    /// <param name="liquid">The liquid.</param>
    public static Volume VolumeFor(Area area, LiquidSupply liquid) => new(
        area.SquareMetres * liquid.Coats * liquid.CoverageVolume.Millilitres / liquid.CoverageArea.SquareMetres * Share(liquid));

    /// <summary>How often over an area counts: each face, without the thinner, with what is lost. 1 where nothing is said.</summary>
    /// <param name="liquid">The liquid.</param>
    public static decimal Share(LiquidSupply liquid) =>
        liquid.Faces * (100 - liquid.Thinning) * (100 + liquid.Loss) / 10_000;
}
