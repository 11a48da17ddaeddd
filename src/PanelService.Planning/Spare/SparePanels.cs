using System.Collections.Immutable;
using PanelService.Planning.Costing;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Spare;

/// <summary>What could still be made with what is left: the order's own formats, then standard ones with its finishes.</summary>
internal static class SparePanels
{
    private const int MostStandard = 12;
    private const int MostLines = 40;

    /// <summary>Looks.</summary>
    /// <param name="goods">What the batch uses.</param>
    public static ImmutableArray<SparePanel> Of(Goods goods)
    {
        var stock = new SpareStock(goods);
        var order = goods.Order;
        var own = order.Panels.Take(MostLines)
            .Select(line => new SparePanel(line.Mark, "", line.Width, line.Height, line.Surface, stock.CountOf(line)));
        var standard = Formats(order)
            .Select(line => new SparePanel(null, line.Mark, line.Width, line.Height, line.Surface, stock.CountOf(line)))
            .Where(panel => panel.Count > 0)
            .OrderByDescending(panel => (panel.Width * panel.Height * panel.Count).SquareSteps)
            .Take(MostStandard);
        return [.. own.Concat(standard).Where(panel => panel.Count is > 0 and < int.MaxValue)];
    }

    /// <summary>The standard formats of the order's unit that are not its own, in every finish it asks for.</summary>
    private static IEnumerable<PanelLine> Formats(Order order)
    {
        string series = order.Units == LengthUnit.Inch ? "Inch" : "Metric";
        ImmutableArray<Surface> surfaces = [.. order.Panels.Select(line => line.Surface).Where(surface => surface != Surface.Loose).Distinct().Order()];
        return
            from format in StandardFormats.All.First(one => one.Name == series).Formats
            from surface in surfaces
            where !order.Panels.Any(line => line.Surface == surface && SameSize(line, format.Width, format.Height))
            select new PanelLine { Mark = format.Name, Width = format.Width, Height = format.Height, Quantity = 1, Surface = surface };
    }

    private static bool SameSize(PanelLine line, Length width, Length height) =>
        (line.Width == width && line.Height == height) || (line.Width == height && line.Height == width);
}
