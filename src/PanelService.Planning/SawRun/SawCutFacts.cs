using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>One cut as it is made: what is held where.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Tool">What guides the workpiece.</param>
/// <param name="Fence">The part kept between fence (or stop) and blade.</param>
/// <param name="Kerf">What the blade turns to dust.</param>
/// <param name="Kind">The board's kind as ordered; null: unknown.</param>
internal sealed record SawCutFacts(SheetCut Cut, SawTool Tool, Length Fence, Length Kerf, string? Kind)
{
    /// <summary>Whether the order says how far the fence goes: then it goes as far as it is set.</summary>
    public bool ReachIsKnown { get; init; }

    /// <summary>The workpiece's extent along the fence: how long the cut is.</summary>
    public Length Along => Cut.Axis == Axis.X ? Cut.Height : Cut.Width;

    /// <summary>The workpiece's extent away from the fence.</summary>
    public Length Across => Cut.Axis == Axis.X ? Cut.Width : Cut.Height;

    /// <summary>The part that comes free on the other side of the blade; zero or less: all of it is dust.</summary>
    public Length Free => Across - Fence - Kerf;

    /// <summary>Whether the board's kind has a word in it.</summary>
    public bool IsOf(string word) => Kind?.Contains(word, StringComparison.OrdinalIgnoreCase) == true;
}
