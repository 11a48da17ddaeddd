using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>Common practice: never fence and mitre gauge together as a stop for a through cut.</summary>
internal sealed class SledStop : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "no-fence-as-stop",
        "Set the size by a stop on the sled. Never use the fence as the stop of a through cut made with sled or mitre gauge.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Tool == SawTool.Sled;
}
