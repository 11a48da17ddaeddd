using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Store.Stock;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;

namespace PanelService.Wire.Studio;

/// <summary>
/// A heap of alike pieces, or a liquid, that is in the studio. What its sort needs and it does not say is taken from the
/// supply it names.
/// </summary>
internal sealed record StockRequest : IMeasuredRequest
{
    /// <summary>The unit of bare numbers, and the one it is shown in. Default: the studio's.</summary>
    public LengthUnit? Units { get; init; }

    /// <summary>ISO 4217 code of its value. Default: the studio's.</summary>
    public string? Currency { get; init; }

    /// <summary>board, offcut, cloth, remnant, adhesive, primer, strip or panel. Required.</summary>
    [Required]
    public StockSort? Sort { get; init; }

    /// <summary>The id of the saved supply it came from.</summary>
    public string? Supply { get; init; }

    /// <summary>What the painter calls it, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>"hardboard", "linen" …</summary>
    public string? Kind { get; init; }

    /// <summary>Of a board; above 0, at most 1 m.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Of a board or panel; of a cloth, across the roll.</summary>
    public Length? Width { get; init; }

    /// <summary>Of a board or panel.</summary>
    public Length? Height { get; init; }

    /// <summary>Of a cloth, along the roll; of a strip.</summary>
    public Length? Length { get; init; }

    /// <summary>Of a cloth: lost at each side. A remnant has none.</summary>
    public Length? Selvedge { get; init; }

    /// <summary>Of a board: lost at each edge; null: the saw's. Of an offcut 0 where it is not said.</summary>
    public Length? EdgeTrim { get; init; }

    /// <summary>Of a board: "height" where the grain runs along its height.</summary>
    public BoardGrain? Grain { get; init; }

    /// <summary>Of a cloth: "height" where a panel's height must run along the roll.</summary>
    public ClothWarp? Warp { get; init; }

    /// <summary>How many alike pieces; 0 to 1 000 000. Default 1. Not of a liquid.</summary>
    public int? Count { get; init; }

    /// <summary>How much of a liquid: US fl oz for inch, mL otherwise.</summary>
    public decimal? Volume { get; init; }

    /// <summary>What one piece, or all of a liquid, counts as when it is used. Money. Default 0.</summary>
    public decimal? Value { get; init; }

    /// <summary>Of a liquid: how far it goes in one coat.</summary>
    public CoverageRequest? Coverage { get; init; }

    /// <summary>Of a primer: coats, 1 to 100.</summary>
    public int? Coats { get; init; }

    /// <summary>Of a panel: its finish.</summary>
    public Surface? Surface { get; init; }

    /// <summary>Of a panel: its mark.</summary>
    public string? Mark { get; init; }

    /// <summary>Whatever is worth noting; at most 200 characters.</summary>
    public string? Note { get; init; }
}
