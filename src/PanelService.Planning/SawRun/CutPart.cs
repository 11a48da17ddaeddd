using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun;

/// <summary>What comes to the saw, with all the ways of cutting it.</summary>
/// <param name="Part">A sheet, or a part of one.</param>
/// <param name="Root">Its shape in the graph.</param>
internal sealed record CutPart(SheetPart Part, CutShape Root);
