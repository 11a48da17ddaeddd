using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: stick or block when the part kept at the fence is under 6 in wide.</summary>
internal sealed class NarrowRip : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "narrow-rip",
        "Less than 6 in (150 mm) between fence and blade: move it with a push stick or block, never with the hand.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Tool == SawTool.Fence && cut.Fence < SawPractice.NarrowPart;

    /// <inheritdoc/>
    public ImmutableArray<Length> Measures(SawCutFacts cut) => [cut.Fence];
}
