using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Prices;

/// <summary>
/// Tax on top of every price that is paid in a shop. It is put on the price of one (a sheet, a step, a bottle, a panel, a
/// delivery) and rounded there to whole minor units, halves up: so it adds up over the shopping list without a further
/// rounding, and the search and its bounds see the prices that are paid.
/// </summary>
internal static class Tax
{
    /// <summary>The order with tax in its prices. Values of what is on hand, labour and overheads have none.</summary>
    public static Order AddedTo(Order order)
    {
        if (order.TaxPercent == 0)
        {
            return order;
        }

        Money With(Money price) => Tax.With(price, order.TaxPercent);
        ImmutableArray<PriceStep> Steps(ImmutableArray<PriceStep> from) => [.. from.Select(step => step with { Price = With(step.Price) })];
        ImmutableArray<LiquidSupply> Liquids(ImmutableArray<LiquidSupply> liquids) => [.. liquids.Select(liquid => liquid with
        {
            Containers = [.. liquid.Containers.Select(one => one with { Price = With(one.Price), PriceFrom = Steps(one.PriceFrom) })],
        })];
        return order with
        {
            Panels = [.. order.Panels.Select(line => line with { ShopPrice = line.ShopPrice is { } price ? With(price) : null })],
            Boards = [.. order.Boards.Select(board => board with { Price = With(board.Price), PriceFrom = Steps(board.PriceFrom) })],
            Cloths = [.. order.Cloths.Select(cloth => cloth with
            {
                Sale = cloth.Sale switch
                {
                    SaleByLength sale => sale with { Price = With(sale.Price), PriceFrom = Steps(sale.PriceFrom) },
                    SaleByRoll sale => sale with { Price = With(sale.Price), PriceFrom = Steps(sale.PriceFrom) },
                    var other => other,
                },
            })],
            Adhesives = Liquids(order.Adhesives),
            Primers = Liquids(order.Primers),
            Strips = [.. order.Strips.Select(strip => strip with { Price = With(strip.Price), PriceFrom = Steps(strip.PriceFrom) })],
            Consumables = [.. order.Consumables.Select(one => one with { Price = With(one.Price) })],
            Tools = [.. order.Tools.Select(tool => tool with { Price = With(tool.Price) })],
            Shops = [.. order.Shops.Select(shop => shop with { Charge = With(shop.Charge) })],
            TaxPercent = 0,
        };
    }

    /// <summary>A price with its tax.</summary>
    /// <param name="price">Without.</param>
    /// <param name="percent">The percentage.</param>
    public static Money With(Money price, decimal percent) =>
        new((long)Math.Round(price.Minor * (100 + percent) / 100, MidpointRounding.AwayFromZero));

    /// <summary>How much of a shopping list is tax.</summary>
    /// <param name="order">The order as it was given, without tax.</param>
    /// <param name="buy">The list.</param>
    public static Money In(Order order, ImmutableArray<Purchase> buy) => order.TaxPercent == 0
        ? Money.Zero
        : buy.Aggregate(Money.Zero, (sum, purchase) => sum + (TaxOf(order, purchase) * purchase.Quantity));

    private static Money TaxOf(Order order, Purchase purchase)
    {
        var net = PricesOf(order, purchase).First(price => With(price, order.TaxPercent) == purchase.UnitPrice);
        return purchase.UnitPrice - net;
    }

    private static IEnumerable<Money> PricesOf(Order order, Purchase purchase) => purchase.SaleUnit switch
    {
        SaleUnit.Sheet => order.Boards.Where(board => board.Id == purchase.Id).SelectMany(board => All(PriceLevels.Of(board))),
        SaleUnit.Step or SaleUnit.Roll => order.Cloths.Where(cloth => cloth.Id == purchase.Id && cloth.Sale is not null)
            .SelectMany(cloth => All(PriceLevels.Of(cloth.Sale!))),
        SaleUnit.Container => order.Adhesives.Concat(order.Primers).Where(liquid => liquid.Id == purchase.Id)
            .SelectMany(liquid => liquid.Containers)
            .SelectMany(container => All(PriceLevels.Of(container.Price, container.PriceFrom, most: null))),
        SaleUnit.Strip => order.Strips.Where(strip => strip.Id == purchase.Id).SelectMany(strip => All(PriceLevels.Of(strip))),
        SaleUnit.Delivery => order.Shops.Where(shop => shop.Id == purchase.Id).Select(shop => shop.Charge),
        _ => order.Panels.Where(line => line.Mark == purchase.Id).Select(line => line.ShopPrice ?? Money.Zero),
    };

    private static IEnumerable<Money> All(PriceLevels levels) => levels.Levels.Select(level => level.Price);
}
