using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>A part that must come out of a workpiece, grown by one kerf.</summary>
/// <param name="X">Its corner.</param>
/// <param name="Y">Its corner.</param>
/// <param name="Width">Grown.</param>
/// <param name="Height">Grown.</param>
/// <param name="Panels">1: it is a panel; 0: a leftover, which an offcut of a panel's size is, too. A number, so that a part has no
/// bytes that mean nothing: parts are compared and hashed by their bytes.</param>
internal readonly record struct NeededPart(long X, long Y, long Width, long Height, long Panels)
{
    /// <summary>A panel.</summary>
    /// <param name="at">Grown.</param>
    public static NeededPart Panel(Rectangle at) => new(at.X, at.Y, at.Width, at.Height, 1);

    /// <summary>What is no panel.</summary>
    /// <param name="at">Grown.</param>
    public static NeededPart Leftover(Rectangle at) => new(at.X, at.Y, at.Width, at.Height, 0);
}
