using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>A sheet with its cuts in an order they can be made in, and what they leave.</summary>
/// <param name="Cuts">Each cut's workpiece is left by the cuts before it.</param>
/// <param name="Pieces">The pieces, none overlapping.</param>
/// <param name="Leftovers">Everything else that is not dust.</param>
public sealed record SheetCuts(
    ImmutableArray<CutLine> Cuts,
    ImmutableArray<PlacedPiece> Pieces,
    ImmutableArray<Leftover> Leftovers);
