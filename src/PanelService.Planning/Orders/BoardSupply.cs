using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Strength;

namespace PanelService.Planning.Orders;

/// <summary>One board that can be bought by the sheet, or lies in the studio, or both.</summary>
public sealed record BoardSupply
{
    /// <summary>Unique among the order's boards.</summary>
    public required string Id { get; init; }

    /// <summary>What the painter calls it; null where nothing is said.</summary>
    public string? Name { get; init; }

    /// <summary>"hardboard", "plywood" …; null: serves only lines that ask for no kind.</summary>
    public string? Kind { get; init; }

    /// <summary>Thickness as measured or nominal; a board within 0.5 mm of a nominal thickness counts as that.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Full width of the sheet.</summary>
    public required Length Width { get; init; }

    /// <summary>Full height of the sheet.</summary>
    public required Length Height { get; init; }

    /// <summary>Price of one sheet; zero where none is for sale.</summary>
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

    /// <summary>What is lost at each factory edge; null: the saw's.</summary>
    public Length? EdgeTrim { get; init; }

    /// <summary>Whether the face grain binds panels upright.</summary>
    public Grain Grain { get; init; }

    /// <summary>What it is made of, where the painter knows better than the table; null: as the table has its kind.</summary>
    public BoardMaterial? Material { get; init; }
}
