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
}

/// <summary>Cuts made elsewhere, from edge to edge, until every part is small enough.</summary>
/// <param name="Parts">How large a part may be.</param>
/// <param name="Kerf">What one of these cuts turns to dust.</param>
public sealed record FirstCuts(PartLimits Parts, long Kerf);
