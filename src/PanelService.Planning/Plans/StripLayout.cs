using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>One distinct way of cutting a strip, with every copy of it.</summary>
public sealed record StripLayout
{
    /// <summary>1, 2, … in the order of the plan.</summary>
    public required int Number { get; init; }

    /// <summary>How many strips are cut so.</summary>
    public required int Copies { get; init; }

    /// <summary>The strip, as ordered.</summary>
    public required StripSupply Strip { get; init; }

    /// <summary>Bought or on hand.</summary>
    public required Source Source { get; init; }

    /// <summary>The pieces of one copy, one kerf between each two, from one end.</summary>
    public required ImmutableArray<StripPiece> Pieces { get; init; }

    /// <summary>What is left at the other end, a kerf taken off; zero: nothing.</summary>
    public required Length Rest { get; init; }

    /// <summary>Whether the rest is kept.</summary>
    public required bool RestKept { get; init; }

    /// <summary>What one copy costs: price or value.</summary>
    public Money CostEach => Source == Source.Bought ? Strip.Price : Strip.Value;
}

/// <summary>A piece of a cradle in its place on a strip.</summary>
/// <param name="Mark">The line it is for.</param>
/// <param name="At">Where it begins.</param>
/// <param name="Length">How long it is.</param>
public sealed record StripPiece(string Mark, Length At, Length Length);
