using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>
/// Rectangles to be cut out of sheets and of goods sold by length, by guillotine cuts at the least total price. All
/// sizes are whole numbers of one unit of the caller's choosing; nothing is lost in a cut.
/// </summary>
/// <param name="Sheets">What has a length of its own: remnants, whole rolls.</param>
/// <param name="Lengths">What is cut off a roll in whole steps.</param>
/// <param name="Pieces">What is wanted. A piece's <see cref="Piece.On"/> has one entry per sheet, then one per length.</param>
public sealed record LengthProblem(ImmutableArray<Stock> Sheets, ImmutableArray<LengthStock> Lengths, ImmutableArray<Piece> Pieces);

/// <summary>Goods sold by length: any whole number of steps, in one piece.</summary>
/// <param name="Width">Usable width; above 0.</param>
/// <param name="Step">Length of one step; above 0.</param>
/// <param name="Price">Price of one step, 0 or more.</param>
/// <param name="Limit">At most so many steps in all; more are of no use.</param>
/// <param name="Paid">The first so many steps cost nothing: they are paid for, whether cut into or not.</param>
public sealed record LengthStock(long Width, long Step, long Price, int Limit, int Paid = 0);
