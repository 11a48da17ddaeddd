using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Store.Stock;

/// <summary>What a heap in stock is; which fields mean something depends on its sort.</summary>
public sealed record StockGood
{
    /// <summary>What the painter calls it.</summary>
    public string? Name { get; init; }

    /// <summary>"hardboard", "linen" …</summary>
    public string? Kind { get; init; }

    /// <summary>The id of the supply it came from.</summary>
    public string? Supply { get; init; }

    /// <summary>Of a board.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Of a board, a cloth (across the roll) or a panel.</summary>
    public Length? Width { get; init; }

    /// <summary>Of a board or a panel.</summary>
    public Length? Height { get; init; }

    /// <summary>Of a cloth, along the roll; of a strip.</summary>
    public Length? Length { get; init; }

    /// <summary>Of a cloth: lost at each side.</summary>
    public Length? Selvedge { get; init; }

    /// <summary>Of a board: lost at each edge; null: the saw's.</summary>
    public Length? EdgeTrim { get; init; }

    /// <summary>Of a board or a cloth: whether panels must stay upright.</summary>
    public Grain Grain { get; init; }

    /// <summary>Of a liquid: an area that <see cref="CoverageVolume"/> covers once.</summary>
    public Area? CoverageArea { get; init; }

    /// <summary>Of a liquid.</summary>
    public Volume? CoverageVolume { get; init; }

    /// <summary>Of a liquid; 1 where nothing is said.</summary>
    public int? Coats { get; init; }

    /// <summary>Of a panel.</summary>
    public Surface? Surface { get; init; }

    /// <summary>Of a panel: its mark in the plan it was made by.</summary>
    public string? Mark { get; init; }

    /// <summary>Whatever the painter notes.</summary>
    public string? Note { get; init; }
}
