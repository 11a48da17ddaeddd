namespace PanelService.Planning.SawRun;

/// <summary>A run that may still be shortened, and of which is not yet known how short it could be.</summary>
/// <param name="Plan">The run, without its cautions.</param>
/// <param name="Run">Where it comes from.</param>
internal sealed record SawRunDraft(SawPlan Plan, SettingsRun Run)
{
    /// <summary>The run to stay with: shortened as far as it can be, with the proof.</summary>
    public SawPlan Proven() => Run.Proven(Plan);
}
