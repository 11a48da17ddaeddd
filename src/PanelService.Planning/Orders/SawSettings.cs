using PanelService.Planning.Measures;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Orders;

/// <summary>How the painter cuts board.</summary>
public sealed record SawSettings
{
    /// <summary>What one cut turns to dust. Default 1/8 in (a full-kerf blade, common practice).</summary>
    public Length Kerf { get; init; } = Length.FromInches(0.125m);

    /// <summary>Lost at each factory edge of a sheet, the trimming cut included. Default 0.</summary>
    public Length EdgeTrim { get; init; }

    /// <summary>How much less than nominal a panel may measure each way. Default 0.</summary>
    public Length Undersize { get; init; }

    /// <summary>A leftover this fits into, either way round, is kept: one side. Default 4 in.</summary>
    public Length SmallestKeptWidth { get; init; } = Length.FromInches(4);

    /// <summary>The other side. Default 6 in.</summary>
    public Length SmallestKeptHeight { get; init; } = Length.FromInches(6);

    /// <summary>A workpiece shorter than this along the fence goes on a sled. Default 10 in (common practice).</summary>
    public Length LeastFenceLength { get; init; } = SawPractice.LeastAlongFence;

    /// <summary>The farthest the fence goes from the blade; null: no limit (the default).</summary>
    public Length? FenceReach { get; init; }

    /// <summary>The heaviest piece one person handles, in grams; null: no limit (the default).</summary>
    public decimal? HeaviestGrams { get; init; }

    /// <summary>The largest piece one person handles; null: no limit (the default).</summary>
    public SizeLimit? Largest { get; init; }

    /// <summary>The largest piece that fits the car; null: no limit (the default).</summary>
    public SizeLimit? Carry { get; init; }

    /// <summary>What one cut at the supplier's turns to dust. Default 1/8 in (common practice).</summary>
    public Length SupplierKerf { get; init; } = SawPractice.FullKerf;
}
