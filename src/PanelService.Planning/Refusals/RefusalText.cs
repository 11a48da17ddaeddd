using System.Globalization;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Practice;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Refusals;

/// <summary>What is missing, in the painter's words and units: "no board of 3/16 or thicker is at least 24 × 36 in".</summary>
internal static class RefusalText
{
    /// <summary>No board serves a line.</summary>
    public static string NoBoard(PanelLine line, Order order)
    {
        if (BoardRoom.HasAnyUnlimited(line, order))
        {
            return LimitText.Of(line, order);
        }

        var size = CutSizes.Smallest(line, order.Saw.Undersize);
        string thickness = line.Thickness is { } asked
            ? Thickness(asked, order.Units)
            : $"{Thickness(ThicknessRule.LeastFor(line.Width, line.Height), order.Units)} or thicker";
        return $"no {line.Board ?? "board"} of {thickness} is at least {Size(size, order.Units)}"
            + (order.Saw.EdgeTrim > Length.Zero ? " within its trimmed edges" : "")
            + (BoundUpright(line, order) ? ", the panel's height along the board's height" : "");
    }

    /// <summary>No cloth serves a line.</summary>
    public static string NoCloth(PanelLine line, Order order)
    {
        var size = ClothFit.WithMargins(CutSizes.Smallest(line, order.Saw.Undersize), order.Bench);
        return $"no {line.Cloth ?? "cloth"} is at least {Size(size, order.Units)} between its selvedges, margins included";
    }

    private static bool BoundUpright(PanelLine line, Order order) =>
        line.Width != line.Height
        && (!line.MayTurn || order.Boards.Any(board =>
            board.Grain == Grain.Height && BoardFit.TurningOn(line, board) != Cutting.Turning.None));

    private static string Size(CutSize size, LengthUnit units) =>
        $"{LengthText.FormatFigure(size.Width, units)} × {LengthText.Format(size.Height, units)}";

    // Boards are sold by the millimetre wherever they are not sold by the fraction of an inch.
    private static string Thickness(Length thickness, LengthUnit units) => units == LengthUnit.Inch
        ? LengthText.FormatFigure(thickness, units)
        : string.Create(CultureInfo.InvariantCulture, $"{thickness.Millimetres:0.#} mm");
}
