using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>A danger at the saw: when a cut raises it, and what to say.</summary>
internal interface ICaution
{
    /// <summary>What to say of every cut that raises it.</summary>
    Warning Text { get; }

    /// <summary>The measures of a cut that raise it, to be said with it; none where no measure does.</summary>
    ImmutableArray<Length> Measures(SawCutFacts cut) => [];

    /// <summary>Whether it is said once, before the first cut, where any cut of the run raises it; else at every step that does.</summary>
    bool SaidOnce => false;

    /// <summary>Whether a cut raises it.</summary>
    bool IsRaisedBy(SawCutFacts cut);
}
