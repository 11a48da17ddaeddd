using System.Collections.Immutable;

namespace PanelService.Checking.Bounds;

/// <summary>Rectangles to be cut out of sheets and of goods sold by length, as plain numbers, with the plan's price.</summary>
/// <param name="Goods">What can be bought.</param>
/// <param name="Pieces">What is wanted; <see cref="CasePiece.On"/> is per good.</param>
/// <param name="Spent">The price of a plan that holds every piece.</param>
/// <param name="LeastPossible">The bound printed.</param>
public sealed record LengthCase(ImmutableArray<CaseGood> Goods, ImmutableArray<CasePiece> Pieces, long Spent, long LeastPossible)
{
    /// <summary>How many pieces are wanted in all.</summary>
    public long PieceCount => Pieces.Sum(piece => (long)piece.Demand);
}

/// <summary>A sheet, or something sold by length in whole steps.</summary>
/// <param name="Width">Usable width, whole units.</param>
/// <param name="Extent">A sheet's length, or one step.</param>
/// <param name="Price">What one costs.</param>
/// <param name="Most">How many there are; null: any number.</param>
/// <param name="ByLength">Whether several of it are one longer piece.</param>
/// <param name="Paid">The first so many cost nothing.</param>
public sealed record CaseGood(long Width, long Extent, long Price, int? Most, bool ByLength, int Paid)
{
    /// <summary>What so many cost.</summary>
    /// <param name="count">How many.</param>
    public long PriceOf(int count) => Math.Max(0, count - Paid) * Price;
}

/// <summary>What is said to make a plan below a price impossible.</summary>
/// <param name="Claim">The price: no plan costs less.</param>
/// <param name="Inequalities">Each: so many of a good hold no more than stated.</param>
/// <param name="Exclusions">Each: no plan uses at most so many of each good.</param>
public sealed record StatedLengths(
    long Claim, ImmutableArray<StatedHolds> Inequalities, ImmutableArray<ImmutableArray<int>> Exclusions);

/// <summary>A worth per piece, and what counts of each good hold at the most.</summary>
/// <param name="Values">Per piece, 0 or more.</param>
/// <param name="Holds">Per good and count, from 0 on.</param>
public sealed record StatedHolds(ImmutableArray<long> Values, ImmutableArray<ImmutableArray<long>> Holds);
