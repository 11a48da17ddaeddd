using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>A board of no kind named here: board dust is wood dust or worse.</summary>
internal sealed class OtherDust : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "dust",
        "Board dust harms the lungs: extraction at the saw and a respirator that fits.");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        !cut.IsOf("hardboard") && !cut.IsOf("mdf") && !cut.IsOf("ply");
}
