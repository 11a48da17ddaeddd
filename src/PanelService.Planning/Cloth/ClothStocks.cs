using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Cloth;

/// <summary>Everything cloth can be cut from: per cloth the remnants, then what is for sale.</summary>
internal static class ClothStocks
{
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
