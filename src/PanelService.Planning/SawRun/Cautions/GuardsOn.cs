using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>HSE WIS16 and OSHA 29 CFR 1910.213: riving knife, guard, hands off the line of the blade.</summary>
internal sealed class GuardsOn : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "guards-on",
        "Riving knife within 8 mm of the blade, guard on, hands off the line of the blade (HSE WIS16; OSHA 29 CFR 1910.213).");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Kerf > Measures.Length.Zero;
}
