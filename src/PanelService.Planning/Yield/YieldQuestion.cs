using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Yield;

/// <summary>The pencil's first question: how many panels of one size come out of a board, or of all that is there?</summary>
public sealed record YieldQuestion
{
    /// <summary>The unit bare numbers were given in; sizes cut under nominal are rounded down to what its tape shows.</summary>
    public required LengthUnit Units { get; init; }

    /// <summary>The panel: its size, whether it may turn, and what it asks of a board. Its quantity is not looked at.</summary>
    public required PanelLine Panel { get; init; }

    /// <summary>The boards asked about, in the order of the answer.</summary>
    public required ImmutableArray<BoardSupply> Boards { get; init; }

    /// <summary>The saw: kerf, edge trim, undersize, what is kept.</summary>
    public SawSettings Saw { get; init; } = new();
}
