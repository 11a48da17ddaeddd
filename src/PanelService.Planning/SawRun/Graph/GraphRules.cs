using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>What a graph of cuts keeps to.</summary>
/// <param name="Kerf">What one cut turns to dust, in steps.</param>
/// <param name="LeastFenceLength">A workpiece shorter than this along the fence goes on the sled, in steps.</param>
/// <param name="LeastAtFence">A part narrower than this is not kept between fence (or stop) and blade, in steps.</param>
internal sealed record GraphRules(long Kerf, long LeastFenceLength, long LeastAtFence)
{
    /// <summary>What guides a workpiece that is so long along the fence.</summary>
    /// <param name="along">Its true length in steps.</param>
    public SawTool ToolFor(long along) => along < LeastFenceLength ? SawTool.Sled : SawTool.Fence;

    /// <summary>Which of the two true sizes may lie between fence and blade.</summary>
    /// <param name="near">One part.</param>
    /// <param name="far">The other; zero or less: there is none.</param>
    public (bool Near, bool Far) SidesFor(long near, long far)
    {
        bool nearWide = near >= LeastAtFence;
        bool farWide = far >= LeastAtFence;
        return nearWide || farWide ? (nearWide, farWide) : (near >= far, far > near);
    }
}
