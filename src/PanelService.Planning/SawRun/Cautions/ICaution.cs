using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>A danger at the saw: when a cut raises it, and what to say.</summary>
internal interface ICaution
{
    /// <summary>What to say; the same for every cut that raises it.</summary>
    Warning Text { get; }

    /// <summary>Whether a cut raises it.</summary>
    bool IsRaisedBy(SawCutFacts cut);
}
