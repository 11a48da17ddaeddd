using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>
/// An arrangement that guillotine cuts can part: a single piece, or blocks side by side along one axis.
/// It says how pieces lie to one another, not where: sizes and the kerf turn it into places.
/// </summary>
public abstract record Block
{
    private protected Block()
    {
    }
}

/// <summary>A block of one piece.</summary>
/// <param name="Piece">The piece's index in the problem.</param>
/// <param name="Turned">Whether its width lies along y.</param>
public sealed record PieceBlock(int Piece, bool Turned) : Block;

/// <summary>Blocks beside one another, one kerf between each two.</summary>
/// <param name="Axis">The axis they follow one another along.</param>
/// <param name="Parts">Two or more blocks, in order of rising coordinate.</param>
public sealed record StackBlock(Axis Axis, ImmutableArray<Block> Parts) : Block
{
    /// <summary>Equal where the parts are equal one by one (an immutable array alone compares by reference).</summary>
    /// <param name="other">The block to compare with.</param>
    /// <returns>Whether both stand for the same arrangement.</returns>
    public bool Equals(StackBlock? other) =>
        other is not null && Axis == other.Axis && Parts.AsSpan().SequenceEqual(other.Parts.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(Axis);
        foreach (var part in Parts)
        {
            hash.Add(part);
        }

        return hash.ToHashCode();
    }
}
