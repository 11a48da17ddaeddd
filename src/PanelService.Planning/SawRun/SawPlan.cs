using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>Sheets laid out for the saw, with the run that cuts them.</summary>
/// <param name="Sheets">The sheets.</param>
/// <param name="Run">The steps.</param>
/// <param name="Proof">How many settings, and how few there could be.</param>
/// <param name="Unmatched">Panels that do not all get their size at one setting.</param>
/// <param name="Sized">What gave every panel its sizes.</param>
internal sealed record SawPlan(
    ImmutableArray<SheetLayout> Sheets, ImmutableArray<SawStep> Run, SawProof Proof,
    ImmutableArray<UnmatchedSize> Unmatched,
    ImmutableArray<SizedPanel> Sized);
