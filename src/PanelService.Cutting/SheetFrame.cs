namespace PanelService.Cutting;

/// <summary>The whole sheet a block is cut from.</summary>
/// <param name="Width">Full width.</param>
/// <param name="Height">Full height.</param>
/// <param name="EdgeTrim">What is lost at each of the four edges, the trimming cut included; 0: the edges are good.</param>
/// <param name="Kerf">What one cut turns to dust.</param>
public sealed record SheetFrame(long Width, long Height, long EdgeTrim, long Kerf);
