using System.Collections.Immutable;

namespace PanelService.Cutting.Patterns;

/// <summary>Sizes, counts and changes of blocks.</summary>
internal static class BlockMath
{
    /// <summary>Two blocks beside one another; stacks along the same axis become one.</summary>
    /// <param name="axis">The axis they follow one another along.</param>
    /// <param name="first">The nearer.</param>
    /// <param name="second">The farther.</param>
    public static Block Join(Axis axis, Block first, Block second) =>
        new StackBlock(axis, [.. PartsAlong(axis, first), .. PartsAlong(axis, second)]);

    /// <summary>A block with the axes of its cuts exchanged; its pieces stay as they lie.</summary>
    /// <param name="block">The block.</param>
    public static Block Mirrored(Block block) => block is StackBlock stack
        ? new StackBlock(stack.Axis == Axis.X ? Axis.Y : Axis.X, [.. stack.Parts.Select(Mirrored)])
        : block;

    /// <summary>A block with its pieces under other numbers.</summary>
    /// <param name="block">The block.</param>
    /// <param name="numbers">Per piece: its new number.</param>
    public static Block Renamed(Block block, int[] numbers) => block is StackBlock stack
        ? stack with { Parts = [.. stack.Parts.Select(part => Renamed(part, numbers))] }
        : (PieceBlock)block with { Piece = numbers[((PieceBlock)block).Piece] };

    /// <summary>The smallest rectangle that holds a block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="sizes">Each piece's size as cut.</param>
    /// <param name="kerf">The kerf between parts.</param>
    public static (long Width, long Height) Size(Block block, ImmutableArray<(long Width, long Height)> sizes, long kerf)
    {
        switch (block)
        {
            case PieceBlock { Turned: var turned, Piece: var piece }:
                return turned ? (sizes[piece].Height, sizes[piece].Width) : sizes[piece];
            case StackBlock stack:
                long along = -kerf;
                long across = 0;
                foreach (var part in stack.Parts)
                {
                    var (width, height) = Size(part, sizes, kerf);
                    along += kerf + (stack.Axis == Axis.X ? width : height);
                    across = Math.Max(across, stack.Axis == Axis.X ? height : width);
                }

                return stack.Axis == Axis.X ? (along, across) : (across, along);
            default:
                throw new InvalidOperationException("Blocks are a closed family.");
        }
    }

    /// <summary>Whether of every stack in a block no more than one part is wider, along the stack, than a fence reaches.</summary>
    /// <param name="block">The block.</param>
    /// <param name="sizes">Each piece's size as cut.</param>
    /// <param name="kerf">The kerf between parts.</param>
    /// <param name="reach">The farthest the fence goes.</param>
    public static bool IsWithin(Block block, ImmutableArray<(long Width, long Height)> sizes, long kerf, long reach)
    {
        if (block is not StackBlock stack)
        {
            return true;
        }

        int wide = stack.Parts.Select(part => Size(part, sizes, kerf)).Count(size => (stack.Axis == Axis.X ? size.Width : size.Height) > reach);
        return wide <= 1 && stack.Parts.All(part => IsWithin(part, sizes, kerf, reach));
    }

    /// <summary>Adds how often each piece stands in a block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="counts">Per piece; added to.</param>
    public static void Count(Block block, Span<int> counts)
    {
        if (block is PieceBlock piece)
        {
            counts[piece.Piece]++;
            return;
        }

        foreach (var part in ((StackBlock)block).Parts)
        {
            Count(part, counts);
        }
    }

    /// <summary>How often each piece stands in a block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="pieces">How many pieces the problem has.</param>
    public static int[] Counts(Block block, int pieces)
    {
        int[] counts = new int[pieces];
        Count(block, counts);
        return counts;
    }

    /// <summary>The block without what is too much of it; null where nothing is left.</summary>
    /// <param name="block">The block.</param>
    /// <param name="room">Per piece, how many may still be placed; what is kept is taken off it.</param>
    public static Block? Prune(Block block, Span<int> room)
    {
        if (block is PieceBlock piece)
        {
            if (room[piece.Piece] == 0)
            {
                return null;
            }

            room[piece.Piece]--;
            return block;
        }

        var stack = (StackBlock)block;
        Block? kept = null;
        foreach (var part in stack.Parts)
        {
            if (Prune(part, room) is { } left)
            {
                kept = kept is null ? left : Join(stack.Axis, kept, left);
            }
        }

        return kept;
    }

    private static ImmutableArray<Block> PartsAlong(Axis axis, Block block) =>
        block is StackBlock stack && stack.Axis == axis ? stack.Parts : [block];
}
