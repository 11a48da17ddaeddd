using PanelService.Planning.Measures;

namespace PanelService.Planning.Plans;

/// <summary>How far the panels of one line may come out from their cut size, by the cuts that made them.</summary>
/// <param name="Mark">The line's mark.</param>
/// <param name="Width">Most that the width may be off, either way.</param>
/// <param name="Height">Most that the height may be off, either way.</param>
/// <param name="OutOfSquare">Most that the long side may lean, over its length, where the sheet's corner does.</param>
/// <param name="Fits">Whether even the largest goes into a frame of the nominal size.</param>
/// <param name="HidesGap">Whether even the smallest, pushed aside, shows no gap behind a 1/4 in lip.</param>
public sealed record PanelTolerance(string Mark, Length Width, Length Height, Length OutOfSquare, bool Fits, bool HidesGap);
