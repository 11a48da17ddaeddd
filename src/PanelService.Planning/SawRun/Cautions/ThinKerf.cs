using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: the riving knife is thinner than the kerf; a knife for a full-kerf blade binds behind a thin one of 3/32 in.</summary>
internal sealed class ThinKerf : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "thin-kerf",
        "A thin-kerf blade (3/32 in, 2.4 mm, or less): fit the riving knife made for it, thinner than the kerf, and do not force the feed.");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Kerf > Measures.Length.Zero && cut.Kerf <= SawPractice.ThinKerf;
}
