using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: a whole 48 × 96 in sheet wants two people or the supplier's panel saw.</summary>
internal sealed class LargeSheet : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "large-sheet",
        "A whole large sheet: two people, in-feed and out-feed support, or have this cut made at the supplier's panel saw.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        Length.Min(cut.Cut.Width, cut.Cut.Height) >= SawPractice.LargeShort
        && Length.Max(cut.Cut.Width, cut.Cut.Height) >= SawPractice.LargeLong;

    /// <inheritdoc/>
    public ImmutableArray<Length> Measures(SawCutFacts cut) => [cut.Cut.Width, cut.Cut.Height];
}
