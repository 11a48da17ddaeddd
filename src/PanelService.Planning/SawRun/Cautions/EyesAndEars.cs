using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: eye and ear protection at every circular saw; the dust is the material's matter.</summary>
internal sealed class EyesAndEars : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "eyes-and-ears",
        "Eye and ear protection, no gloves, nothing loose.");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Kerf > Measures.Length.Zero;
}
