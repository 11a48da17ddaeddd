using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>HSE WIS16: a push stick for the last 300 mm of any cut along the fence.</summary>
internal sealed class PushStick : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "push-stick",
        "A push stick at least 450 mm long for the last 300 mm of any cut (HSE WIS16).");

    /// <inheritdoc/>
    public bool SaidOnce => true;

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Tool == SawTool.Fence;
}
