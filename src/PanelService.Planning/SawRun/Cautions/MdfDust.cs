using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>40 CFR 770.10 limits what MDF may give off: 0.11 ppm, thin MDF 0.13 ppm; cutting frees dust and resin.</summary>
internal sealed class MdfDust : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "dust-mdf",
        "MDF dust carries resin with formaldehyde (limits: 40 CFR 770.10): extraction at the saw, a respirator that fits, fresh air.");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.IsOf("mdf");
}
