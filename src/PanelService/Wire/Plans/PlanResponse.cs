using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Plans;

/// <summary>
/// A plan: what to buy, how to cut each sheet and each cloth, what each panel costs, and the proof. Lengths are numbers in
/// the order's units rounded to 6 decimals; areas are in² for inch and cm² otherwise; volumes US fl oz or mL.
/// </summary>
internal sealed record PlanResponse
{
    /// <summary>The plan's id. A plan that is not kept is known by it in the log alone.</summary>
    public required string Id { get; init; }

    /// <summary>The batch's name.</summary>
    public required string Title { get; init; }

    /// <summary>The unit of every length.</summary>
    public required LengthUnit Units { get; init; }

    /// <summary>ISO 4217 code of every amount.</summary>
    public required string Currency { get; init; }

    /// <summary>"done", or "stopped" where the search was ended on request.</summary>
    public required PlanState State { get; init; }

    /// <summary>Whether a stop or the clock cut the search short; such a plan need not repeat.</summary>
    public required bool StoppedEarly { get; init; }

    /// <summary>The lines in their order, then the wishes that are made.</summary>
    public required IReadOnlyList<PanelResponse> Panels { get; init; }

    /// <summary>The whole batch: boards, cloth, liquids and ready-made panels together.</summary>
    public required ProofResponse Proof { get; init; }

    /// <summary>How each sheet is cut.</summary>
    public required IReadOnlyList<SheetResponse> Sheets { get; init; }

    /// <summary>The boards' part of the proof.</summary>
    public required ProofResponse BoardProof { get; init; }

    /// <summary>The cuts in the order they are made, by fence setting.</summary>
    public required IReadOnlyList<SawStepResponse> SawRun { get; init; }

    /// <summary>How many settings the saw run has, and how few there could be.</summary>
    public required SawProofResponse SawProof { get; init; }

    /// <summary>Panels of a line that could not all be cut to their size at one setting.</summary>
    public required IReadOnlyList<UnmatchedResponse> Unmatched { get; init; }

    /// <summary>How far the panels cut may come out from their cut size, a fence set to ± 1/64 in or 0.5 mm.</summary>
    public required IReadOnlyList<ToleranceResponse> Tolerances { get; init; }

    /// <summary>What the panels weigh and bear: one a line and board it is cut from.</summary>
    public required IReadOnlyList<StrengthResponse> Strength { get; init; }

    /// <summary>What batch and pack weigh.</summary>
    public required WeightsResponse Weights { get; init; }

    /// <summary>How panels that sag too much could be stiffened, and what that adds to the cost; left out where none does. A remark, no part of the proof.</summary>
    public StiffeningResponse? Stiffening { get; init; }

    /// <summary>How each cloth is cut.</summary>
    public required IReadOnlyList<ClothResponse> Cloth { get; init; }

    /// <summary>The cloths' part of the proof.</summary>
    public required ProofResponse ClothProof { get; init; }

    /// <summary>How the strips of the cradles are cut.</summary>
    public required IReadOnlyList<StripResponse> Strips { get; init; }

    /// <summary>The strips' part of the proof.</summary>
    public required ProofResponse StripProof { get; init; }

    /// <summary>Adhesives, then primers.</summary>
    public required IReadOnlyList<LiquidResponse> Liquids { get; init; }

    /// <summary>What is done at the bench, and when.</summary>
    public required BenchPlanResponse BenchPlan { get; init; }

    /// <summary>What wants care in this batch; only what its goods and surfaces make matter.</summary>
    public required IReadOnlyList<WarningResponse> Care { get; init; }

    /// <summary>The shopping list.</summary>
    public required IReadOnlyList<PurchaseResponse> Buy { get; init; }

    /// <summary>What it takes from stock, by the pencil ids; left out where it takes nothing from there.</summary>
    public IReadOnlyList<FromStockResponse>? FromStock { get; init; }

    /// <summary>What is bought beyond what is cut, because that is cheaper.</summary>
    public required IReadOnlyList<SurplusResponse> Surplus { get; init; }

    /// <summary>The shops that charge, of those that something is bought in.</summary>
    public required IReadOnlyList<DeliveryResponse> Deliveries { get; init; }

