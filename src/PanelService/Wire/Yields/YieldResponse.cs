using PanelService.Planning.Measures;
using PanelService.Wire.Plans;

namespace PanelService.Wire.Yields;

/// <summary>How many panels of one size come out.</summary>
/// <param name="Units">The unit of every length.</param>
/// <param name="Width">The panel's nominal width.</param>
/// <param name="Height">The panel's nominal height.</param>
/// <param name="FromHand">How many come out of all sheets on hand, over all boards.</param>
/// <param name="FromAll">How many come out of all that is on hand or for sale; left out where any number is for sale.</param>
/// <param name="Boards">One per board, in the request's order.</param>
internal sealed record YieldResponse(
    LengthUnit Units, decimal Width, decimal Height, long FromHand, long? FromAll, IReadOnlyList<BoardYieldResponse> Boards);

/// <summary>How many come out of one sheet of a board.</summary>
/// <param name="Board">The board's id.</param>
/// <param name="Count">How many, the most that cuts from edge to edge can part: exact.</param>
/// <param name="ByArea">The sheet's area ÷ the panel's: what paper and pencil promise.</param>
/// <param name="CutWidth">The width they are cut to: nominal, unless undersize brings more.</param>
/// <param name="CutHeight">The height they are cut to.</param>
/// <param name="FromHand">How many come out of all sheets of it on hand.</param>
/// <param name="FromAll">How many come out of all on hand or for sale; left out where any number is for sale.</param>
/// <param name="Sheet">The sheet cut so, with its drawing; left out where nothing comes out.</param>
internal sealed record BoardYieldResponse(
    string Board,
    int Count,
    decimal ByArea,
    decimal CutWidth,
    decimal CutHeight,
    long FromHand,
    long? FromAll,
    SheetResponse? Sheet);
