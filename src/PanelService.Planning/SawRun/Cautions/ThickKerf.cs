using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: a full kerf is 1/8 in; the riving knife must be thicker than the plate of that blade.</summary>
internal sealed class ThickKerf : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "thick-kerf",
        "A full-kerf blade (1/8 in, 3.2 mm, or more): fit the riving knife made for it, thicker than the plate, thinner than the kerf.");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Kerf >= SawPractice.FullKerf;
}
