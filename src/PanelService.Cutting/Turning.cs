namespace PanelService.Cutting;

/// <summary>How a piece may lie on a stock rectangle.</summary>
[Flags]
public enum Turning
{
    /// <summary>Not at all: this stock cannot serve the piece.</summary>
    None = 0,

    /// <summary>Its width along the stock's width.</summary>
    Upright = 1,

    /// <summary>Its width along the stock's height.</summary>
    Turned = 2,

    /// <summary>Either way.</summary>
    Either = Upright | Turned,
}