    /// <summary>The tax in all prices of the plan; left out where the order names none.</summary>
    public TaxResponse? Tax { get; init; }

    /// <summary>The tally.</summary>
    public required CostResponse Cost { get; init; }

    /// <summary>What the order's budget is enough for; left out where it has none.</summary>
    public BudgetResponse? Budget { get; init; }

    /// <summary>
    /// Formats that what is left is enough for (kept leftovers, unused stock, what was bought beyond need, left liquids):
    /// they cost only the work. Each by itself, had it all that is left.
    /// </summary>
    public required IReadOnlyList<SparePanelResponse> CouldStillMake { get; init; }

    /// <summary>What the painter should know.</summary>
    public required IReadOnlyList<WarningResponse> Warnings { get; init; }
}

/// <summary>What became of one line, or of one wish that is made.</summary>
/// <param name="Mark">What is drawn on the layouts.</param>
/// <param name="Width">Nominal width as it hangs.</param>
/// <param name="Height">Nominal height as it hangs.</param>
/// <param name="CutWidth">The width it is cut to: nominal − undersize at least.</param>
/// <param name="CutHeight">The height it is cut to.</param>
/// <param name="Quantity">How many are wanted; of a wish, how many are made.</param>
/// <param name="Spares">Made on top.</param>
/// <param name="Made">How many are cut.</param>
/// <param name="Bought">How many are bought ready-made.</param>
/// <param name="Surface">The finish.</param>
/// <param name="Thicknesses">The board thicknesses used, rising; empty where no board is cut.</param>
/// <param name="Wish">Whether it is a wish.</param>
internal sealed record PanelResponse(
    string Mark,
    decimal Width,
    decimal Height,
    decimal CutWidth,
    decimal CutHeight,
    int Quantity,
    int Spares,
    int Made,
    int Bought,
    Surface Surface,
    IReadOnlyList<decimal> Thicknesses,
    bool Wish);

/// <summary>What is spent, and what no plan can spend less than.</summary>
/// <param name="Spent">Bought goods at their price, on-hand goods at their value.</param>
/// <param name="LeastPossible">A true lower bound.</param>
/// <param name="Proven">Whether the two are equal, to the cent.</param>
internal sealed record ProofResponse(decimal Spent, decimal LeastPossible, bool Proven);

/// <summary>Something the painter should know.</summary>
/// <param name="Id">Stable, lower case with hyphens.</param>
/// <param name="Text">In words.</param>
internal sealed record WarningResponse(string Id, string Text);

/// <summary>What a plan takes of a heap in stock.</summary>
/// <param name="Id">What is written on it in pencil.</param>
/// <param name="Count">How many pieces.</param>
/// <param name="Volume">How much of a liquid; left out where several heaps give it together.</param>
internal sealed record FromStockResponse(string Id, int? Count, decimal? Volume);

/// <summary>A format that what is left is enough for.</summary>
/// <param name="Mark">The line of the order it is another one of; left out for a standard format.</param>
/// <param name="Width">Width as it hangs.</param>
/// <param name="Height">Height as it hangs.</param>
/// <param name="Surface">The finish.</param>
/// <param name="Count">How many, packed with straight cuts.</param>
internal sealed record SparePanelResponse(string? Mark, decimal Width, decimal Height, Surface Surface, int Count);

/// <summary>What a budget is enough for. The plan is of what is made.</summary>
/// <param name="Cash">The budget.</param>
/// <param name="By">"worth": panels count by worth or shop price; "area": a line has neither, and all count by area.</param>
/// <param name="Worth">What the panels made are worth together: money, or area.</param>
/// <param name="MostPossible">No choice of panels within the budget is worth more.</param>
/// <param name="Proven">Whether the two are equal.</param>
/// <param name="Lines">Per line of the order: how many were wanted, and how many are made.</param>
internal sealed record BudgetResponse(decimal Cash, string By, decimal Worth, decimal MostPossible, bool Proven, IReadOnlyList<BudgetLineResponse> Lines);

/// <summary>A line of an order with a budget.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Wanted">How many the order asks for at most.</param>
/// <param name="Made">How many are made.</param>
internal sealed record BudgetLineResponse(string Mark, int Wanted, int Made);
