using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun;

/// <summary>One cut as it is made: what is held where.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Tool">What guides the workpiece.</param>
/// <param name="Fence">The part kept between fence (or stop) and blade.</param>
internal sealed record SawCutFacts(SheetCut Cut, SawTool Tool, Length Fence)
{
    /// <summary>The workpiece's extent along the fence: how long the cut is.</summary>
    public Length Along => AlongOf(Cut);

    /// <summary>The workpiece's extent away from the fence.</summary>
    public Length Across => Cut.Axis == Axis.X ? Cut.Width : Cut.Height;

    /// <summary>A cut's length, which is how long the workpiece is along the fence.</summary>
    public static Length AlongOf(SheetCut cut) => cut.Axis == Axis.X ? cut.Height : cut.Width;

    /// <summary>What a cut is guided by: a workpiece too short for the fence goes on a sled.</summary>
    public static SawTool ToolFor(SheetCut cut) =>
        AlongOf(cut) < SawPractice.LeastAlongFence ? SawTool.Sled : SawTool.Fence;
}
