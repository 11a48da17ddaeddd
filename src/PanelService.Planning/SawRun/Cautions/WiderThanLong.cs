using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: a workpiece shorter along the fence than it is wide goes on a sled or mitre gauge.</summary>
internal sealed class WiderThanLong : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "wider-than-long",
        "The workpiece is wider than it is long along the fence: guide it with a sled or mitre gauge, or support it all the way.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Tool == SawTool.Fence && cut.Along < cut.Across;

    /// <inheritdoc/>
    public ImmutableArray<Length> Measures(SawCutFacts cut) => [cut.Across, cut.Along];
}
