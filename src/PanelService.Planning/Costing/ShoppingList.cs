using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>What to buy: boards, cloth, strips, liquids, ready-made panels, each in the order of the order.</summary>
internal static class ShoppingList
{
    /// <summary>Writes the list.</summary>
    public static ImmutableArray<Purchase> Of(Goods goods) =>
        [.. Boards(goods), .. Cloths(goods), .. Strips(goods), .. Liquids(goods), .. Ready(goods), .. Deliveries(goods)];

    private static IEnumerable<Purchase> Boards(Goods goods) =>
        from board in goods.Order.Boards
        let count = goods.Sheets.Where(s => s.Source == Source.Bought && s.Board.Id == board.Id).Sum(s => s.Copies)
            + Beyond(goods, board.Id, SaleUnit.Sheet)
        where count > 0
        select new Purchase(board.Id, GoodsName.Of(board, goods.Order.Units), count, SaleUnit.Sheet, board.Price);

    private static IEnumerable<Purchase> Cloths(Goods goods) =>
        from cloth in goods.Order.Cloths
        let bought = goods.Cloth.Where(c => c.Source == Source.Bought && c.Cloth.Id == cloth.Id).ToList()
        where bought.Count > 0 || Beyond(goods, cloth.Id, SaleUnit.Step, SaleUnit.Roll) > 0
        select Bought(cloth, bought, goods);

    private static Purchase Bought(Orders.ClothSupply cloth, List<ClothLayout> bought, Goods goods)
    {
        string name = GoodsName.Of(cloth, goods.Order.Units);
        int beyond = Beyond(goods, cloth.Id, SaleUnit.Step, SaleUnit.Roll);
        return cloth.Sale switch
        {
            Orders.SaleByLength sale => new Purchase(
                cloth.Id, name, bought.Sum(c => c.Copies * (c.Steps ?? 0)) + beyond, SaleUnit.Step, sale.Price),
            Orders.SaleByRoll sale => new Purchase(cloth.Id, name, bought.Sum(c => c.Copies) + beyond, SaleUnit.Roll, sale.Price),
            _ => throw new InvalidOperationException("Cloth that is not for sale was bought."),
        };
    }

    private static IEnumerable<Purchase> Strips(Goods goods) =>
        from strip in goods.Order.Strips
        let count = goods.Strips.Where(s => s.Source == Source.Bought && s.Strip.Id == strip.Id).Sum(s => s.Copies)
            + Beyond(goods, strip.Id, SaleUnit.Strip)
        where count > 0
        select new Purchase(strip.Id, GoodsName.Of(strip, goods.Order.Units), count, SaleUnit.Strip, strip.Price);

    private static int Beyond(Goods goods, string id, params SaleUnit[] units) =>
        goods.Surplus.Where(surplus => surplus.Id == id && units.Contains(surplus.SaleUnit)).Sum(surplus => surplus.Quantity);

    private static IEnumerable<Purchase> Deliveries(Goods goods) =>
        from delivery in goods.Deliveries
        where delivery.Charge > Money.Zero
        select new Purchase(delivery.Shop.Id, GoodsName.Of(delivery.Shop), 1, SaleUnit.Delivery, delivery.Charge);

    private static IEnumerable<Purchase> Liquids(Goods goods) =>
        from use in goods.Liquids
        from part in use.Bought
        select new Purchase(
            use.Liquid.Id,
            GoodsName.Of(use, part.Container, goods.Order.Units),
            part.Count,
            SaleUnit.Container,
            part.Container.Price);

    private static IEnumerable<Purchase> Ready(Goods goods) =>
        from panel in goods.Panels
        where panel.Bought > 0
        select new Purchase(
            panel.Line.Mark,
            GoodsName.Of(panel.Line, goods.Order.Units),
            panel.Bought,
            SaleUnit.Panel,
            panel.Line.ShopPrice ?? Money.Zero);
}
