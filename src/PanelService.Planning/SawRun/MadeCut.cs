using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>A cut of a sheet with its place in the run.</summary>
/// <param name="Sheet">The sheet's number.</param>
/// <param name="Cut">The cut, numbered.</param>
/// <param name="Step">The step of the sequence, from 0.</param>
/// <param name="NearAtFence">Whether the part nearer the origin lies between fence and blade.</param>
internal sealed record MadeCut(int Sheet, SheetCut Cut, int Step, bool NearAtFence);
