using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Wood fibre dust: NIOSH recommends at most 1 mg/m³ over 8 hours; EH40 5 mg/m³ for softwood.</summary>
internal sealed class HardboardDust : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "dust-hardboard",
        "Hardboard dust is fine wood fibre (NIOSH: at most 1 mg/m³ over 8 hours): extraction at the saw and a respirator that fits.");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.IsOf("hardboard");
}
