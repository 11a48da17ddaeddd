using System.Collections.Immutable;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Prices;

namespace PanelService.Planning.Batches;

/// <summary>A ready-made panel's price parted among what making it would take. The parts add up to the price.</summary>
/// <param name="Board">The part for the boards.</param>
/// <param name="Cloth">The part for the cloth.</param>
/// <param name="Liquid">The part for adhesive or primer: what its volume costs at the least.</param>
internal readonly record struct PriceParts(Money Board, Money Cloth, Money Liquid)
{
    /// <summary>Parts a line's price.</summary>
    /// <param name="line">A line with a shop price.</param>
    /// <param name="order">The order.</param>
    /// <param name="boardShare">The boards' share of what boards and cloth get, 0 to 1, where the line takes both.</param>
    public static PriceParts Of(PanelLine line, Order order, decimal boardShare)
    {
        var price = line.ShopPrice!.Value;
        var liquid = new Money(Math.Min(price.Minor, (long)Math.Floor(LeastLiquid(line, order))));
        var rest = price - liquid;
        decimal share = !line.NeedsCloth ? 1 : !line.NeedsBoard ? 0 : boardShare;
        var board = new Money((long)Math.Floor(rest.Minor * share));
        return new PriceParts(board, rest - board, liquid);
    }

    /// <summary>
    /// What a sort of liquid costs at the least for areas to be covered: their volume at the least price, less what
    /// is on hand.
    /// </summary>
    /// <param name="supplies">The adhesives, or the primers.</param>
    /// <param name="parts">What the areas' panels were given for liquid, in minor units.</param>
    public static decimal LeastOf(ImmutableArray<LiquidSupply> supplies, decimal parts) => supplies.IsEmpty
        ? 0
        : Math.Max(0, parts - (supplies.Min(AreaPrice) * supplies.Sum(supply => CoveredBy(supply.OnHand, supply))));

    /// <summary>What the liquid of one panel costs at the least, in minor units.</summary>
    public static decimal LeastLiquid(PanelLine line, Order order) => line.Surface switch
    {
        Surface.Cloth when line.MountLater => 0,
        Surface.Cloth => LeastLiquid(line, order.Adhesives),
        Surface.Primed => LeastLiquid(line, order.Primers),
        _ => 0,
    };

    private static decimal LeastLiquid(PanelLine line, ImmutableArray<LiquidSupply> supplies) =>
        supplies.IsEmpty ? 0 : supplies.Min(AreaPrice) * line.Area.SquareMetres;

    // What a square metre takes at the cheapest container's price; nothing where none is for sale.
    private static decimal AreaPrice(LiquidSupply supply) => supply.Containers.IsEmpty
        ? 0
        : supply.Containers.Min(container => ContainerPrices.Lowest(container).Minor / container.Volume.Millilitres) * VolumePerSquareMetre(supply);

    private static decimal CoveredBy(Volume volume, LiquidSupply supply) => volume.Millilitres / VolumePerSquareMetre(supply);

    private static decimal VolumePerSquareMetre(LiquidSupply supply) =>
        supply.Coats * supply.CoverageVolume.Millilitres / supply.CoverageArea.SquareMetres * LiquidDemand.Share(supply);
}
