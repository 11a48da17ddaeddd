using System.ComponentModel.DataAnnotations;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Wire.Reading;

namespace PanelService.Wire.Orders;

/// <summary>
/// An order: what is to be made, and what there is to make it from. Everything but <c>panels</c> may be left out; null
/// counts as left out.
/// </summary>
internal sealed record OrderRequest : IMeasuredRequest
{
    /// <summary>The batch's name, at most 200 characters.</summary>
    public string? Title { get; init; }

    /// <summary>The unit bare numbers are in. Default: inch, with a warning in the plan.</summary>
    public LengthUnit? Units { get; init; }

    /// <summary>ISO 4217 code. Default: EUR, with a warning in the plan.</summary>
    public string? Currency { get; init; }

    /// <summary>What is to be made: 1 to 500 lines. Required.</summary>
    [Required]
    public IReadOnlyList<PanelRequest?>? Panels { get; init; }

    /// <summary>Panels to fill spare board with, never a reason to buy a sheet; at most 500.</summary>
    public IReadOnlyList<WishRequest?>? Wishes { get; init; }

    /// <summary>Boards to buy and on hand; at most 200.</summary>
    public IReadOnlyList<BoardRequest?>? Boards { get; init; }

    /// <summary>Cloths to buy and on hand; at most 200.</summary>
    public IReadOnlyList<ClothRequest?>? Cloths { get; init; }

    /// <summary>Adhesives: the cheapest that covers everything is used, unless a line names one; at most 50.</summary>
    public IReadOnlyList<LiquidRequest?>? Adhesives { get; init; }

    /// <summary>Primers: the cheapest that covers everything is used, unless a line names one; at most 50.</summary>
    public IReadOnlyList<LiquidRequest?>? Primers { get; init; }

    /// <summary>How board is cut.</summary>
    public SawRequest? Saw { get; init; }

    /// <summary>How cloth is cut and panels are pressed.</summary>
    public BenchRequest? Bench { get; init; }

    /// <summary>When and by how many the bench is worked.</summary>
    public ScheduleRequest? Schedule { get; init; }

    /// <summary>What panels must bear, what air they must stand, how cradles are made.</summary>
    public StrengthRequest? Strength { get; init; }

    /// <summary>Strips that cradles are cut from, alike but for their length; at most 200.</summary>
    public IReadOnlyList<StripRequest?>? Strips { get; init; }

    /// <summary>What work counts as.</summary>
    public LabourRequest? Labour { get; init; }

    /// <summary>Costs of the batch as a whole; at most 100.</summary>
    public IReadOnlyList<OverheadRequest?>? Overheads { get; init; }

    /// <summary>
    /// Money for the whole shop trip, tax and deliveries included: the lines then say what is made at most, and the panels
    /// that are worth most together are planned. What is on hand counts nothing. Not together with spares or mayBuy.
    /// </summary>
    public decimal? Budget { get; init; }

    /// <summary>The shops that charge for getting goods from there; at most 50.</summary>
    public IReadOnlyList<ShopRequest?>? Shops { get; init; }

    /// <summary>Tax on top of the prices; null: prices are as they are paid.</summary>
    public TaxRequest? Tax { get; init; }

    /// <summary>What the work wears out; at most 100.</summary>
    public IReadOnlyList<ConsumableRequest?>? Consumables { get; init; }

    /// <summary>Tools whose price is spread over the panels made; at most 100.</summary>
    public IReadOnlyList<ToolRequest?>? Tools { get; init; }

    /// <summary>How much work the search may do. Default: steady.</summary>
    public Effort? Effort { get; init; }
}

/// <summary>What work counts as.</summary>
internal sealed record LabourRequest
{
    /// <summary>Money for an hour. Default 0.</summary>
    public decimal? PerHour { get; init; }
}

/// <summary>A cost of the batch as a whole.</summary>
internal sealed record OverheadRequest
{
    /// <summary>What it is for, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>Money. Default 0.</summary>
    public decimal? Cost { get; init; }
}
