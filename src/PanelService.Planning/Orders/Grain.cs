namespace PanelService.Planning.Orders;

/// <summary>Whether a panel's height must follow the material: a board's face grain, or a cloth's warp.</summary>
public enum Grain
{
    /// <summary>It need not: the panel may lie either way.</summary>
    Any,

    /// <summary>A panel's height runs along the board's height, or along the roll.</summary>
    Height,
}
