using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Store.Stock;
using PanelService.Validation;
using PanelService.Wire.Orders;

namespace PanelService.Shelves;

/// <summary>Heaps in stock as on-hand goods of an order, under their pencil ids and in the order's units.</summary>
internal sealed class HeapReader(OrderMeasures measures)
{
    internal BoardRequest Board(StockItem heap) => new()
    {
        Id = heap.Id,
        Name = NameOf(heap, "board"),
        Kind = heap.Good.Kind,
        Thickness = heap.Good.Thickness,
        Width = heap.Good.Width,
        Height = heap.Good.Height,
        ForSale = 0,
        OnHand = Count(heap),
        Value = ValueOf(heap),
        EdgeTrim = heap.Good.EdgeTrim,
        Grain = heap.Good.Grain == Grain.Height ? BoardGrain.Height : BoardGrain.None,
    };

    internal RemnantRequest Remnant(StockItem heap) => new()
    {
        Id = heap.Id,
        Width = Usable(heap.Good),
        Length = heap.Good.Length,
        Quantity = Count(heap),
        Value = ValueOf(heap),
    };

    /// <summary>How wide a heap of cloth counts in an order: a remnant there has no selvedges.</summary>
    internal static Length Usable(StockGood good) => good.Width!.Value - ((good.Selvedge ?? default) * 2);

    internal static ClothRequest Cloth(StockItem heap, RemnantRequest remnant) => new()
    {
        Id = heap.Id,
        Name = NameOf(heap, "cloth"),
        Kind = heap.Good.Kind,
        Width = Usable(heap.Good),
        Remnants = [remnant],
        Warp = heap.Good.Grain == Grain.Height ? ClothWarp.Height : ClothWarp.Any,
    };

    internal LiquidRequest Liquid(StockItem heap) => new()
    {
        Id = heap.Id,
        Name = NameOf(heap, "liquid"),
        Coats = heap.Good.Coats,
        Coverage = new CoverageRequest
        {
            Area = heap.Good.CoverageArea!.Value.In(measures.Units),
            Volume = heap.Good.CoverageVolume!.Value.In(measures.Units),
        },
        Containers = [],
        OnHand = VolumeOf(heap),
        Value = ValueOf(heap),
    };

    internal StripRequest Strip(StockItem heap) => new()
    {
        Id = heap.Id,
        Name = NameOf(heap, "strip"),
        Length = heap.Good.Length,
        ForSale = 0,
        OnHand = Count(heap),
        Value = ValueOf(heap),
    };

    internal decimal VolumeOf(StockItem heap) => StockQuantity.VolumeOf(heap.Quantity).In(measures.Units);

    internal decimal ValueOf(StockItem heap) => heap.Value.Minor / MoneyScale.Of(measures.Currency);

    private static int Count(StockItem heap) => (int)Math.Min(heap.Quantity, WireLimits.Stock);

    /// <summary>What a heap is called: its pencil id first.</summary>
    internal static string NameOf(StockItem heap, string plain)
    {
        string name = $"{heap.Id}, {heap.Good.Name ?? heap.Good.Kind ?? plain}";
        return name.Length <= WireLimits.NameLength ? name : name[..WireLimits.NameLength];
    }
}
