using System.Collections.Immutable;

namespace PanelService.Checking.Bounds;

/// <summary>Rectangles to be cut out of stock rectangles, as plain numbers, with the plan's price.</summary>
/// <param name="Stocks">What can be cut up.</param>
/// <param name="Pieces">What is wanted.</param>
/// <param name="Kerf">What one cut turns to dust.</param>
/// <param name="Spent">The price of a plan that holds every piece.</param>
/// <param name="LeastPossible">The bound printed.</param>
public sealed record BoundCase(
    ImmutableArray<CaseStock> Stocks, ImmutableArray<CasePiece> Pieces, long Kerf, long Spent, long LeastPossible)
{
    /// <summary>The farthest the saw's fence goes: of every cut one of the two parts is no wider. Null: as far as one likes.</summary>
    public long? FenceReach { get; init; }

    /// <summary>The widest that the narrower part of a cut may be, one kerf included.</summary>
    public long MostNear => FenceReach is { } reach ? reach + Kerf : long.MaxValue;

    /// <summary>How many pieces are wanted in all.</summary>
    public long PieceCount => Pieces.Sum(piece => (long)piece.Demand);
}

/// <summary>A stock rectangle.</summary>
/// <param name="Width">Usable width, whole units.</param>
/// <param name="Height">Usable height.</param>
/// <param name="Price">What one costs.</param>
/// <param name="Limit">How many there are; null: any number.</param>
public sealed record CaseStock(long Width, long Height, long Price, int? Limit);

/// <summary>A piece.</summary>
/// <param name="Width">Width as cut, whole units.</param>
/// <param name="Height">Height as cut.</param>
/// <param name="Demand">How many are wanted.</param>
/// <param name="On">Per stock: whether it may lie with its width along the stock's, and whether turned.</param>
public sealed record CasePiece(long Width, long Height, int Demand, ImmutableArray<(bool Upright, bool Turned)> On);
