using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: a small part that comes free beside the running blade is not reached for.</summary>
internal sealed class SmallPartAtBlade : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "small-part-free",
        "A part under 6 in (150 mm) both ways comes free beside the blade: leave it until the blade stands still, never reach for it.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Free > Length.Zero && cut.Free < SawPractice.NarrowPart && cut.Along < SawPractice.NarrowPart;

    /// <inheritdoc/>
    public ImmutableArray<Length> Measures(SawCutFacts cut) => [cut.Free, cut.Along];
}
