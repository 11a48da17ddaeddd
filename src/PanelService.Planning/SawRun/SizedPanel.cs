using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>What gave a part its extent along one axis.</summary>
/// <param name="Step">The step of the cut that did; -1: the sheet itself.</param>
/// <param name="AtFence">Whether the part lay between fence and blade; else it is what that cut left over.</param>
/// <param name="Errors">How many settings' errors add up in it: one at the fence, else one more than in the workpiece.</param>
internal readonly record struct SizedBy(int Step, bool AtFence, int Errors)
{
    /// <summary>The sheet's own extent, taken as measured.</summary>
    public static SizedBy Sheet { get; } = new(-1, AtFence: false, Errors: 0);

    /// <summary>What a cut at the supplier's leaves: taken to be as exact as one setting.</summary>
    public static SizedBy Supplier { get; } = new(-1, AtFence: false, Errors: 1);

    /// <summary>What a cut makes of this extent.</summary>
    /// <param name="step">The cut's step.</param>
    /// <param name="atFence">Whether the part lies between fence and blade.</param>
    public SizedBy After(int step, bool atFence) => new(step, atFence, atFence ? 1 : Errors + 1);
}

/// <summary>One of a panel's sizes, on every copy of its sheet.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Side">Which of its sizes.</param>
/// <param name="Size">How much.</param>
/// <param name="By">What gave it.</param>
/// <param name="Copies">On how many sheets.</param>
internal sealed record SizedPanel(string Mark, PanelSide Side, Length Size, SizedBy By, int Copies);
