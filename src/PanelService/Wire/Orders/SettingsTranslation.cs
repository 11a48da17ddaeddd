using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Orders;

/// <summary>Settings, field by field: what the request leaves out is common practice.</summary>
internal static class SettingsTranslation
{
    internal static SawSettings Saw(SawRequest? saw)
    {
        var practice = new SawSettings();
        return new SawSettings
        {
            Kerf = saw?.Kerf ?? practice.Kerf,
            EdgeTrim = saw?.EdgeTrim ?? practice.EdgeTrim,
            Undersize = saw?.Undersize ?? practice.Undersize,
            SmallestKeptWidth = saw?.SmallestKept?.First ?? practice.SmallestKeptWidth,
            SmallestKeptHeight = saw?.SmallestKept?.Second ?? practice.SmallestKeptHeight,
            LeastFenceLength = saw?.LeastFenceLength ?? practice.LeastFenceLength,
            FenceReach = saw?.FenceReach,
            HeaviestGrams = saw?.Heaviest?.Grams,
            Largest = Limit(saw?.Largest),
            Carry = Limit(saw?.Carry),
            SupplierKerf = saw?.SupplierKerf ?? practice.SupplierKerf,
        };
    }

    private static SizeLimit? Limit(LengthPair? size) => size is null ? null : new SizeLimit(size.First, size.Second);

    private const decimal KilopascalsPerPsi = 6.894757m;

    internal static BenchSettings Bench(BenchRequest? bench, LengthUnit units, ImmutableArray<ClothSupply> cloths)
    {
        var practice = new BenchSettings();

        // A piece that may lie turned shrinks one way or the other: it gets the larger allowance both ways.
        bool eitherWay = cloths.Any(cloth => cloth.Warp == Grain.Any);
        decimal width = bench?.Shrinkage?.Width ?? practice.ShrinkageWidth, height = bench?.Shrinkage?.Height ?? practice.ShrinkageHeight;
        return new BenchSettings
        {
            MarginSides = bench?.Margin?.Sides ?? practice.MarginSides,
            MarginEnds = bench?.Margin?.Ends ?? practice.MarginEnds,
            SmallestClothWidth = bench?.SmallestCloth?.First ?? practice.SmallestClothWidth,
            SmallestClothHeight = bench?.SmallestCloth?.Second ?? practice.SmallestClothHeight,
            PressHours = bench?.PressHours ?? practice.PressHours,
            PressSpaces = bench?.PressSpaces ?? practice.PressSpaces,
            StackHeight = bench?.StackHeight ?? practice.StackHeight,
            MarginRight = bench?.Margin?.Right,
            MarginBottom = bench?.Margin?.Bottom,
            ShrinkageWidth = eitherWay ? Math.Max(width, height) : width,
            ShrinkageHeight = eitherWay ? Math.Max(width, height) : height,
            Pressure = bench?.Pressure is { } pressure ? units == LengthUnit.Inch ? pressure * KilopascalsPerPsi : pressure : practice.Pressure,
            OpenMinutes = bench?.OpenMinutes ?? practice.OpenMinutes,
            DryHours = bench?.DryHours ?? practice.DryHours,
            RestHours = bench?.RestHours ?? practice.RestHours,
            ClampHours = bench?.ClampHours ?? practice.ClampHours,
            RoomTemperature = bench?.RoomTemperature,
        };
    }
}
