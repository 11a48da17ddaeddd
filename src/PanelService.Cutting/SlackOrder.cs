// Problem: an arrangement seldom needs all the room it has; what is cut off when, so that the largest leftover worth keeping is
//          as large as the arrangement lets it be?
// Idea:    before a stack is parted, what is too much can be cut off along either axis, in either order, or be left: then
//          every part has its share of what is too much across, and the last one all that is too much along. Of these five ways
//          the best for a stack in a room is that whose strips, or whose parts in their rooms, have the largest leftover; blocks
//          and rooms come again and are looked at once. Where ways are equal the one that cuts most off at once is taken, and for a
//          sheet that is not cut for its leftover only these two ways count: fewer cuts, and fewer settings.
// Source:  a programme over the arrangement's tree; that the strip from edge to edge comes first where it is no smaller is
//          common practice.
// Cost:    five times the blocks times the rooms they come in, some two or three; less where a room has nothing larger to give.
// Not:     other arrangements of the same pieces, nor parts of a stack in another order.
using System.Collections.Immutable;

namespace PanelService.Cutting;

/// <summary>Chooses what is cut off a room before the block in it is parted.</summary>
/// <param name="sizes">Each piece's size as cut.</param>
/// <param name="frame">The sheet: its kerf, and what a leftover must hold to be kept.</param>
internal sealed class SlackOrder(ImmutableArray<(long Width, long Height)> sizes, SheetFrame frame)
{
    private static readonly ImmutableArray<Axis>[] AtOnce = [[Axis.X, Axis.Y], [Axis.Y, Axis.X]];
    private static readonly ImmutableArray<Axis>[] Ways = [.. AtOnce, [Axis.X], [Axis.Y], []];

    private readonly Dictionary<Block, Part> _parts = new(ReferenceEqualityComparer.Instance);

    /// <summary>The axes along which what is too much is cut off before the block is parted, in order.</summary>
    /// <param name="block">The block.</param>
    /// <param name="width">The room's width, no less than the block's.</param>
    /// <param name="height">Its height.</param>
    public ImmutableArray<Axis> Of(Block block, long width, long height) => Best(PartOf(block), (width, height)).Way;

    /// <summary>A leftover's area, and above that of any sheet where it is kept: one that is kept goes before any that is not.</summary>
    public Int128 Rank(long width, long height)
    {
        if (width <= 0 || height <= 0)
        {
            return 0;
        }

        return (frame.Keeps(width, height) ? Above : 0) + ((Int128)width * height);
    }

    private Int128 Above => (Int128)frame.Width * frame.Height;

    private (Int128 Rank, ImmutableArray<Axis> Way) Best(Part part, (long Width, long Height) room)
    {
        if (!part.Known.TryGetValue(room, out var best))
        {
            best = (-1, []);
            foreach (var way in part.Inner.IsEmpty || !frame.ForLeftover ? AtOnce : Ways)
            {
                var rank = RankOf(part, way, room, best.Rank);
                best = rank > best.Rank ? (rank, way) : best;
            }

            part.Known.Add(room, best);
        }

        return best;
    }

    private Int128 RankOf(Part part, ImmutableArray<Axis> way, (long Width, long Height) room, Int128 known)
    {
        Int128 largest = 0;
        foreach (var axis in way)
        {
            largest = Int128.Max(largest, axis == Axis.X
                ? Rank(room.Width - part.Width - frame.Kerf, room.Height)
                : Rank(room.Width, room.Height - part.Height - frame.Kerf));
            room = axis == Axis.X ? room with { Width = part.Width } : room with { Height = part.Height };
        }

        for (int i = 0; i < part.Inner.Length; i++)
        {
            var inner = part.Inner[i];
            bool last = i == part.Inner.Length - 1;
            var own = part.Axis == Axis.X
                ? (inner.Width + (last ? room.Width - part.Width : 0), room.Height)
                : (room.Width, inner.Height + (last ? room.Height - part.Height : 0));
            if (Above + ((Int128)own.Item1 * own.Item2) - inner.Filled > Int128.Max(largest, known))
            {
                largest = Int128.Max(largest, Best(inner, own).Rank);
            }
        }

        return largest;
    }

    private Part PartOf(Block block)
    {
        if (!_parts.TryGetValue(block, out var part))
        {
            part = block is StackBlock stack
                ? Stacked(stack.Axis, [.. stack.Parts.Select(PartOf)])
                : Alone((PieceBlock)block);
            _parts.Add(block, part);
        }

        return part;
    }

    private Part Alone(PieceBlock piece)
    {
        var (width, height) = piece.Turned ? (sizes[piece.Piece].Height, sizes[piece.Piece].Width) : sizes[piece.Piece];
        return new Part(default, [], width, height, (Int128)width * height);
    }

    private Part Stacked(Axis axis, ImmutableArray<Part> inner)
    {
        long gaps = (inner.Length - 1) * frame.Kerf;
        var filled = inner.Aggregate(Int128.Zero, (sum, part) => sum + part.Filled);
        return axis == Axis.X
            ? new Part(axis, inner, inner.Sum(part => part.Width) + gaps, inner.Max(part => part.Height), filled)
            : new Part(axis, inner, inner.Max(part => part.Width), inner.Sum(part => part.Height) + gaps, filled);
    }

    /// <summary>A block, measured, with what is known of it in the rooms it came in.</summary>
    private sealed record Part(Axis Axis, ImmutableArray<Part> Inner, long Width, long Height, Int128 Filled)
    {
        public Dictionary<(long Width, long Height), (Int128 Rank, ImmutableArray<Axis> Way)> Known { get; } = [];
    }
}
