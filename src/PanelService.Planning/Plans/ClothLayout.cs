using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>One distinct way of cutting a length, roll or remnant of cloth, with every copy of it.</summary>
public sealed record ClothLayout
{
    /// <summary>1, 2, … in the order of the plan.</summary>
    public required int Number { get; init; }

    /// <summary>How many are cut so.</summary>
    public required int Copies { get; init; }

    /// <summary>The cloth, as ordered.</summary>
    public required ClothSupply Cloth { get; init; }

    /// <summary>Bought or on hand.</summary>
    public required Source Source { get; init; }

    /// <summary>The remnant it is; null where bought.</summary>
    public Remnant? Remnant { get; init; }

    /// <summary>Full width, selvedges included.</summary>
    public required Length Width { get; init; }

    /// <summary>Length along the roll.</summary>
    public required Length Length { get; init; }

    /// <summary>Lost at each side; zero for a remnant.</summary>
    public required Length Selvedge { get; init; }

    /// <summary>What one copy costs: price or value.</summary>
    public required Money CostEach { get; init; }

    /// <summary>Whole steps bought per copy; null for rolls and remnants.</summary>
    public int? Steps { get; init; }

    /// <summary>The pieces of one copy, margins included.</summary>
    public required ImmutableArray<PlacedPanel> Pieces { get; init; }

    /// <summary>The leftovers of one copy.</summary>
    public required ImmutableArray<Offcut> Offcuts { get; init; }

    /// <summary>How far the knife cuts on one copy, between the selvedges, to part pieces and leftovers.</summary>
    public Length CutLength { get; init; }

    /// <summary>Area of one copy that is neither piece nor kept.</summary>
    public required Area Waste { get; init; }

    /// <summary>Full area of one copy.</summary>
    public Area Area => Width * Length;

    /// <summary>How wide a leftover is without the selvedges it may still have: a remnant's width is all usable.</summary>
    /// <param name="offcut">A leftover of this cloth.</param>
    public Length UsableOf(Offcut offcut) => offcut.Width == Width ? offcut.Width - (Selvedge * 2) : offcut.Width;
}
