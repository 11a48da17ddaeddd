using System.Collections.Immutable;

namespace PanelService.Drawing.Labels;

/// <summary>Labels that differ by their running number alone.</summary>
/// <param name="Sort">"panel", "offcut" or "remnant".</param>
/// <param name="Head">What stands large.</param>
/// <param name="Mark">What the number is of; the corner's first word.</param>
/// <param name="First">The first number.</param>
/// <param name="Count">How many labels.</param>
/// <param name="Of">The last number of the mark.</param>
/// <param name="Lines">What stands under the head.</param>
internal sealed record LabelRun(
    string Sort, string Head, string Mark, long First, long Count, long Of, ImmutableArray<string> Lines);
