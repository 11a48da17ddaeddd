namespace PanelService.Cutting;

/// <summary>Edges of a rectangle on its sheet.</summary>
[Flags]
public enum SheetEdges
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>Where x is least.</summary>
    Left = 1,

    /// <summary>Where x is greatest.</summary>
    Right = 2,

    /// <summary>Where y is least.</summary>
    Bottom = 4,

    /// <summary>Where y is greatest.</summary>
    Top = 8,

    /// <summary>All four.</summary>
    All = Left | Right | Bottom | Top,
}
