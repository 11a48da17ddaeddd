namespace PanelService.Cutting;

/// <summary>The direction along which a rectangle is divided.</summary>
public enum Axis
{
    /// <summary>Along the width: parts lie side by side, the blade travels along y.</summary>
    X,

    /// <summary>Along the height: parts lie one above the other, the blade travels along x.</summary>
    Y,
}
