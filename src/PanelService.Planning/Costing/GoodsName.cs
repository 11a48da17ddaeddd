using System.Globalization;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>What to ask for in the shop: the painter's own name, or the good described.</summary>
internal static class GoodsName
{
    /// <summary>A sheet of board.</summary>
    public static string Of(BoardSupply board, LengthUnit units) =>
        board.Name ?? $"{board.Kind ?? "board"} {LengthText.FormatFigure(board.Thickness, units)}, {Size(board.Width, board.Height, units)}";

    /// <summary>A cloth.</summary>
    public static string Of(ClothSupply cloth, LengthUnit units) =>
        cloth.Name ?? $"{cloth.Kind ?? "cloth"}, {LengthText.Format(cloth.Width, units)} wide";

    /// <summary>A strip.</summary>
    public static string Of(StripSupply strip, LengthUnit units) => strip.Name ?? $"strip, {LengthText.Format(strip.Length, units)} long";

    /// <summary>A container of a liquid.</summary>
    public static string Of(LiquidUse use, Container container, LengthUnit units)
    {
        string name = use.Liquid.Name ?? (use.IsAdhesive ? "adhesive " : "primer ") + use.Liquid.Id;
        string unit = units == LengthUnit.Inch ? "fl oz" : "mL";
        return string.Create(CultureInfo.InvariantCulture, $"{name}, {container.Volume.In(units):0.##} {unit}");
    }

    /// <summary>Delivery from a shop.</summary>
    public static string Of(Shop shop) => $"delivery, {shop.Name ?? shop.Id}";

    /// <summary>A ready-made panel.</summary>
    public static string Of(PanelLine line, LengthUnit units) => $"ready-made panel, {Size(line.Width, line.Height, units)}";

    private static string Size(Length width, Length height, LengthUnit units) =>
        $"{LengthText.FormatFigure(width, units)} × {LengthText.Format(height, units)}";
}
