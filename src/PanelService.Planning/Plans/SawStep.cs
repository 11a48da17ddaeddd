using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>What guides the workpiece.</summary>
public enum SawTool
{
    /// <summary>The rip fence.</summary>
    Fence,

    /// <summary>A sled or mitre gauge with a stop.</summary>
    Sled,
}

/// <summary>Cuts made at one setting.</summary>
/// <param name="Step">1, 2, … in the order they are made.</param>
/// <param name="Tool">Fence or sled.</param>
/// <param name="Fence">The size of the part kept between fence (or stop) and blade.</param>
/// <param name="Passes">The cuts, each for all copies of its sheet.</param>
/// <param name="Cautions">What to mind at this step.</param>
public sealed record SawStep(
    int Step, SawTool Tool, Length Fence, ImmutableArray<SawPass> Passes, ImmutableArray<Warning> Cautions);

/// <summary>One cut of one sheet, made on all its copies.</summary>
/// <param name="Sheet">The sheet's number.</param>
/// <param name="Cut">The cut's number on that sheet.</param>
public sealed record SawPass(int Sheet, int Cut);
