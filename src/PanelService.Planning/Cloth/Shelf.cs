using System.Collections.Immutable;
using PanelService.Cutting;

namespace PanelService.Planning.Cloth;

/// <summary>Shelves across a cloth that hold the same: pieces side by side from selvedge to selvedge.</summary>
/// <param name="Along">How much of the cloth's length one takes, in steps of length.</param>
/// <param name="Left">What is left of its width.</param>
/// <param name="Pieces">What one holds: pieces as in the patterns, how they lie, how many.</param>
/// <param name="Copies">How many there are, 1 or more.</param>
internal sealed record Shelf(long Along, long Left, ImmutableList<(PieceBlock Piece, int Count)> Pieces, int Copies)
{
    /// <summary>How many pieces one holds.</summary>
    public int Held => Pieces.Sum(piece => piece.Count);

    /// <summary>One of them as the engine writes it.</summary>
    public Block ToBlock()
    {
        ImmutableArray<Block> blocks = [.. Pieces.SelectMany(piece => Enumerable.Repeat<Block>(piece.Piece, piece.Count))];
        return blocks.Length == 1 ? blocks[0] : new StackBlock(Axis.X, blocks);
    }

    /// <summary>So many of them with more pieces on each.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="across">What one takes of the width.</param>
    /// <param name="count">How many on each.</param>
    /// <param name="copies">How many shelves.</param>
    public Shelf With(PieceBlock piece, long across, int count, int copies) =>
        new(Along, Left - (across * count), Pieces.Add((piece, count)), copies);
}
