using System.Collections.Immutable;
using PanelService.Planning.Batches;
using PanelService.Planning.Boards;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Prices;

/// <summary>A batch with everything at the price it is bought at.</summary>
/// <param name="Order">The order, each good at that one price.</param>
/// <param name="Batch">The batch, cut from that order's goods.</param>
/// <param name="Surplus">What is bought beyond what is cut.</param>
internal sealed record Purchases(Order Order, Batch Batch, ImmutableArray<Surplus> Surplus)
{
    /// <summary>Settles the prices of a batch.</summary>
    /// <param name="order">The order.</param>
    /// <param name="choice">The batch, and what is bought on top.</param>
    public static Purchases Of(Order order, BatchChoice choice)
    {
        var batch = choice.Best;
        var (surplus, free) = (new List<Surplus>(), new List<Surplus>());
        var settled = order with
        {
            Boards = [.. order.Boards.Select(board => board with { Price = Settle((board.Id, SaleUnit.Sheet), PriceLevels.Of(board), CountOf(board, batch)), PriceFrom = [] })],
            Cloths = [.. order.Cloths.Select(cloth => cloth.Sale is { } sale
                ? AtPrice(cloth, Settle((cloth.Id, UnitOf(sale)), PriceLevels.Of(sale), ClothPrices.CountOf(cloth, batch.Cloth.Patterns)))
                : cloth)],
            Strips = [.. order.Strips.Select(strip => strip with { Price = Settle((strip.Id, SaleUnit.Strip), PriceLevels.Of(strip), StripPrices.CountOf(strip, batch.Strips.Layouts)), PriceFrom = [] })],
        };
        return new Purchases(settled, OfOrder(settled, batch), [.. surplus.Concat(free).Where(one => one.Quantity > 0)]);

        // What is bought for the delivery may change the price of all.
        Money Settle((string Id, SaleUnit Unit) good, PriceLevels levels, int cut)
        {
            var (count, price) = levels.Cheapest(cut);
            if (choice.TopUps.FirstOrDefault(one => (one.Id, one.Unit) == good) is { } onTop)
            {
                // Where fewer do than would be the cheapest, nothing is bought for its price alone.
                count = count > onTop.Count ? cut : count;
                price = onTop.Price;
                free.Add(new Surplus(good.Id, good.Unit, onTop.Count - count, price, SurplusReason.FreeDelivery));
            }

            surplus.Add(new Surplus(good.Id, good.Unit, count - cut, price, SurplusReason.QuantityPrice));
            return price;
        }
    }

    /// <summary>How many sheets of a board are bought to be cut.</summary>
    public static int CountOf(BoardSupply board, Batch batch) => CountOf(board, batch.Boards.Patterns);

    /// <summary>How many sheets of a board are bought for some patterns.</summary>
    public static int CountOf(BoardSupply board, ImmutableArray<BoardPattern> patterns) => patterns
        .Where(pattern => pattern.Stock.Source == Source.Bought && pattern.Stock.Board.Id == board.Id)
        .Sum(pattern => pattern.Copies);

    /// <summary>What is bought on top, of some sorts of goods, costs more than without.</summary>
    /// <param name="units">What the sorts are counted in.</param>
    /// <param name="topUps">All of it.</param>
    public static Money CostOf(ImmutableArray<OnTop> topUps, params ReadOnlySpan<SaleUnit> units)
    {
        var cost = Money.Zero;
        foreach (var one in topUps)
        {
            cost += units.Contains(one.Unit) ? one.Cost : Money.Zero;
        }

        return cost;
    }

    /// <summary>What a cloth is counted in when it is bought.</summary>
    public static SaleUnit UnitOf(ClothSale sale) => sale is SaleByRoll ? SaleUnit.Roll : SaleUnit.Step;

    private static ClothSupply AtPrice(ClothSupply cloth, Money price) => cloth with
    {
        Sale = cloth.Sale switch
        {
            SaleByLength length => length with { Price = price, PriceFrom = [] },
            SaleByRoll roll => roll with { Price = price, PriceFrom = [] },
            var sale => sale,
        },
    };

    private static Batch OfOrder(Order order, Batch batch) => batch with
    {
        Boards = batch.Boards with { Patterns = [.. batch.Boards.Patterns.Select(pattern => pattern with { Stock = OfOrder(order, pattern.Stock) })] },
        Cloth = batch.Cloth with { Patterns = [.. batch.Cloth.Patterns.Select(pattern => pattern with { Stock = ClothPrices.OfOrder(order, pattern.Stock) })] },
        Strips = batch.Strips with { Layouts = [.. batch.Strips.Layouts.Select(layout => layout with { Strip = order.Strips.First(strip => strip.Id == layout.Strip.Id) })] },
    };

    private static BoardStock OfOrder(Order order, BoardStock stock) =>
        stock with { Board = order.Boards.First(board => board.Id == stock.Board.Id) };
}
