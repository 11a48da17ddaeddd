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

    internal static BenchSettings Bench(BenchRequest? bench)
    {
        var practice = new BenchSettings();
        return new BenchSettings
        {
            MarginSides = bench?.Margin?.Sides ?? practice.MarginSides,
            MarginEnds = bench?.Margin?.Ends ?? practice.MarginEnds,
            SmallestClothWidth = bench?.SmallestCloth?.First ?? practice.SmallestClothWidth,
            SmallestClothHeight = bench?.SmallestCloth?.Second ?? practice.SmallestClothHeight,
            PressHours = bench?.PressHours ?? practice.PressHours,
            PressSpaces = bench?.PressSpaces ?? practice.PressSpaces,
            StackHeight = bench?.StackHeight ?? practice.StackHeight,
        };
    }
}
