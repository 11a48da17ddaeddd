using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>One cloth: how it is sold, and what remnants of it are there.</summary>
public sealed record ClothSupply
{
    /// <summary>Unique among the order's cloths.</summary>
    public required string Id { get; init; }

    /// <summary>What it is primed with when bought.</summary>
    public ClothGround Ground { get; init; }

    /// <summary>Grams a square metre; null: as common practice has its kind.</summary>
    public decimal? Weight { get; init; }

    /// <summary>What the painter calls it; null where nothing is said.</summary>
    public string? Name { get; init; }

    /// <summary>"linen", "cotton" …; null: serves only lines that ask for no kind.</summary>
    public string? Kind { get; init; }

    /// <summary>Full width of the roll, selvedges included.</summary>
    public required Length Width { get; init; }

    /// <summary>Lost at each side of the roll.</summary>
    public Length Selvedge { get; init; }

    /// <summary>How it is sold; null: only remnants.</summary>
    public ClothSale? Sale { get; init; }

    /// <summary>The id of the shop it is bought in; null: none that charges anything.</summary>
    public string? Shop { get; init; }

    /// <summary>What lies in the studio.</summary>
    public ImmutableArray<Remnant> Remnants { get; init; } = [];

    /// <summary>Whether a panel's height must run along the roll.</summary>
    public Grain Warp { get; init; }
}

/// <summary>What a cloth is primed with.</summary>
public enum ClothGround
{
    /// <summary>Nothing: raw.</summary>
    None,

    /// <summary>An acrylic ground.</summary>
    Acrylic,

    /// <summary>An oil ground.</summary>
    Oil,
}

/// <summary>How a cloth is sold: by length in whole steps, or by the whole roll.</summary>
public abstract record ClothSale
{
    private protected ClothSale()
    {
    }

    /// <summary>Lower prices for larger numbers of steps or rolls, counts rising, prices falling.</summary>
    public ImmutableArray<PriceStep> PriceFrom { get; init; } = [];

    /// <summary>So many steps or rolls are paid for already, whether cut into or not: of one level of the prices.</summary>
    internal int Paid { get; init; }
}

/// <summary>Sold by length.</summary>
/// <param name="Step">Sold in whole multiples of this.</param>
/// <param name="Price">Price of one step.</param>
/// <param name="AtMost">At most so many steps in all; null: any number.</param>
public sealed record SaleByLength(Length Step, Money Price, int? AtMost) : ClothSale;

/// <summary>Sold by the whole roll.</summary>
/// <param name="Length">Length of a roll.</param>
/// <param name="Price">Price of a roll.</param>
/// <param name="ForSale">How many can be bought; null: any number.</param>
public sealed record SaleByRoll(Length Length, Money Price, int? ForSale) : ClothSale;

/// <summary>A remnant of cloth on hand; all of its width is usable.</summary>
/// <param name="Id">Unique within its cloth.</param>
/// <param name="Width">Usable width, across the roll.</param>
/// <param name="Length">Length, along the roll.</param>
/// <param name="Quantity">How many alike; 1 or more.</param>
/// <param name="Value">What using one counts as.</param>
public sealed record Remnant(string Id, Length Width, Length Length, int Quantity, Money Value);
