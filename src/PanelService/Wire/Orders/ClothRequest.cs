using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Orders;

/// <summary>A cloth: how it is sold, and what remnants of it are there. One of the two is required.</summary>
internal sealed record ClothRequest
{
    /// <summary>Unique among the cloths, at most 64 characters. Required.</summary>
    [Required]
    public string? Id { get; init; }

    /// <summary>What the painter calls it, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>"linen", "cotton" …; null: serves only lines that ask for no kind.</summary>
    public string? Kind { get; init; }

    /// <summary>Full width of the roll, selvedges included; above 0, at most 100 m. Required.</summary>
    [Required]
    public Length? Width { get; init; }

    /// <summary>Lost at each side of the roll. Default 0.</summary>
    public Length? Selvedge { get; init; }

    /// <summary>How it is sold.</summary>
    public ClothSaleRequest? Sale { get; init; }

    /// <summary>The id of the shop it is bought in; null: one that charges nothing.</summary>
    public string? Shop { get; init; }

    /// <summary>What lies in the studio; at most 1000.</summary>
    public IReadOnlyList<RemnantRequest?>? Remnants { get; init; }

    /// <summary>What it is primed with when bought: none, acrylic or oil. Default none.</summary>
    public ClothGround? Ground { get; init; }

    /// <summary>oz a square yard for inch, g a square metre otherwise, 0 to 10 000; null: as its kind has it.</summary>
    public decimal? Weight { get; init; }

    /// <summary>"height": a panel's height runs along the roll. Default any.</summary>
    public ClothWarp? Warp { get; init; }
}

/// <summary>How a cloth is sold: by length in whole steps, or by the whole roll.</summary>
internal sealed record ClothSaleRequest
{
    /// <summary>"length" or "roll". Required.</summary>
    [Required]
    public ClothSaleBy? By { get; init; }

    /// <summary>Sold by length: whole multiples of this. Required there.</summary>
    public Length? Step { get; init; }

    /// <summary>Sold by the roll: length of a roll. Required there.</summary>
    public Length? Length { get; init; }

    /// <summary>Money for one step or one roll. Required.</summary>
    [Required]
    public decimal? Price { get; init; }

    /// <summary>Lower prices for larger numbers, counts rising, prices falling; at most 20.</summary>
    public IReadOnlyList<PriceStepRequest?>? PriceFrom { get; init; }

    /// <summary>Sold by length: at most so many steps in all; null: any number.</summary>
    public int? AtMost { get; init; }

    /// <summary>Sold by the roll: at most so many rolls; null: any number.</summary>
    public int? ForSale { get; init; }
}

/// <summary>A remnant of cloth on hand; all of its width is usable.</summary>
internal sealed record RemnantRequest
{
    /// <summary>Unique within its cloth, at most 64 characters. Given out r1, r2, … where missing.</summary>
    public string? Id { get; init; }

    /// <summary>Across the roll; above 0, at most 100 m. Required.</summary>
    [Required]
    public Length? Width { get; init; }

    /// <summary>Along the roll; above 0, at most 100 m. Required.</summary>
    [Required]
    public Length? Length { get; init; }

    /// <summary>How many alike, 0 to 1 000 000. Default 1.</summary>
    public int? Quantity { get; init; }

    /// <summary>What using one counts as. Money. Default 0.</summary>
    public decimal? Value { get; init; }
}

/// <summary>What a cloth is sold by.</summary>
internal enum ClothSaleBy
{
    /// <summary>Whole steps of a length.</summary>
    Length,

    /// <summary>Whole rolls.</summary>
    Roll,
}

/// <summary>Whether panels must follow a cloth's warp.</summary>
internal enum ClothWarp
{
    /// <summary>They need not.</summary>
    Any,

    /// <summary>A panel's height runs along the roll.</summary>
    Height,
}
