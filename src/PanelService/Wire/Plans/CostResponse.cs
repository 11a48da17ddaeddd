using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>
/// The tally: cash + onHandUsed = (used − labour − overheads − consumables − tools) + backOnRack, and used is the sum of
/// the lines' totals; exact to the cent.
/// </summary>
internal sealed record CostResponse
{
    /// <summary>What the shop trip costs: the sum of buy.</summary>
    public required decimal Cash { get; init; }

    /// <summary>The value of the on-hand goods that are used.</summary>
    public required decimal OnHandUsed { get; init; }

    /// <summary>What this batch truly consumes, with labour and overheads.</summary>
    public required decimal Used { get; init; }

    /// <summary>The part of cash and of on-hand value that is kept for later.</summary>
    public required decimal BackOnRack { get; init; }

    /// <summary>One per line.</summary>
    public required IReadOnlyList<PanelCostResponse> Panels { get; init; }

    /// <summary>Saved against the shop over all lines with a shop price.</summary>
    public decimal? SavedTotal { get; init; }

    /// <summary>That as a share of the shop's prices.</summary>
    public decimal? SavedShare { get; init; }

    /// <summary>What was wasted.</summary>
    public required WasteResponse Waste { get; init; }

    /// <summary>What the work wore out, in the order of the order.</summary>
    public required IReadOnlyList<ConsumableUseResponse> Consumables { get; init; }

    /// <summary>What the batch bears of each tool, in the order of the order.</summary>
    public required IReadOnlyList<ToolUseResponse> Tools { get; init; }
}

/// <summary>What one line costs; the parts are of the whole line and sum to its total.</summary>
internal sealed record PanelCostResponse
{
    /// <summary>The line's mark.</summary>
    public required string Mark { get; init; }

    /// <summary>The line's quantity, without spares.</summary>
    public required int Quantity { get; init; }

    /// <summary>Board, with its share of the waste.</summary>
    public required decimal Board { get; init; }

    /// <summary>Cloth, with its share of the waste.</summary>
    public required decimal Cloth { get; init; }

    /// <summary>Adhesive.</summary>
    public required decimal Adhesive { get; init; }

    /// <summary>Primer.</summary>
    public required decimal Primer { get; init; }

    /// <summary>Cradle strips.</summary>
    public required decimal Strips { get; init; }

    /// <summary>Panels bought ready-made.</summary>
    public required decimal Ready { get; init; }

    /// <summary>What shops charge for delivery, shared by area.</summary>
    public required decimal Delivery { get; init; }

    /// <summary>Labour.</summary>
    public required decimal Labour { get; init; }

    /// <summary>Overheads, shared by area.</summary>
    public required decimal Overheads { get; init; }

    /// <summary>Consumables.</summary>
    public required decimal Consumables { get; init; }

    /// <summary>Tools.</summary>
    public required decimal Tools { get; init; }

    /// <summary>Total ÷ quantity, rounded for reading.</summary>
    public required decimal Each { get; init; }

    /// <summary>The sum of the parts.</summary>
    public required decimal Total { get; init; }

    /// <summary>The paper-and-pencil figure for one panel.</summary>
    public required AreaCostResponse ByArea { get; init; }

    /// <summary>What a comparable ready-made panel costs, where known.</summary>
    public decimal? ShopPrice { get; init; }

    /// <summary>Saved on one, where the shop's price is known.</summary>
    public decimal? SavedEach { get; init; }

    /// <summary>That as a share of the shop's price.</summary>
    public decimal? SavedShare { get; init; }
}

/// <summary>Paper and pencil, for one panel: price × the panel's area ÷ the sheet's; for cloth with margins ÷ the roll's.</summary>
/// <param name="Board">Board.</param>
/// <param name="Cloth">Cloth.</param>
/// <param name="Adhesive">Adhesive.</param>
/// <param name="Primer">Primer.</param>
/// <param name="Each">All of them.</param>
internal sealed record AreaCostResponse(decimal Board, decimal Cloth, decimal Adhesive, decimal Primer, decimal Each);

/// <summary>What all sheets and cloths together lose.</summary>
/// <param name="Kerf">Area of board turned to dust.</param>
/// <param name="Trim">Area of board lost at factory edges.</param>
/// <param name="Scrap">Area of board leftovers too small to keep.</param>
/// <param name="Cloth">Area of cloth that is neither piece nor kept.</param>
/// <param name="BoardCost">What the wasted board cost, by area.</param>
/// <param name="ClothCost">What the wasted cloth cost, by area.</param>
internal sealed record WasteResponse(decimal Kerf, decimal Trim, decimal Scrap, decimal Cloth, decimal BoardCost, decimal ClothCost);

/// <summary>How much of a consumable the batch wears out.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Per">What wears it out.</param>
/// <param name="Amount">How many metres, feet or panels it is used for, rounded to 6 decimals.</param>
/// <param name="PerUnit">Price ÷ what it lasts: money for one metre, foot or panel, rounded to 6 decimals.</param>
/// <param name="Cost">What that comes to: price × amount ÷ what it lasts.</param>
internal sealed record ConsumableUseResponse(string Name, WornBy Per, decimal Amount, decimal PerUnit, decimal Cost);

/// <summary>What the batch bears of a tool.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Panels">How many panels bear a part of its price: those made, at most those it is spread over.</param>
/// <param name="Cost">What that comes to.</param>
internal sealed record ToolUseResponse(string Name, int Panels, decimal Cost);

/// <summary>One line of the shopping list.</summary>
/// <param name="Id">The good's id; a ready-made panel's is its mark, a delivery's its shop's id.</param>
/// <param name="Name">What to ask for.</param>
/// <param name="Quantity">How many.</param>
/// <param name="SaleUnit">Of what.</param>
/// <param name="UnitPrice">Price of one.</param>
/// <param name="Cost">What the line costs.</param>
internal sealed record PurchaseResponse(string Id, string Name, int Quantity, SaleUnit SaleUnit, decimal UnitPrice, decimal Cost);

/// <summary>Goods bought beyond what is cut, because that is cheaper; they go back on the rack whole and stand in buy.</summary>
/// <param name="Id">The board or cloth.</param>
/// <param name="SaleUnit">Sheets, steps or rolls.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Cost">What they cost.</param>
/// <param name="Reason">So many cost less together, or nothing is charged for delivery then.</param>
internal sealed record SurplusResponse(string Id, SaleUnit SaleUnit, int Quantity, decimal Cost, SurplusReason Reason);

/// <summary>A shop that charges, where something is bought there.</summary>
/// <param name="Shop">Its id.</param>
/// <param name="Goods">What the goods bought there come to.</param>
/// <param name="Charge">What is charged on top; 0 where the goods come to enough.</param>
internal sealed record DeliveryResponse(string Shop, decimal Goods, decimal Charge);

/// <summary>The tax that is in the plan's prices.</summary>
/// <param name="Percent">The percentage, put on the price of one and rounded there, halves up.</param>
/// <param name="InCash">How much of the cash is tax.</param>
internal sealed record TaxResponse(decimal Percent, decimal InCash);
