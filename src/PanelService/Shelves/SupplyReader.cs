using System.Text.Json;
using PanelService.Planning.Measures;
using PanelService.Store.Supplies;
using PanelService.Wire.Orders;
using PanelService.Wire.Reading;

namespace PanelService.Shelves;

/// <summary>Saved supplies as goods of an order, in the order's units.</summary>
internal static class SupplyReader
{
    internal static BoardRequest? Board(Supply supply) => Read<BoardRequest>(supply);

    internal static ClothRequest? Cloth(Supply supply) => Read<ClothRequest>(supply);

    internal static StripRequest? Strip(Supply supply) => Read<StripRequest>(supply);

    /// <summary>A liquid: areas and volumes are bare numbers, so they change with the units.</summary>
    internal static LiquidRequest? Liquid(Supply supply, LengthUnit units)
    {
        LiquidRequest? read = Read<LiquidRequest>(supply);
        return read is null || supply.Units == units ? read : read with
        {
            Coverage = new CoverageRequest
            {
                Area = read.Coverage?.Area is { } area ? Area.From(area, supply.Units).In(units) : null,
                Volume = In(read.Coverage?.Volume, supply.Units, units),
            },
            Containers = [.. (read.Containers ?? []).Select(one => one is null ? null : one with { Volume = In(one.Volume, supply.Units, units) })],
        };
    }

    private static decimal? In(decimal? volume, LengthUnit from, LengthUnit to) =>
        volume is { } known ? Volume.From(known, from).In(to) : null;

    // It was right when it was saved; should a later program find fault with it, the order does without.
    private static T? Read<T>(Supply supply)
        where T : class
    {
        var faults = new Faults();
        using JsonDocument document = JsonDocument.Parse(supply.Document);
        T? read = new JsonBinder(supply.Units, faults).Read<T>(document.RootElement);
        return faults.Any ? null : read;
    }
}
