using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth;

/// <summary>Everything cloth can be cut from: per cloth the remnants, then what is for sale.</summary>
internal static class ClothStocks
{
    // Each is a grid of its own to the engine, of thousands of points where sizes are odd.
    private const int MostStocks = 24;
    private const int Enough = 3;

    // More remnants than this take memory beside every pattern; of so many the largest are enough where they have room to spare.
    private const int MostRemnants = 60;
    private const double RoomToSpare = 3;

    /// <summary>Every source of cloth, with every step length offered.</summary>
    public static ImmutableArray<ClothStock> Of(Order order, ClothReach reach) =>
        Usable(order.Cloths.SelectMany((cloth, i) => Remnants(cloth).Concat(ForSale(cloth, reach.Steps[i]))));

    /// <summary>
    /// The same, but of cloth whose length is limited only one length, all there is: several lengths cannot then
    /// add up to more. What is not cut into is not bought.
    /// </summary>
    public static ImmutableArray<ClothStock> WithinLimits(Order order, ClothReach reach) =>
        Usable(order.Cloths.SelectMany((cloth, i) => Remnants(cloth).Concat(ForSale(
            cloth, cloth.Sale is SaleByLength { AtMost: { } most } ? [most] : reach.Steps[i]))));

    /// <summary>Remnants and rolls alone; rolls that are paid for just before the others of their cloth.</summary>
    public static ImmutableArray<ClothStock> OfFixedLength(Order order) =>
        [.. Usable(order.Cloths.SelectMany(cloth => Remnants(cloth).Concat(ForSale(cloth, [])))).SelectMany(WithPaid)];

    /// <summary>Whether remnants are so many that only the largest are searched.</summary>
    /// <param name="order">The order.</param>
    public static bool HasTooManyRemnants(Order order) => order.Cloths.Sum(cloth => cloth.Remnants.Length) > MostRemnants;

    /// <summary>All but the smallest remnants, where there are too many and the others hold all pieces several times over.</summary>
    /// <param name="stocks">Everything there is.</param>
    /// <param name="pieces">What is to be cut.</param>
    public static ImmutableArray<ClothStock> WithoutSmallRemnants(ImmutableArray<ClothStock> stocks, ImmutableArray<ClothPieces> pieces)
    {
        double needed = RoomToSpare * pieces.Sum(piece => (double)piece.Width * piece.Height * piece.Count);
        var kept = new HashSet<int>();
        double room = 0;
        foreach (int i in Enumerable.Range(0, stocks.Length).Where(i => stocks[i].Remnant is not null).OrderByDescending(i => AreaOf(stocks[i])))
        {
            if (kept.Count >= MostRemnants && room >= needed)
            {
                break;
            }

            kept.Add(i);
            room += AreaOf(stocks[i]) * (stocks[i].Limit ?? 1);
        }

        return [.. stocks.Where((stock, i) => stock.Remnant is null || kept.Contains(i))];
    }

    /// <summary>
    /// Where there are too many to be searched: all remnants, and for each sort of piece the cheapest by area of what may
    /// serve it, until some of those there are any number of. Nothing can be made from all of them that cannot be made from
    /// these; it may cost more.
    /// </summary>
    /// <param name="stocks">Everything there is.</param>
    /// <param name="pieces">What is to be cut.</param>
    public static ImmutableArray<ClothStock> Promising(ImmutableArray<ClothStock> stocks, ImmutableArray<ClothPieces> pieces)
    {
        if (stocks.Length <= MostStocks)
        {
            return stocks;
        }

        int[] cheapest = [.. Enumerable.Range(0, stocks.Length).Where(i => stocks[i].Remnant is null).OrderBy(i => PriceByArea(stocks[i]))];
        var promising = pieces.SelectMany(piece => UntilEnough(cheapest.Where(i => CanServe(stocks[i], piece)), stocks)).ToHashSet();
        return [.. stocks.Where((stock, i) => stock.Remnant is not null || promising.Contains(i))];
    }

    private static IEnumerable<int> UntilEnough(IEnumerable<int> cheapest, ImmutableArray<ClothStock> stocks)
    {
        int unlimited = 0;
        foreach (int i in cheapest)
        {
            yield return i;
            unlimited += stocks[i].Limit is null ? 1 : 0;
            if (unlimited == Enough)
            {
                yield break;
            }
        }
    }

    private static bool CanServe(ClothStock stock, ClothPieces piece) =>
        piece.WaysOn(stock.Cloth, stock.UsableWidth.Steps).Any(way => way.Along <= stock.Length.Steps);

    private static double PriceByArea(ClothStock stock) => stock.Price.Minor / AreaOf(stock);

    private static double AreaOf(ClothStock stock) => (double)stock.UsableWidth.Steps * stock.Length.Steps;

    private static IEnumerable<ClothStock> WithPaid(ClothStock stock) =>
        stock is { Remnant: null, Cloth.Sale: SaleByRoll { Paid: > 0 and var paid } }
            ? Usable([stock with { Price = Money.Zero, Limit = paid, IsPaid = true }, stock with { Limit = stock.Limit - paid }])
            : [stock];

    private static IEnumerable<ClothStock> Remnants(ClothSupply cloth) =>
        cloth.Remnants.Select(remnant => ClothStock.Of(cloth, remnant));

    private static IEnumerable<ClothStock> ForSale(ClothSupply cloth, ImmutableArray<int> steps) => cloth.Sale switch
    {
        SaleByLength sale => steps.Select(count => ClothStock.Of(cloth, sale, count)),
        SaleByRoll sale => [ClothStock.Of(cloth, sale)],
        _ => [],
    };

    private static ImmutableArray<ClothStock> Usable(IEnumerable<ClothStock> stocks) =>
        [.. stocks.Where(stock => stock.Limit is null or > 0 && stock.UsableWidth > Length.Zero)];
}
