using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>Strip of one length that can be bought, or lies in the studio, or both.</summary>
public sealed record StripSupply
{
    /// <summary>Unique among the order's strips.</summary>
    public required string Id { get; init; }

    /// <summary>What the painter calls it; null where nothing is said.</summary>
    public string? Name { get; init; }

    /// <summary>Its length; above zero.</summary>
    public required Length Length { get; init; }

    /// <summary>Price of one; zero where none is for sale.</summary>
    public Money Price { get; init; }

    /// <summary>Lower prices for larger numbers, counts rising, prices falling.</summary>
    public ImmutableArray<PriceStep> PriceFrom { get; init; } = [];

    /// <summary>The id of the shop it is bought in; null: none that charges anything.</summary>
    public string? Shop { get; init; }

    /// <summary>How many can be bought; null: any number; 0: none.</summary>
    public int? ForSale { get; init; }

    /// <summary>How many are in the studio already.</summary>
    public int OnHand { get; init; }

    /// <summary>What using one on-hand piece counts as.</summary>
    public Money Value { get; init; }
}
