using PanelService.Planning.Measures;

namespace PanelService.Wire.Orders;

/// <summary>How board is cut. What is left out comes from <c>GET /api/practice</c>.</summary>
internal sealed record SawRequest
{
    /// <summary>What one cut turns to dust; 0 to 25.4 mm. Default 1/8 in.</summary>
    public Length? Kerf { get; init; }

    /// <summary>Lost at each factory edge, the trimming cut included. Default 0.</summary>
    public Length? EdgeTrim { get; init; }

    /// <summary>How much less than nominal a panel may measure each way. Default 0.</summary>
    public Length? Undersize { get; init; }

    /// <summary>A leftover this fits into, either way round, is kept. Default 4 × 6 in.</summary>
    public LengthPair? SmallestKept { get; init; }

    /// <summary>A workpiece shorter than this along the fence goes on a sled with a stop; 0: none does. Default 10 in (common practice).</summary>
    public Length? LeastFenceLength { get; init; }

    /// <summary>The farthest the fence goes from the blade: no part between the two is wider. Default: no limit.</summary>
    public Length? FenceReach { get; init; }

    /// <summary>The heaviest piece one person handles, in lb where the order is in inches, else in g. Default: no limit.</summary>
    public Weight? Heaviest { get; init; }

    /// <summary>The largest piece one person handles, either way round. Default: no limit.</summary>
    public LengthPair? Largest { get; init; }

    /// <summary>The largest piece that fits the car, either way round. Larger sheets are first cut where they are bought; no others are, so the proof is over plans that ask for no cut there that a limit does not force. Default: no limit.</summary>
    public LengthPair? Carry { get; init; }

    /// <summary>What one cut at the supplier's turns to dust; 0 to 25.4 mm. Default 1/8 in (common practice).</summary>
    public Length? SupplierKerf { get; init; }
}

/// <summary>How cloth is cut and panels are pressed. What is left out comes from <c>GET /api/practice</c>.</summary>
internal sealed record BenchRequest
{
    /// <summary>Cloth over on each side, or [left-right, top-bottom], or [top, right, bottom, left]; at most 1 m. Default 1/2 in.</summary>
    public Margin? Margin { get; init; }

    /// <summary>A cloth leftover this fits into, either way round, is kept. Default 6 × 8 in.</summary>
    public LengthPair? SmallestCloth { get; init; }

    /// <summary>How long a stack stays in the press, 0.01 to 1000 hours. Default 12.</summary>
    public decimal? PressHours { get; init; }

    /// <summary>How many stacks can stand under weight at once, 1 to 1000. Default 4.</summary>
    public int? PressSpaces { get; init; }

    /// <summary>How many panels one stack holds, 1 to 1000. Default 10.</summary>
    public int? StackHeight { get; init; }

    /// <summary>Cloth is cut so much larger, margins included, in percent: one number, or [along the panel's width, along its height]; 0 to 50. Where a cloth may lie either way the larger counts for both. Default 0.</summary>
    public Percents? Shrinkage { get; init; }

    /// <summary>Pressure a stack is held under: psi for inch, kPa otherwise; above 0, at most 200 kPa. Default 1.58 kPa.</summary>
    public decimal? Pressure { get; init; }

    /// <summary>Within how many minutes the weight must be on, where the adhesive does not say; 1 to 1000. Default 10.</summary>
    public decimal? OpenMinutes { get; init; }

    /// <summary>How long a coat dries before it is sanded, where the primer does not say; 0 to 1000 hours. Default 4.</summary>
    public decimal? DryHours { get; init; }

    /// <summary>How long a finished panel rests, 0 to 1000 hours. Default 24.</summary>
    public decimal? RestHours { get; init; }

    /// <summary>How long a glued-on cradle stays clamped, 0 to 1000 hours. Default 2.</summary>
    public decimal? ClampHours { get; init; }

    /// <summary>The room's lowest temperature in °C, -40 to 60; null: not said.</summary>
    public decimal? RoomTemperature { get; init; }
}

/// <summary>Two lengths: an array of two on the wire.</summary>
/// <param name="First">The first.</param>
/// <param name="Second">The second.</param>
internal sealed record LengthPair(Length First, Length Second);

/// <summary>Cloth left over beside a panel: one length, or an array of two or four, on the wire.</summary>
/// <param name="Sides">Left and right.</param>
/// <param name="Ends">Top and bottom.</param>
/// <param name="Right">Right, where it differs.</param>
/// <param name="Bottom">Bottom, where it differs.</param>
internal sealed record Margin(Length Sides, Length Ends, Length? Right = null, Length? Bottom = null);

/// <summary>A percentage each way: one number, or an array of two, on the wire.</summary>
/// <param name="Width">Along a panel's width.</param>
/// <param name="Height">Along its height.</param>
internal sealed record Percents(decimal Width, decimal Height);
