using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Measures;

namespace PanelService.Wire.Orders;

/// <summary>A board that can be bought by the sheet, or lies in the studio, or both.</summary>
internal sealed record BoardRequest
{
    /// <summary>Unique among the boards, at most 64 characters. Required.</summary>
    [Required]
    public string? Id { get; init; }

    /// <summary>What the painter calls it, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>"hardboard", "plywood" …; null: serves only lines that ask for no kind.</summary>
    public string? Kind { get; init; }

    /// <summary>Above 0, at most 1 m. Required.</summary>
    [Required]
    public Length? Thickness { get; init; }

    /// <summary>Width of the whole sheet; 1 mm to 10 m. Required.</summary>
    [Required]
    public Length? Width { get; init; }

    /// <summary>Height of the whole sheet; 1 mm to 10 m. Required.</summary>
    [Required]
    public Length? Height { get; init; }

    /// <summary>Money for one sheet. Required unless forSale is 0.</summary>
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

    /// <summary>What is lost at each factory edge; null: the saw's.</summary>
    public Length? EdgeTrim { get; init; }

    /// <summary>kg/m³, 50 to 5000; null: as its kind has it.</summary>
    public decimal? Density { get; init; }

    /// <summary>Modulus of elasticity in bending, MPa (N/mm²), 10 to 500 000; null: as its kind has it.</summary>
    public decimal? Elasticity { get; init; }

    /// <summary>Modulus of elasticity across the face grain, MPa, 10 to 500 000, where elasticity is along it; null: as its kind has it, or the same where elasticity is given alone.</summary>
    public decimal? ElasticityAcross { get; init; }

    /// <summary>Shear modulus in the board's plane, MPa, 1 to 200 000; null: as its kind has it, or as follows from the others where they are given.</summary>
    public decimal? Shear { get; init; }

    /// <summary>Poisson's ratio, 0 to 0.49; null: as its kind has it.</summary>
    public decimal? Poisson { get; init; }

    /// <summary>How much longer it is in air of 80 % relative humidity than in air of 35 %, in percent, 0 to 10; null: as its kind has it.</summary>
    public decimal? Expansion { get; init; }

    /// <summary>"height": the face grain runs along the height, and panels stay upright. Default none.</summary>
    public BoardGrain? Grain { get; init; }
}

/// <summary>A board's face grain.</summary>
internal enum BoardGrain
{
    /// <summary>None to heed.</summary>
    None,

    /// <summary>Along the board's height.</summary>
    Height,
}
