using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Yields;

/// <summary>The pencil's first question: how many panels of one size come out of a sheet?</summary>
public sealed record YieldQuestion
{
    /// <summary>The unit answers are drawn in.</summary>
    public required LengthUnit Units { get; init; }

    /// <summary>The panel: size, turning, and kind or thickness where those matter. Its quantity does not.</summary>
    public required PanelLine Panel { get; init; }

    /// <summary>The boards asked about.</summary>
    public required ImmutableArray<BoardSupply> Boards { get; init; }

    /// <summary>The saw.</summary>
    public SawSettings Saw { get; init; } = new();
}
