using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>A cut in the order of what must come first.</summary>
/// <param name="Sheet">Its sheet's number.</param>
/// <param name="Cut">The cut.</param>
/// <param name="Fences">The fence distances it may be made at, the preferred first.</param>
/// <param name="Next">The nodes whose workpieces it leaves.</param>
/// <param name="IsFirst">Whether its workpiece is the whole sheet.</param>
internal sealed record SawNode(
    int Sheet, SheetCut Cut, ImmutableArray<Length> Fences, ImmutableArray<int> Next, bool IsFirst)
{
    /// <summary>What guides it.</summary>
    public SawTool Tool => SawCutFacts.ToolFor(Cut);
}
