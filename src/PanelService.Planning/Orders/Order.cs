using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Orders;

/// <summary>
/// What the painter wants made and what there is to make it from. Whoever builds one has checked the shape
/// (sizes above zero, unique marks and ids, counts within their limits); the planner relies on it.
/// </summary>
public sealed record Order
{
    /// <summary>The batch's name.</summary>
    public string Title { get; init; } = "";

    /// <summary>The unit bare numbers were given in and answers are shown in.</summary>
    public required LengthUnit Units { get; init; }

    /// <summary>The currency of every amount.</summary>
    public required Currency Currency { get; init; }

    /// <summary>What is to be made; 1 to 500 lines.</summary>
    public required ImmutableArray<PanelLine> Panels { get; init; }

    /// <summary>What spare board may be filled with.</summary>
    public ImmutableArray<Wish> Wishes { get; init; } = [];

    /// <summary>Boards to buy and on hand.</summary>
    public ImmutableArray<BoardSupply> Boards { get; init; } = [];

    /// <summary>Cloths to buy and on hand.</summary>
    public ImmutableArray<ClothSupply> Cloths { get; init; } = [];

    /// <summary>Adhesives, alternatives to one another.</summary>
    public ImmutableArray<LiquidSupply> Adhesives { get; init; } = [];

    /// <summary>Primers, alternatives to one another.</summary>
    public ImmutableArray<LiquidSupply> Primers { get; init; } = [];

    /// <summary>The saw.</summary>
    public SawSettings Saw { get; init; } = new();

    /// <summary>The bench.</summary>
    public BenchSettings Bench { get; init; } = new();

    /// <summary>When and by how many the bench is worked.</summary>
    public ScheduleSettings Schedule { get; init; } = new();

    /// <summary>What panels must bear and what air they must stand.</summary>
    public StrengthSettings Strength { get; init; } = new();

    /// <summary>Strip goods that cradles are cut from.</summary>
    public ImmutableArray<StripSupply> Strips { get; init; } = [];

    /// <summary>What an hour of work counts as; zero: work is not counted.</summary>
    public Money LabourPerHour { get; init; }

    /// <summary>Costs of the batch as a whole.</summary>
    public ImmutableArray<Overhead> Overheads { get; init; } = [];

    /// <summary>What the work wears out.</summary>
    public ImmutableArray<Consumable> Consumables { get; init; } = [];

    /// <summary>Tools whose price is spread over the panels made.</summary>
    public ImmutableArray<Tool> Tools { get; init; } = [];

    /// <summary>The shops that charge for getting goods from there.</summary>
    public ImmutableArray<Shop> Shops { get; init; } = [];

    /// <summary>Percent of tax that comes on top of every price paid in a shop; 0: prices are as they are paid.</summary>
    public decimal TaxPercent { get; init; }

    /// <summary>The cash there is: then the lines say what is made at most. Null: everything is made, whatever it costs.</summary>
    public Money? Budget { get; init; }

    /// <summary>How much work the search may do.</summary>
    public Effort Effort { get; init; } = Effort.Steady;
}
