using PanelService.Cutting;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>What a graph of cuts keeps to.</summary>
/// <param name="Kerf">What one cut turns to dust, in steps.</param>
/// <param name="LeastFenceLength">A workpiece shorter than this along the fence goes on the sled, in steps.</param>
/// <param name="LeastAtFence">A part narrower than this is not kept between fence (or stop) and blade, in steps.</param>
internal sealed record GraphRules(long Kerf, long LeastFenceLength, long LeastAtFence)
{
    /// <summary>The farthest the fence goes, in steps.</summary>
    public long FenceReach { get; init; } = long.MaxValue / 4;

    /// <summary>What guides a workpiece that is so long along the fence.</summary>
    /// <param name="along">Its true length in steps.</param>
    public SawTool ToolFor(long along) => along < LeastFenceLength ? SawTool.Sled : SawTool.Fence;

    /// <summary>Which of the two true sizes may lie between fence and blade.</summary>
    /// <param name="near">One part.</param>
    /// <param name="far">The other; zero or less: there is none.</param>
    public (bool Near, bool Far) SidesFor(long near, long far) => new FenceSides(FenceReach, LeastAtFence).Of(near, far);

    /// <summary>What to keep when waste is cut off: the need, or more where the fence reaches neither that nor all of the waste.</summary>
    /// <param name="room">All there is, grown by one kerf.</param>
    /// <param name="need">The need, grown.</param>
    public long KeptOf(long room, long need)
    {
        long waste = room - need - Kerf;
        if (SidesFor(need - Kerf, waste) is not (false, false) || waste <= FenceReach)
        {
            return need;
        }

        // What is left of the waste must not be too narrow a strip either.
        long chunk = waste - FenceReach - Kerf >= LeastAtFence ? FenceReach : (waste - Kerf) / 2;
        return room - Kerf - chunk;
    }
}
