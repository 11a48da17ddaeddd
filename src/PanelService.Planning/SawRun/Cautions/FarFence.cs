using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: the fence of a small table saw goes 24 to 30 in from the blade. Where the order says how far, the run keeps to it.</summary>
internal sealed class FarFence : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "far-fence",
        "More than 24 in (610 mm) from fence to blade, farther than the fence of many a small table saw goes: see the saw's manual for how far yours does, and plan with that as the fence's reach.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Tool == SawTool.Fence && !cut.ReachIsKnown && cut.Fence > SawPractice.SmallFenceReach;

    /// <inheritdoc/>
    public ImmutableArray<Length> Measures(SawCutFacts cut) => [cut.Fence];
}
