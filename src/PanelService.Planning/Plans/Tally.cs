using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>
/// What the batch costs. Exact to the cent:
/// <c>Cash + OnHandUsed = (Used − labour − overheads − consumables − tools) + BackOnRack</c>, and
/// <c>Used</c> is the sum of the lines' totals.
/// </summary>
public sealed record Tally
{
    /// <summary>What the shop trip costs: the sum of the purchases.</summary>
    public required Money Cash { get; init; }

    /// <summary>The value of the on-hand goods that are used (of liquids: of the part that is used).</summary>
    public required Money OnHandUsed { get; init; }

    /// <summary>What the batch truly consumes, with labour and overheads.</summary>
    public required Money Used { get; init; }

    /// <summary>The part of cash and on-hand value that is kept for later.</summary>
    public required Money BackOnRack { get; init; }

    /// <summary>One per line of the plan, in its order.</summary>
    public required ImmutableArray<LineCost> Lines { get; init; }

    /// <summary>Saved against the shop over all lines with a shop price; null where none has one.</summary>
    public Money? SavedTotal { get; init; }

    /// <summary>That as a share of the shop's prices, below 1; null where no line has a price above zero.</summary>
    public decimal? SavedShare { get; init; }

    /// <summary>What was wasted.</summary>
    public required WasteTally Waste { get; init; }

    /// <summary>What the work wore out, in the order of the order.</summary>
    public ImmutableArray<ConsumableUse> Consumables { get; init; } = [];

    /// <summary>What the batch bears of each tool, in the order of the order.</summary>
    public ImmutableArray<ToolUse> Tools { get; init; } = [];
}

/// <summary>What one line costs, split into its parts; all of the line together, whole cents.</summary>
public sealed record LineCost
{
    /// <summary>The line's or wish's mark.</summary>
    public required string Mark { get; init; }

    /// <summary>The line's quantity (without spares): what the total is divided by.</summary>
    public required int Quantity { get; init; }

    /// <summary>Board, with its share of the waste.</summary>
    public Money Board { get; init; }

    /// <summary>Cloth, with its share of the waste.</summary>
    public Money Cloth { get; init; }

    /// <summary>Adhesive.</summary>
    public Money Adhesive { get; init; }

    /// <summary>Primer.</summary>
    public Money Primer { get; init; }

    /// <summary>Cradle strips.</summary>
    public Money Strips { get; init; }

    /// <summary>Panels bought ready-made.</summary>
    public Money Ready { get; init; }

    /// <summary>What shops charge for delivery, shared by area.</summary>
    public Money Delivery { get; init; }

    /// <summary>Labour.</summary>
    public Money Labour { get; init; }

    /// <summary>Overheads, shared by area.</summary>
    public Money Overheads { get; init; }

    /// <summary>Consumables.</summary>
    public Money Consumables { get; init; }

    /// <summary>Tools.</summary>
    public Money Tools { get; init; }

    /// <summary>The pencil's figure, per panel.</summary>
    public required AreaCost ByArea { get; init; }

    /// <summary>What a comparable ready-made panel costs; null where unknown.</summary>
    public Money? ShopPrice { get; init; }

    /// <summary>The sum of the parts.</summary>
    public Money Total =>
        Board + Cloth + Adhesive + Primer + Strips + Ready + Delivery + Labour + Overheads + Consumables + Tools;
}

/// <summary>
/// Paper and pencil: price × the panel's area ÷ the sheet's; for cloth, with margins, ÷ the roll's full width
/// × length. Minor units of one panel, unrounded.
/// </summary>
/// <param name="Board">Board, in minor units.</param>
/// <param name="Cloth">Cloth, in minor units.</param>
/// <param name="Adhesive">Adhesive, in minor units.</param>
/// <param name="Primer">Primer, in minor units.</param>
public sealed record AreaCost(decimal Board, decimal Cloth, decimal Adhesive, decimal Primer)
{
    /// <summary>The sum, in minor units.</summary>
    public decimal Each => Board + Cloth + Adhesive + Primer;
}

/// <summary>What all sheets and cloths together lose, as areas and as money.</summary>
/// <param name="Kerf">Board turned to dust.</param>
/// <param name="Trim">Board lost at factory edges.</param>
/// <param name="Scrap">Board leftovers too small to keep.</param>
/// <param name="Cloth">Cloth that is neither piece nor kept, selvedges included.</param>
/// <param name="BoardCost">What the wasted board cost, by area.</param>
/// <param name="ClothCost">What the wasted cloth cost, by area.</param>
public sealed record WasteTally(Area Kerf, Area Trim, Area Scrap, Area Cloth, Money BoardCost, Money ClothCost);
