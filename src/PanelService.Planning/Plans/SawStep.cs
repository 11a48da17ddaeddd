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

/// <summary>An edge of a workpiece as it lies on the drawing of its sheet.</summary>
public enum SheetEdge
{
    /// <summary>Where x is least.</summary>
    Left,

    /// <summary>Where x is greatest.</summary>
    Right,

    /// <summary>Where y is greatest: the drawing counts y from its upper edge.</summary>
    Bottom,

    /// <summary>Where y is least.</summary>
    Top,
}

/// <summary>What an edge was made by.</summary>
public enum EdgeMaker
{
    /// <summary>The sheet's own edge, as it was bought.</summary>
    Factory,

    /// <summary>An earlier cut.</summary>
    Cut,
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
/// <param name="Edge">The edge that runs along the fence, or lies against the stop.</param>
/// <param name="EdgeBy">What made that edge.</param>
public sealed record SawPass(int Sheet, int Cut, SheetEdge Edge, EdgeMaker EdgeBy);
