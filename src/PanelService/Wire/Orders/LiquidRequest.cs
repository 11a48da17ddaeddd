using System.ComponentModel.DataAnnotations;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Orders;

/// <summary>An adhesive or a primer.</summary>
internal sealed record LiquidRequest
{
    /// <summary>Unique among the adhesives, or among the primers; at most 64 characters. Required.</summary>
    [Required]
    public string? Id { get; init; }

    /// <summary>What the painter calls it, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>Coats, 1 to 100. Default 1.</summary>
    public int? Coats { get; init; }

    /// <summary>2 where the back is coated or sealed with it too. Default 1.</summary>
    public int? Faces { get; init; }

    /// <summary>How much of what is brushed on is water or thinner added, in percent, 0 to 90. Default 0.</summary>
    public decimal? Thinning { get; init; }

    /// <summary>What is lost in pot, brush and roller, in percent of what is brushed on, 0 to 100. Default 0.</summary>
    public decimal? Loss { get; init; }

    /// <summary>What it is made with: water, oil or solvent. Default water.</summary>
    public LiquidBase? Base { get; init; }

    /// <summary>An adhesive's open time: within how many minutes the weight must be on, 1 to 1000; null: the bench's.</summary>
    public decimal? OpenMinutes { get; init; }

    /// <summary>How long a coat dries before it is sanded, 0 to 1000 hours; null: the bench's.</summary>
    public decimal? DryHours { get; init; }

    /// <summary>Not to be used below so many °C, -40 to 60; null: 10 where it is made with water, else not said.</summary>
    public decimal? LeastTemperature { get; init; }

    /// <summary>How far it goes in one coat. Required.</summary>
    [Required]
    public CoverageRequest? Coverage { get; init; }

    /// <summary>What it can be bought in; at most 50. Required.</summary>
    [Required]
    public IReadOnlyList<ContainerRequest?>? Containers { get; init; }

    /// <summary>The id of the shop it is bought in; null: one that charges nothing.</summary>
    public string? Shop { get; init; }

    /// <summary>The volume in the studio already. Default 0.</summary>
    public decimal? OnHand { get; init; }

    /// <summary>What all that is on hand counts as. Money. Default 0.</summary>
    public decimal? Value { get; init; }
}

/// <summary>How far a liquid goes.</summary>
internal sealed record CoverageRequest
{
    /// <summary>in² for inch, cm² otherwise; 0.001 to 1 000 000 000. Required.</summary>
    [Required]
    public decimal? Area { get; init; }

    /// <summary>The volume that covers it: US fl oz for inch, mL otherwise; 0.000001 to 1 000 000. Required.</summary>
    [Required]
    public decimal? Volume { get; init; }
}

/// <summary>A bottle, tin or tub.</summary>
internal sealed record ContainerRequest
{
    /// <summary>US fl oz for inch, mL otherwise; 0.000001 to 1 000 000. Required.</summary>
    [Required]
    public decimal? Volume { get; init; }

    /// <summary>Money. Required.</summary>
    [Required]
    public decimal? Price { get; init; }

    /// <summary>Lower prices for larger numbers, counts rising, prices falling; at most 20.</summary>
    public IReadOnlyList<PriceStepRequest?>? PriceFrom { get; init; }
}
