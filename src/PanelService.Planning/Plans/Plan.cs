using System.Collections.Immutable;
using PanelService.Planning.Days;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>Everything computed for an order: what to buy, how to cut, what it costs, and the proof.</summary>
public sealed record Plan
{
    /// <summary>The order planned.</summary>
    public required Order Order { get; init; }

    /// <summary>The lines in their order, then the wishes that are made.</summary>
    public required ImmutableArray<PanelResult> Panels { get; init; }

    /// <summary>The whole batch: boards, cloth, liquids and ready-made panels together.</summary>
    public required Proof Proof { get; init; }

    /// <summary>The boards.</summary>
    public required Proof BoardProof { get; init; }

    /// <summary>The cloth.</summary>
    public required Proof ClothProof { get; init; }

    /// <summary>How each sheet is cut.</summary>
    public required ImmutableArray<SheetLayout> Sheets { get; init; }

    /// <summary>The saw run.</summary>
    public required ImmutableArray<SawStep> SawRun { get; init; }

    /// <summary>How many settings the saw run has, and how few there could be.</summary>
    public required SawProof SawProof { get; init; }

    /// <summary>Panels of a line that could not all be cut to their size at one setting.</summary>
    public ImmutableArray<UnmatchedSize> Unmatched { get; init; } = [];

    /// <summary>Per line and wish that is cut: how far its panels may come out from their cut size.</summary>
    public ImmutableArray<PanelTolerance> Tolerances { get; init; } = [];

    /// <summary>What the panels weigh and bear: one a line and board it is cut from.</summary>
    public ImmutableArray<PanelStrength> Strength { get; init; } = [];

    /// <summary>How panels that sag too much could be stiffened, and what that costs; null: none does.</summary>
    public Stiffening? Stiffening { get; init; }

    /// <summary>What batch and pack weigh.</summary>
    public Weights Weights { get; init; } = new(default, default);

    /// <summary>How each cloth is cut.</summary>
    public required ImmutableArray<ClothLayout> Cloth { get; init; }

    /// <summary>How the strips of the cradles are cut.</summary>
    public ImmutableArray<StripLayout> Strips { get; init; } = [];

    /// <summary>The strips.</summary>
    public Proof StripProof { get; init; } = new(default, default);

    /// <summary>The liquids used: adhesives first.</summary>
    public required ImmutableArray<LiquidUse> Liquids { get; init; }

    /// <summary>What is done at the bench, and when.</summary>
    public BenchPlan Bench { get; init; } = new();

    /// <summary>What wants care in this batch.</summary>
    public ImmutableArray<CareNote> Care { get; init; } = [];

    /// <summary>The shopping list.</summary>
    public required ImmutableArray<Purchase> Buy { get; init; }

    /// <summary>What is bought beyond what is cut, because that is cheaper.</summary>
    public ImmutableArray<Surplus> Surplus { get; init; } = [];

    /// <summary>The shops that charge, of those that something is bought in.</summary>
    public ImmutableArray<Delivery> Deliveries { get; init; } = [];

    /// <summary>How much of the shopping list is tax.</summary>
    public Money Tax { get; init; }

    /// <summary>The tally.</summary>
    public required Tally Cost { get; init; }

    /// <summary>Formats that what is left is enough for: they cost only the work. Each by itself.</summary>
    public ImmutableArray<SparePanel> CouldStillMake { get; init; } = [];

    /// <summary>What the order's budget is enough for; null where it has none. The plan's order then is of what is made.</summary>
    public BudgetAnswer? Budget { get; init; }

    /// <summary>What the painter should know.</summary>
    public required ImmutableArray<Warning> Warnings { get; init; }

    /// <summary>Whether a stop or the clock cut the search short; such a plan need not repeat.</summary>
    public bool StoppedEarly { get; init; }
}
