using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>
/// Rectangles to be cut out of stock rectangles by guillotine cuts (from edge to edge, any number of stages)
/// at the least total price. All sizes are whole numbers of one unit of the caller's choosing.
/// </summary>
/// <param name="Stocks">What can be cut up.</param>
/// <param name="Pieces">What is wanted. A piece's <see cref="Piece.On"/> has one entry per stock.</param>
/// <param name="Kerf">What one cut turns to dust, in the same unit; 0 or more.</param>
public sealed record CuttingProblem(ImmutableArray<Stock> Stocks, ImmutableArray<Piece> Pieces, long Kerf)
{
    /// <summary>
    /// The farthest the saw's fence goes: of the two parts of every cut one is no wider. Null: every cut can be made. Some
    /// strategies do not know it and are left out where it is set.
    /// </summary>
    public long? FenceReach { get; init; }
}
