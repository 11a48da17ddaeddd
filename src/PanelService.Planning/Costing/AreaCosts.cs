using System.Collections.Immutable;
using PanelService.Planning.Cloth;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Costing;

/// <summary>
/// The paper-and-pencil figure: what a panel would cost if material came by the area, with no waste and no kerf.
/// Where a line is cut from several boards or cloths, each piece counts with its own.
/// </summary>
internal static class AreaCosts
{
    /// <summary>The figure of one panel of a line.</summary>
    public static AreaCost Of(PanelResult panel, Goods goods)
    {
        var line = panel.Line;
        return panel.Made == 0
            ? new AreaCost(0, 0, 0, 0)
            : new AreaCost(
                BoardEach(line, goods),
                ClothEach(line, goods),
                LiquidEach(line, goods, isAdhesive: true),
                LiquidEach(line, goods, isAdhesive: false));
    }

    private static decimal BoardEach(PanelLine line, Goods goods) => Mean(
        goods.Sheets.Select(sheet => (
            Count: sheet.Copies * sheet.Pieces.Count(piece => piece.Mark == line.Mark),
            Each: PriceOf(sheet.Board).Minor * Ratio(line.Area, sheet.Area))));

    // A board that is for sale has its price, wherever this copy comes from; an offcut only has its value.
    private static Money PriceOf(BoardSupply board) => board.ForSale == 0 ? board.Value : board.Price;

    private static decimal ClothEach(PanelLine line, Goods goods)
    {
        var bench = goods.Order.Bench;
        var piece = ClothFit.WithMargins(new CutSize(line.Width, line.Height), bench);
        var area = piece.Width * piece.Height;
        return Mean(goods.Cloth.Select(cloth => (
            Count: cloth.Copies * cloth.Pieces.Count(piece => piece.Mark == line.Mark),
            Each: PricePerArea(cloth, area))));
    }

    private static decimal PricePerArea(ClothLayout cloth, Area area) => cloth.Cloth.Sale switch
    {
        SaleByLength sale => sale.Price.Minor * Ratio(area, cloth.Cloth.Width * sale.Step),
        SaleByRoll sale => sale.Price.Minor * Ratio(area, cloth.Cloth.Width * sale.Length),
        _ => cloth.CostEach.Minor * Ratio(area, cloth.Area),
    };

    private static decimal LiquidEach(PanelLine line, Goods goods, bool isAdhesive)
    {
        var use = goods.Liquids.FirstOrDefault(
            use => use.IsAdhesive == isAdhesive && use.Shares.Any(share => share.Mark == line.Mark));
        return use is null ? 0 : LiquidDemand.VolumeFor(line.Area, use.Liquid).Millilitres * PricePerMillilitre(use);
    }

    // What is bought sets the price; where all comes from the shelf, the shelf's value does.
    private static decimal PricePerMillilitre(LiquidUse use) => use.Bought.IsEmpty
        ? use.Liquid.OnHand > default(Volume) ? use.Liquid.Value.Minor / use.Liquid.OnHand.Millilitres : 0
        : use.BoughtCost.Minor / use.BoughtVolume.Millilitres;

    private static decimal Ratio(Area part, Area whole) => part.SquareMetres / whole.SquareMetres;

    private static decimal Mean(IEnumerable<(int Count, decimal Each)> parts)
    {
        var list = parts.Where(part => part.Count > 0).ToList();
        long count = list.Sum(part => (long)part.Count);
        return count == 0 ? 0 : list.Sum(part => part.Count * part.Each) / count;
    }
}
