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

    /// <summary>Faces: 2 where the back is sealed with it too.</summary>
    public int Faces { get; init; } = 1;

    /// <summary>How much of what is brushed on is water or thinner added, in percent, 0 to 90.</summary>
    public decimal Thinning { get; init; }

    /// <summary>What is lost in pot, brush and roller, in percent of what is brushed on, 0 to 100.</summary>
    public decimal Loss { get; init; }

    /// <summary>What it is made with.</summary>
    public LiquidBase Base { get; init; }

    /// <summary>Within how many minutes the weight must be on; null: as the bench has it.</summary>
    public decimal? OpenMinutes { get; init; }

    /// <summary>How long a coat dries, hours; null: as the bench has it.</summary>
    public decimal? DryHours { get; init; }

    /// <summary>Not to be used below so many °C; null: as common practice has its base.</summary>
    public decimal? LeastTemperature { get; init; }

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

/// <summary>What a liquid is made with.</summary>
public enum LiquidBase
{
    /// <summary>Water: dispersions, acrylic grounds, hide glue.</summary>
    Water,

    /// <summary>Drying oil.</summary>
    Oil,

    /// <summary>A solvent that evaporates.</summary>
    Solvent,
}

/// <summary>A bottle, tin or tub.</summary>
/// <param name="Volume">What is in it.</param>
/// <param name="Price">Its price.</param>
public sealed record Container(Volume Volume, Money Price)
{
    /// <summary>Lower prices for larger numbers, counts rising, prices falling.</summary>
    public ImmutableArray<PriceStep> PriceFrom { get; init; } = [];
}
