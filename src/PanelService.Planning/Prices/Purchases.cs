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
        var surplus = SheetsBeyond(order, batch).Concat(ClothBeyond(order, batch)).Concat(StripsBeyond(order, batch)).Where(one => one.Quantity > 0).Concat(choice.TopUps);
        var settled = order with
        {
            Boards = [.. order.Boards.Select(board => board with { Price = PriceLevels.Of(board).Cheapest(CountOf(board, batch)).Price, PriceFrom = [] })],
            Cloths = [.. order.Cloths.Select(cloth => Settled(cloth, batch))],
            Strips = [.. order.Strips.Select(strip => strip with { Price = PriceLevels.Of(strip).Cheapest(StripPrices.CountOf(strip, batch.Strips.Layouts)).Price, PriceFrom = [] })],
        };
        return new Purchases(settled, OfOrder(settled, batch), [.. surplus]);
    }

    /// <summary>How many sheets of a board are bought to be cut.</summary>
    public static int CountOf(BoardSupply board, Batch batch) => batch.Boards.Patterns
        .Where(pattern => pattern.Stock.Source == Source.Bought && pattern.Stock.Board.Id == board.Id)
        .Sum(pattern => pattern.Copies);

    /// <summary>What is bought on top or beyond what is cut, of one sort of goods, costs.</summary>
    /// <param name="units">What the sort is counted in.</param>
    /// <param name="surplus">All of it.</param>
    public static Money CostOf(ImmutableArray<Surplus> surplus, params ReadOnlySpan<SaleUnit> units)
    {
        var cost = Money.Zero;
        foreach (var one in surplus)
        {
            cost += units.Contains(one.SaleUnit) ? one.Cost : Money.Zero;
        }

        return cost;
    }

    private static IEnumerable<Surplus> SheetsBeyond(Order order, Batch batch) => order.Boards.Select(board =>
    {
        int count = CountOf(board, batch);
        var bought = PriceLevels.Of(board).Cheapest(count);
        return new Surplus(board.Id, SaleUnit.Sheet, bought.Count - count, bought.Price, SurplusReason.QuantityPrice);
    });

    private static IEnumerable<Surplus> ClothBeyond(Order order, Batch batch) => order.Cloths.Where(cloth => cloth.Sale is not null).Select(cloth =>
    {
        int count = ClothPrices.CountOf(cloth, batch.Cloth.Patterns);
        var bought = PriceLevels.Of(cloth.Sale!).Cheapest(count);
        var unit = cloth.Sale is SaleByRoll ? SaleUnit.Roll : SaleUnit.Step;
        return new Surplus(cloth.Id, unit, bought.Count - count, bought.Price, SurplusReason.QuantityPrice);
    });

    private static IEnumerable<Surplus> StripsBeyond(Order order, Batch batch) => order.Strips.Select(strip =>
    {
        int count = StripPrices.CountOf(strip, batch.Strips.Layouts);
        var bought = PriceLevels.Of(strip).Cheapest(count);
        return new Surplus(strip.Id, SaleUnit.Strip, bought.Count - count, bought.Price, SurplusReason.QuantityPrice);
    });

    private static ClothSupply Settled(ClothSupply cloth, Batch batch)
    {
        if (cloth.Sale is not { } sale)
        {
            return cloth;
        }

        var price = PriceLevels.Of(sale).Cheapest(ClothPrices.CountOf(cloth, batch.Cloth.Patterns)).Price;
        return cloth with
        {
            Sale = sale switch
            {
                SaleByLength length => length with { Price = price, PriceFrom = [] },
                SaleByRoll roll => roll with { Price = price, PriceFrom = [] },
                _ => sale,
            },
        };
    }

    private static Batch OfOrder(Order order, Batch batch) => batch with
    {
        Boards = batch.Boards with { Patterns = [.. batch.Boards.Patterns.Select(pattern => pattern with { Stock = OfOrder(order, pattern.Stock) })] },
        Cloth = batch.Cloth with { Patterns = [.. batch.Cloth.Patterns.Select(pattern => pattern with { Stock = ClothPrices.OfOrder(order, pattern.Stock) })] },
        Strips = batch.Strips with { Layouts = [.. batch.Strips.Layouts.Select(layout => layout with { Strip = order.Strips.First(strip => strip.Id == layout.Strip.Id) })] },
    };

    private static BoardStock OfOrder(Order order, BoardStock stock) =>
        stock with { Board = order.Boards.First(board => board.Id == stock.Board.Id) };
}
