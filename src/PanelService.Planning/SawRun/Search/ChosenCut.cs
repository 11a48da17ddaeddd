using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>How a workpiece is cut in a run.</summary>
/// <param name="Split">Into what.</param>
/// <param name="Step">At which step, from 0.</param>
/// <param name="NearAtFence">Which part lies between fence and blade.</param>
internal sealed record ChosenCut(CutSplit Split, int Step, bool NearAtFence);
