using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>A sheet laid out as its chosen cuts leave it.</summary>
/// <param name="Sheet">The sheet, its cuts numbered in the order of the run.</param>
/// <param name="Cuts">Those cuts with their places in the run.</param>
/// <param name="Sized">What gave every panel its sizes.</param>
internal sealed record WrittenSheet(SheetLayout Sheet, ImmutableArray<MadeCut> Cuts, ImmutableArray<SizedPanel> Sized);
