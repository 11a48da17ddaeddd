using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Prices;

/// <summary>What a shop sells.</summary>
internal static class ShopGoods
{
    // In minor units: larger sums are not put together out of prices.
    private const long MostSummed = 500_000;

    // Sums × prices: a tenth of a second.
    private const long MostTried = 20_000_000;

    /// <summary>Whether anything of the order is bought there.</summary>
    public static bool Any(Order order, Shop shop) => Prices(order, shop).Any();

    /// <summary>The order with nothing for sale in the charging shops that are not in a set.</summary>
    /// <param name="order">The order.</param>
    /// <param name="charging">The shops that charge.</param>
    /// <param name="set">Those that are gone to.</param>
    public static Order OnlyFrom(Order order, ImmutableArray<Shop> charging, ImmutableArray<Shop> set)
    {
        var closed = charging.Except(set).Select(shop => shop.Id).ToHashSet(StringComparer.Ordinal);
        bool IsClosed(string? shop) => shop is not null && closed.Contains(shop);
        return order with
        {
            Boards = [.. order.Boards.Select(board => IsClosed(board.Shop) ? board with { ForSale = 0, PriceFrom = [] } : board)],
            Cloths = [.. order.Cloths.Select(cloth => IsClosed(cloth.Shop) ? cloth with { Sale = null } : cloth)],
            Adhesives = [.. order.Adhesives.Select(liquid => IsClosed(liquid.Shop) ? liquid with { Containers = [] } : liquid)],
            Primers = [.. order.Primers.Select(liquid => IsClosed(liquid.Shop) ? liquid with { Containers = [] } : liquid)],
            Strips = [.. order.Strips.Select(strip => IsClosed(strip.Shop) ? strip with { ForSale = 0, PriceFrom = [] } : strip)],
        };
    }

    /// <summary>The order with the goods of some shops at no price.</summary>
    /// <param name="order">The order.</param>
    /// <param name="shops">The shops.</param>
    public static Order ForNothing(Order order, ImmutableArray<Shop> shops)
    {
        var free = shops.Select(shop => shop.Id).ToHashSet(StringComparer.Ordinal);
        bool IsFree(string? shop) => shop is not null && free.Contains(shop);
        ImmutableArray<LiquidSupply> Liquids(ImmutableArray<LiquidSupply> liquids) => [.. liquids.Select(liquid => IsFree(liquid.Shop)
            ? liquid with { Containers = [.. liquid.Containers.Select(one => one with { Price = Money.Zero, PriceFrom = [] })] }
            : liquid)];
        return order with
        {
            Boards = [.. order.Boards.Select(board => IsFree(board.Shop) ? board with { Price = Money.Zero, PriceFrom = [] } : board)],
            Cloths = [.. order.Cloths.Select(cloth => IsFree(cloth.Shop) ? cloth with { Sale = ForNothing(cloth.Sale) } : cloth)],
            Adhesives = Liquids(order.Adhesives),
            Primers = Liquids(order.Primers),
            Strips = [.. order.Strips.Select(strip => IsFree(strip.Shop) ? strip with { Price = Money.Zero, PriceFrom = [] } : strip)],
        };
    }

    private static ClothSale? ForNothing(ClothSale? sale) => sale switch
    {
        SaleByLength length => length with { Price = Money.Zero, PriceFrom = [] },
        SaleByRoll roll => roll with { Price = Money.Zero, PriceFrom = [] },
        _ => sale,
    };

    /// <summary>
    /// The least sum of prices there that comes to what the shop charges nothing from: nobody who is charged nothing has
    /// spent less.
    /// </summary>
    public static Money LeastSum(Order order, Shop shop)
    {
        long from = shop.FreeFrom!.Value.Minor;
        long[] prices = [.. Prices(order, shop).Select(price => price.Minor).Where(price => price > 0).Distinct()];
        if (prices.Length == 0 || from > MostSummed || (from + prices.Min()) * prices.Length > MostTried)
        {
            return shop.FreeFrom.Value;
        }

        long most = from + prices.Min();
        var sums = new bool[most + 1];
        sums[0] = true;
        for (long sum = 1; sum <= most; sum++)
        {
            sums[sum] = prices.Any(price => price <= sum && sums[sum - price]);
        }

        for (long sum = from; sum <= most; sum++)
        {
            if (sums[sum])
            {
                return new Money(sum);
            }
        }

        return shop.FreeFrom.Value;
    }

    private static IEnumerable<Money> Prices(Order order, Shop shop) =>
        order.Boards.Where(board => board.Shop == shop.Id && board.ForSale != 0).SelectMany(board => All(PriceLevels.Of(board)))
            .Concat(order.Cloths.Where(cloth => cloth.Shop == shop.Id && cloth.Sale is not null).SelectMany(cloth => All(PriceLevels.Of(cloth.Sale!))))
            .Concat(order.Adhesives.Concat(order.Primers).Where(liquid => liquid.Shop == shop.Id)
                .SelectMany(liquid => liquid.Containers)
                .SelectMany(container => All(PriceLevels.Of(container.Price, container.PriceFrom, most: null))))
            .Concat(order.Strips.Where(strip => strip.Shop == shop.Id && strip.ForSale != 0).SelectMany(strip => All(PriceLevels.Of(strip))));

    private static IEnumerable<Money> All(PriceLevels levels) => levels.Levels.Select(level => level.Price);
}
