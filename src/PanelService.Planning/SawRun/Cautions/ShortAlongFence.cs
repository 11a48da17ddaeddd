using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: do not rip a part under 10 to 12 in long along the fence.</summary>
internal sealed class ShortAlongFence : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "short-along-fence",
        "Less than 12 in (300 mm) runs along the fence: it can turn and kick back. A sled is the safer guide.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Tool == SawTool.Fence && cut.Along < SawPractice.ShortAlongFence;

    /// <inheritdoc/>
    public ImmutableArray<Length> Measures(SawCutFacts cut) => [cut.Along];
}
