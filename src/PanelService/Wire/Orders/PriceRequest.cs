using System.ComponentModel.DataAnnotations;

namespace PanelService.Wire.Orders;

/// <summary>A cheaper price for a larger number: from so many on, every one of them costs this.</summary>
internal sealed record PriceStepRequest
{
    /// <summary>From so many on, 2 to 1 000 000; each entry more than the one before. Required.</summary>
    [Required]
    public int? Count { get; init; }

    /// <summary>Money for each, the first ones included; less than before. Required.</summary>
    [Required]
    public decimal? Price { get; init; }
}

/// <summary>Where goods are bought, and what it takes to get them from there.</summary>
internal sealed record ShopRequest
{
    /// <summary>Unique among the shops, at most 64 characters; goods name it. Required.</summary>
    [Required]
    public string? Id { get; init; }

    /// <summary>What the painter calls it, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>Money, paid once where anything is bought there: delivery, or the way. Default 0.</summary>
    public decimal? Charge { get; init; }

    /// <summary>Money: not charged where the goods bought there come to this or more, tax included; null: always charged.</summary>
    public decimal? FreeFrom { get; init; }
}

/// <summary>Tax on top of every price that is paid in a shop: goods, ready-made panels, deliveries, consumables and tools.</summary>
internal sealed record TaxRequest
{
    /// <summary>
    /// Percent, 0 to 100. It is put on the price of one (a sheet, a step, a bottle, a panel, a delivery) and rounded there to
    /// the currency's minor unit, halves up. Required.
    /// </summary>
    [Required]
    public decimal? Percent { get; init; }
}
