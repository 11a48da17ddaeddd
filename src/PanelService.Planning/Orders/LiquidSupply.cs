using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>An adhesive or a primer: how far it goes and how it is sold.</summary>
public sealed record LiquidSupply
{
    /// <summary>Unique among the order's liquids of its sort.</summary>
    public required string Id { get; init; }

    /// <summary>What the painter calls it; null where nothing is said.</summary>
    public string? Name { get; init; }

    /// <summary>Coats; 1 for an adhesive.</summary>
    public int Coats { get; init; } = 1;

    /// <summary>An area that <see cref="CoverageVolume"/> covers once.</summary>
    public required Area CoverageArea { get; init; }

    /// <summary>The volume that covers <see cref="CoverageArea"/> once.</summary>
    public required Volume CoverageVolume { get; init; }

    /// <summary>What it can be bought in.</summary>
    public ImmutableArray<Container> Containers { get; init; } = [];

    /// <summary>The id of the shop it is bought in; null: none that charges anything.</summary>
    public string? Shop { get; init; }

    /// <summary>What is in the studio already.</summary>
    public Volume OnHand { get; init; }

    /// <summary>What all of <see cref="OnHand"/> counts as.</summary>
    public Money Value { get; init; }
}

/// <summary>A bottle, tin or tub.</summary>
/// <param name="Volume">What is in it.</param>
/// <param name="Price">Its price.</param>
public sealed record Container(Volume Volume, Money Price)
{
    /// <summary>Lower prices for larger numbers, counts rising, prices falling.</summary>
    public ImmutableArray<PriceStep> PriceFrom { get; init; } = [];
}
