using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Tests.Prices;

/// <summary>
/// The least that an order of bare or loose panels can cost, by trying every number bought of every good up to a limit.
/// Whether a number is enough is asked of the planner, with nothing to pay and just so many for sale; prices, charges and
/// tax are added up here.
/// </summary>
internal sealed class ShoppingByForce(Order order, int most)
{
    private readonly Dictionary<string, bool> _enough = [];

    /// <summary>The least cost.</summary>
    public long Least()
    {
        int goods = order.Boards.Length + order.Cloths.Length;
        long least = long.MaxValue;
        foreach (int[] bought in Counts(goods))
        {
            long cost = Cost(bought);
            if (cost < least && Enough(bought))
            {
                least = cost;
            }
        }

        return least;
    }

    private IEnumerable<int[]> Counts(int goods) => goods == 0
        ? [[]]
        : Counts(goods - 1).SelectMany(before => Enumerable.Range(0, most + 1).Select(count => (int[])[.. before, count]));

    private long Cost(int[] bought)
    {
        var goods = new Dictionary<string, long>();
        long cost = 0;
        for (int i = 0; i < bought.Length; i++)
        {
            long price = bought[i] * Taxed(PriceOf(i, bought[i]));
            cost += price;
            string shop = ShopOf(i) ?? "";
            goods[shop] = goods.GetValueOrDefault(shop) + price;
        }

        return cost + order.Shops
            .Where(shop => goods.GetValueOrDefault(shop.Id) > 0 && !(goods[shop.Id] >= shop.FreeFrom?.Minor))
            .Sum(shop => Taxed(shop.Charge.Minor));
    }

    private long Taxed(long price) => (long)Math.Round(price * (1 + (order.TaxPercent / 100)), MidpointRounding.AwayFromZero);

    private long PriceOf(int i, int count)
    {
        var (price, from) = i < order.Boards.Length
            ? (order.Boards[i].Price, order.Boards[i].PriceFrom)
            : (order.Cloths[i - order.Boards.Length].Sale is SaleByLength sale ? sale.Price : ((SaleByRoll)order.Cloths[i - order.Boards.Length].Sale!).Price, order.Cloths[i - order.Boards.Length].Sale!.PriceFrom);
        return from.LastOrDefault(step => step.Count <= count)?.Price.Minor ?? price.Minor;
    }

    private string? ShopOf(int i) => i < order.Boards.Length ? order.Boards[i].Shop : order.Cloths[i - order.Boards.Length].Shop;

    private bool Enough(int[] bought)
    {
        string key = string.Join(',', bought);
        if (!_enough.TryGetValue(key, out bool enough))
        {
            enough = Planner.Plan(Limited(bought)) is Planned;
            _enough.Add(key, enough);
        }

        return enough;
    }

    private Order Limited(int[] bought) => order with
    {
        Shops = [],
        TaxPercent = 0,
        Effort = Effort.Steady,
        Boards = [.. order.Boards.Select((board, i) => board with { Price = Money.Zero, PriceFrom = [], ForSale = bought[i] })],
        Cloths = [.. order.Cloths.Select((cloth, i) => cloth with
        {
            Sale = cloth.Sale switch
            {
                SaleByLength sale => sale with { Price = Money.Zero, PriceFrom = [], AtMost = bought[order.Boards.Length + i] },
                SaleByRoll sale => sale with { Price = Money.Zero, PriceFrom = [], ForSale = bought[order.Boards.Length + i] },
                var none => none,
            },
        })],
    };
}
