using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Plans;

/// <summary>What became of one line, or of one wish that is made.</summary>
/// <param name="Line">The line; for a wish, a line made of it with the made count as its quantity.</param>
/// <param name="IsWish">Whether it is a wish.</param>
/// <param name="CutWidth">The size it is cut to; nominal less undersize at least.</param>
/// <param name="CutHeight">The size it is cut to.</param>
/// <param name="Made">How many are cut.</param>
/// <param name="Bought">How many are bought ready-made.</param>
/// <param name="Thicknesses">The board thicknesses used, rising; empty where no board is cut.</param>
public sealed record PanelResult(
    PanelLine Line,
    bool IsWish,
    Length CutWidth,
    Length CutHeight,
    int Made,
    int Bought,
    ImmutableArray<Length> Thicknesses);
