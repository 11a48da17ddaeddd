using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>Adds up what all sheets and cloths lose, as areas and as their areas' share of what they cost.</summary>
internal static class WasteCounter
{
    /// <summary>Counts.</summary>
    public static WasteTally Count(Goods goods) => new(
        Sum(goods.Sheets.Select(sheet => sheet.Waste.Kerf * sheet.Copies)),
        Sum(goods.Sheets.Select(sheet => sheet.Waste.Trim * sheet.Copies)),
        Sum(goods.Sheets.Select(sheet => sheet.Waste.Scrap * sheet.Copies)),
        Sum(goods.Cloth.Select(cloth => cloth.Waste * cloth.Copies)),
        Rounded(goods.Sheets.Sum(sheet => Cost(sheet.CostEach * sheet.Copies, sheet.Waste.All, sheet.Area))),
        Rounded(goods.Cloth.Sum(cloth => Cost(cloth.CostEach * cloth.Copies, cloth.Waste, cloth.Area))));

    private static decimal Cost(Money cost, Area waste, Area whole) => cost.Minor * (waste.SquareMetres / whole.SquareMetres);

    private static Money Rounded(decimal minor) => new((long)Math.Round(minor, MidpointRounding.AwayFromZero));

    private static Area Sum(IEnumerable<Area> areas) => areas.Aggregate(Area.Zero, (sum, area) => sum + area);
}
