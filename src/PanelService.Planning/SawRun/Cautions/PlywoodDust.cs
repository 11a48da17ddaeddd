using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>EH40: 3 mg/m³ over 8 hours for hardwood dust; 40 CFR 770.10: hardwood plywood 0.05 ppm.</summary>
internal sealed class PlywoodDust : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "dust-plywood",
        "Plywood dust may be hardwood (EH40: at most 3 mg/m³ over 8 hours): extraction and a respirator that fits; the face splinters, keep the good side to the teeth.");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.IsOf("ply");
}
