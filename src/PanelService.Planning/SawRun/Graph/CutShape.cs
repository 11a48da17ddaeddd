using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>A workpiece by its content: equal ones, wherever they come from, are cut alike.</summary>
/// <param name="width">Grown by one kerf.</param>
/// <param name="height">Grown by one kerf.</param>
/// <param name="arrangement">What must come out of it; what lies between is waste.</param>
/// <param name="kerf">What one cut turns to dust: of a shape no larger than that nothing is there.</param>
internal sealed class CutShape(long width, long height, Arrangement arrangement, long kerf)
{
    /// <summary>Grown by one kerf.</summary>
    public long Width => width;

    /// <summary>Grown by one kerf.</summary>
    public long Height => height;

    /// <summary>What must come out of it.</summary>
    public Arrangement Arrangement => arrangement;

    /// <summary>What must come out of it, grown, bands closed up and sorted by place.</summary>
    public NeededPart[] Needed => arrangement.Parts;

    /// <summary>What the needed parts take along x.</summary>
    public long NeededWidth { get; } = arrangement.Parts.Max(part => part.X + part.Width);

    /// <summary>What the needed parts take along y.</summary>
    public long NeededHeight { get; } = arrangement.Parts.Max(part => part.Y + part.Height);

    /// <summary>Every way of cutting it that is known.</summary>
    public List<CutSplit> Splits { get; } = [];

    /// <summary>Whether ways of cutting it were left out for their number.</summary>
    public bool IsPartial { get; set; }

    /// <summary>Its place in the order from small to large, once the graph is finished.</summary>
    public int Index { get; set; }

    /// <summary>
    /// Whether it is done: one part, at its size, or nothing but dust. What holds no panel is done as it is: a leftover with the
    /// waste beside it is worth more than without, and the cut between them is saved.
    /// </summary>
    public bool IsDone => width <= kerf || height <= kerf || !arrangement.HoldsPanel
        || (Needed.Length == 1 && width == NeededWidth && height == NeededHeight);
}
