using System.Collections.Immutable;
using PanelService.Planning.Batches;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Prices;

/// <summary>What the shops charge for a batch.</summary>
internal static class ShopBill
{
    /// <summary>The batch with the charges of the shops it buys in, topped up where that is cheaper than a charge.</summary>
    /// <param name="order">The order.</param>
    /// <param name="charging">The shops that charge.</param>
    /// <param name="choice">The batch.</param>
    public static BatchChoice WithCharges(Order order, ImmutableArray<Shop> charging, BatchChoice choice)
    {
        var deliveries = ImmutableArray.CreateBuilder<Delivery>();
        var topUps = ImmutableArray.CreateBuilder<OnTop>();
        foreach (var shop in charging)
        {
            var goods = SpentIn(shop, choice.Best, order);
            if (goods == Money.Zero)
            {
                continue;
            }

            bool free = goods >= shop.FreeFrom;
            var more = free || shop.FreeFrom is null ? [] : TopUp.Cheapest(ItemsOf(order, shop, choice.Best), shop.FreeFrom.Value - goods, shop.Charge);
            topUps.AddRange(more);
            goods += more.Aggregate(Money.Zero, (sum, one) => sum + one.Cost);
            deliveries.Add(new Delivery(shop, goods, free || !more.IsEmpty ? Money.Zero : shop.Charge));
        }

        return choice with { Deliveries = deliveries.ToImmutable(), TopUps = topUps.ToImmutable() };
    }

    private static Money SpentIn(Shop shop, Batch batch, Order order)
    {
        var boards = order.Boards.Where(board => board.Shop == shop.Id)
            .Select(board => PriceLevels.Of(board).Cheapest(Purchases.CountOf(board, batch)).Cost);
        var cloth = order.Cloths.Where(cloth => cloth.Shop == shop.Id && cloth.Sale is not null)
            .Select(cloth => PriceLevels.Of(cloth.Sale!).Cheapest(ClothPrices.CountOf(cloth, batch.Cloth.Patterns)).Cost);
        var liquids = batch.Liquids.Uses.Where(use => use.Liquid.Shop == shop.Id).Select(use => use.BoughtCost);
        var strips = order.Strips.Where(strip => strip.Shop == shop.Id)
            .Select(strip => PriceLevels.Of(strip).Cheapest(StripPrices.CountOf(strip, batch.Strips.Layouts)).Cost);
        return boards.Concat(cloth).Concat(liquids).Concat(strips).Aggregate(Money.Zero, (sum, cost) => sum + cost);
    }

    private static ImmutableArray<TopUpItem> ItemsOf(Order order, Shop shop, Batch batch)
    {
        var boards = order.Boards.Where(board => board.Shop == shop.Id)
            .Select(board => new TopUpItem(board.Id, SaleUnit.Sheet, PriceLevels.Of(board), Purchases.CountOf(board, batch)));
        var cloth = order.Cloths.Where(cloth => cloth.Shop == shop.Id && cloth.Sale is not null).Select(cloth => new TopUpItem(
            cloth.Id,
            Purchases.UnitOf(cloth.Sale!),
            PriceLevels.Of(cloth.Sale!),
            ClothPrices.CountOf(cloth, batch.Cloth.Patterns)));
        var strips = order.Strips.Where(strip => strip.Shop == shop.Id)
            .Select(strip => new TopUpItem(strip.Id, SaleUnit.Strip, PriceLevels.Of(strip), StripPrices.CountOf(strip, batch.Strips.Layouts)));
        return [.. boards.Concat(cloth).Concat(strips)];
    }
}
