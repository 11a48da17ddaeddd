using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Store.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Shelves;

/// <summary>Which heaps in stock a plan takes from, and how much.</summary>
internal static class PlanStock
{
    internal static IReadOnlyList<FromStockResponse>? Of(Plan plan, ImmutableArray<StockLink> links)
    {
        var numbers = new WireNumbers(plan.Order);
        FromStockResponse[] taken = [.. links.Select(link => Of(plan, link, links, numbers)).OfType<FromStockResponse>()];
        return taken.Length == 0 ? null : taken;
    }

    private static FromStockResponse? Of(Plan plan, StockLink link, ImmutableArray<StockLink> links, WireNumbers numbers)
    {
        int count = link.List switch
        {
            "boards" => plan.Sheets.Where(sheet => sheet.Source == Source.OnHand && sheet.Board.Id == link.Good).Sum(sheet => sheet.Copies),
            "strips" => plan.Strips.Where(strip => strip.Source == Source.OnHand && strip.Strip.Id == link.Good).Sum(strip => strip.Copies),
            "cloths" => plan.Cloth.Where(cloth => cloth.Cloth.Id == link.Good && cloth.Remnant?.Id == link.Remnant).Sum(cloth => cloth.Copies),
            _ => 0,
        };
        if (count > 0)
        {
            return new(link.Stock, count, null);
        }

        LiquidUse? use = plan.Liquids.FirstOrDefault(one => (link.List == (one.IsAdhesive ? "adhesives" : "primers")) && one.Liquid.Id == link.Good);
        bool isAlone = links.Count(other => other.List == link.List && other.Good == link.Good) == 1;
        return use is null || use.FromHand <= default(Volume) ? null : new(link.Stock, null, isAlone ? numbers.Of(use.FromHand) : null);
    }
}
