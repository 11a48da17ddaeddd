using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Measures;

namespace PanelService.Wire.Orders;

/// <summary>Strip of one length for cradles; its section is strength.stripWidth × strength.stripDepth.</summary>
internal sealed record StripRequest
{
    /// <summary>Unique among the strips, at most 64 characters. Required.</summary>
    [Required]
    public string? Id { get; init; }

    /// <summary>What the painter calls it, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>Its length; 1 mm to 10 m. Required.</summary>
    [Required]
    public Length? Length { get; init; }

    /// <summary>Money for one. Required unless forSale is 0.</summary>
    public decimal? Price { get; init; }

    /// <summary>Lower prices for larger numbers, counts rising, prices falling; at most 20.</summary>
    public IReadOnlyList<PriceStepRequest?>? PriceFrom { get; init; }

    /// <summary>The id of the shop it is bought in; null: one that charges nothing.</summary>
    public string? Shop { get; init; }

    /// <summary>How many can be bought, 0 to 1 000 000; null: any number.</summary>
    public int? ForSale { get; init; }

    /// <summary>How many are in the studio already, 0 to 1 000 000. Default 0.</summary>
    public int? OnHand { get; init; }

    /// <summary>What using one on-hand piece counts as. Money. Default 0.</summary>
    public decimal? Value { get; init; }
}
