namespace PanelService.Cutting;

/// <summary>The whole sheet a block is cut from.</summary>
/// <param name="Width">Full width.</param>
/// <param name="Height">Full height.</param>
/// <param name="EdgeTrim">What is lost at each of the four edges, the trimming cut included; 0: the edges are good.</param>
/// <param name="Kerf">What one cut turns to dust.</param>
public sealed record SheetFrame(long Width, long Height, long EdgeTrim, long Kerf)
{
    /// <summary>The cuts that part the sheet before it comes to the saw; null: it comes whole.</summary>
    public FirstCuts? First { get; init; }

    /// <summary>What the saw's fence can hold; null: every cut can be made.</summary>
    public FenceSides? Fence { get; init; }

    /// <summary>What a leftover must hold, either way round, to be worth keeping; nothing: every one is.</summary>
    public (long Width, long Height) SmallestKept { get; init; }

    /// <summary>What lies beside it to the left and to the right and cannot be used itself: a leftover as wide as the sheet keeps it; 0: nothing.</summary>
    public long Selvedge { get; init; }

    /// <summary>
    /// Whether what a block has too much may be left to its parts where one larger leftover comes of that; otherwise it is cut off in
    /// strips from edge to edge before the block is parted, which takes fewer cuts and settings.
    /// </summary>
    public bool ForLeftover { get; init; }

    /// <summary>The whole area, selvedges included.</summary>
    internal double Area => AreaOf(new Rectangle(0, 0, Width, Height));

    /// <summary>A leftover's area, with the selvedges that it keeps.</summary>
    /// <param name="leftover">The leftover.</param>
    internal double AreaOf(Rectangle leftover) => (double)(leftover.Width + (leftover.Width == Width ? 2 * Selvedge : 0)) * leftover.Height;

    /// <summary>Whether a leftover is worth keeping.</summary>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    internal bool Keeps(long width, long height)
    {
        var (one, other) = SmallestKept;
        return (width >= one && height >= other) || (width >= other && height >= one);
    }
}

/// <summary>Cuts made elsewhere, from edge to edge, until every part is small enough.</summary>
/// <param name="Parts">How large a part may be.</param>
/// <param name="Kerf">What one of these cuts turns to dust.</param>
public sealed record FirstCuts(PartLimits Parts, long Kerf);
