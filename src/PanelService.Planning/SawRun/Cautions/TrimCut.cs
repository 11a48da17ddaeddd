using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Cautions;

/// <summary>A trimming cut on a factory edge: the strip is thin and loose.</summary>
internal sealed class TrimCut : ICaution
{
    /// <inheritdoc/>
    public Warning Text { get; } = new(
        "factory-edge",
        "A factory edge is trimmed off: a thin strip falls free at the blade. Leave it there until the blade stands still.");

    /// <inheritdoc/>
    public bool IsRaisedBy(SawCutFacts cut) =>
        cut.Cut.IsTrim;

    /// <inheritdoc/>
    public ImmutableArray<Length> Measures(SawCutFacts cut) => cut.Free > Length.Zero ? [cut.Free] : [];
}
