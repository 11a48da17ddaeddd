using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Orders;

/// <summary>Something the work wears out: a saw blade, sandpaper, knife blades.</summary>
internal sealed record ConsumableRequest
{
    /// <summary>What it is, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>What wears it out: a metre or foot of saw cut, a metre or foot of cloth cut (trimming included), or a panel made. Required.</summary>
    [Required]
    public WornBy? Per { get; init; }

    /// <summary>Money for a new one. Required.</summary>
    [Required]
    public decimal? Price { get; init; }

    /// <summary>How many metres, feet or panels one does; 0.01 to 1 000 000 000. Required.</summary>
    [Required]
    public decimal? Lasts { get; init; }
}

/// <summary>A tool whose price is spread over the panels made.</summary>
internal sealed record ToolRequest
{
    /// <summary>What it is, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>Money. Required.</summary>
    [Required]
    public decimal? Price { get; init; }

    /// <summary>Over how many panels the price is spread, 1 to 1 000 000. Required.</summary>
    [Required]
    public int? SpreadOver { get; init; }
}
