using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>One kind of rectangle to be cut out.</summary>
/// <param name="Width">Width as cut, in the caller's whole units; above 0.</param>
/// <param name="Height">Height as cut, in the same units; above 0.</param>
/// <param name="Demand">How many are needed, 1 or more.</param>
/// <param name="On">For every stock of the problem, in its order: how the piece may lie there.</param>
public sealed record Piece(long Width, long Height, int Demand, ImmutableArray<Turning> On);
