using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Yields;

/// <summary>How many panels come out of one sheet of a board.</summary>
/// <param name="Board">The board.</param>
/// <param name="Count">How many, the most that cuts from edge to edge can part; 0 where the board does not serve.</param>
/// <param name="ByArea">The sheet's area ÷ the panel's: what paper and pencil promise.</param>
/// <param name="CutWidth">The width they are cut to: nominal, unless undersize brings more.</param>
/// <param name="CutHeight">The height they are cut to.</param>
/// <param name="Sheet">The sheet cut so; null where nothing comes out.</param>
public sealed record BoardYield(
    BoardSupply Board, int Count, decimal ByArea, Length CutWidth, Length CutHeight, SheetLayout? Sheet)
{
    /// <summary>How many come out of all sheets on hand.</summary>
    public long FromHand => (long)Count * Board.OnHand;

    /// <summary>How many come out of all that is on hand or for sale; null where any number is for sale.</summary>
    public long? FromAll => Board.ForSale is { } forSale ? (long)Count * (Board.OnHand + (long)forSale) : null;
}

/// <summary>The answers for all boards of a question.</summary>
/// <param name="Boards">One per board, in the question's order.</param>
/// <param name="Drawn">A plan that holds one sheet of each board that yields anything, to be drawn; nothing in it costs.</param>
/// <param name="TooFine">Boards that the panel is too small on to be counted exactly; they have no answer.</param>
public sealed record Yield(ImmutableArray<BoardYield> Boards, Plan Drawn, ImmutableArray<BoardSupply> TooFine)
{
    /// <summary>Whether there were more boards than can be counted at once; what follows the last of <see cref="Boards"/> has no answer.</summary>
    public bool IsCutShort { get; init; }
}
