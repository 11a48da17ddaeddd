using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: never fence and mitre gauge together as a stop for a through cut.</summary>
internal sealed class SledStop : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "no-fence-as-stop",
        "Too short to run along the fence: on the sled, its size set by a stop there. Never use the fence as the stop of a through cut made with sled or mitre gauge.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Tool == SawTool.Sled;

    /// <inheritdoc/>
    public ImmutableArray<Length> Measures(SawCutFacts cut) => [cut.Along];
}
