namespace PanelService.Cutting.Many;

/// <summary>
/// A node of a bin's slicing tree: a piece, or a stack of parts side by side whose axis is never that of the stack
/// it stands in. All sizes include one kerf.
/// </summary>
internal struct SlicingNode
{
    /// <summary>A stack along x.</summary>
    public const int StackX = -1;

    /// <summary>A stack along y.</summary>
    public const int StackY = -2;

    /// <summary>The shape of a piece (0 or more), or the axis of a stack.</summary>
    public int Kind;

    /// <summary>The stack it stands in; −1 for the root.</summary>
    public int Parent;

    /// <summary>A stack's first part.</summary>
    public int First;

    /// <summary>The next part of the same stack; −1 for the last.</summary>
    public int Next;

    /// <summary>The part before; −1 for the first.</summary>
    public int Previous;

    /// <summary>The width needed.</summary>
    public int Width;

    /// <summary>The height needed.</summary>
    public int Height;

    /// <summary>The width it has by itself, when no other part of the bin moves.</summary>
    public int OwnWidth;

    /// <summary>The height it has by itself.</summary>
    public int OwnHeight;

    /// <summary>The width it could have if all slack of the bin were moved here.</summary>
    public int MostWidth;

    /// <summary>The height it could have if all slack of the bin were moved here.</summary>
    public int MostHeight;
}
