using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Yield;

/// <summary>How many come out.</summary>
/// <param name="Boards">One per board asked about, in the same order.</param>
/// <param name="FromHand">How many come out of all on-hand boards that serve the panel.</param>
public sealed record YieldAnswer(ImmutableArray<BoardYield> Boards, long FromHand);

/// <summary>How many panels come out of one board.</summary>
public sealed record BoardYield
{
    /// <summary>The board.</summary>
    public required BoardSupply Board { get; init; }

    /// <summary>Whether its kind and thickness serve the panel; the count is given either way.</summary>
    public required bool Serves { get; init; }

    /// <summary>How many come out of one sheet by cuts from edge to edge: no way of cutting gives more.</summary>
    public required int PerSheet { get; init; }

    /// <summary>Sheet area over panel area: what paper and pencil say, with no kerf and no trim.</summary>
    public required decimal ByArea { get; init; }

    /// <summary>The width cut to: nominal, or smaller where the undersize allowed brings more out of the sheet.</summary>
    public required Length CutWidth { get; init; }

    /// <summary>The height cut to.</summary>
    public required Length CutHeight { get; init; }

    /// <summary>The sheet, drawn up; null where nothing comes out.</summary>
    public SheetLayout? Layout { get; init; }

    /// <summary>How many come out of all on-hand sheets of this board.</summary>
    public long FromHand => (long)PerSheet * Board.OnHand;
}
