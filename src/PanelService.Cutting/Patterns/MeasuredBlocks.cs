// Problem: a search that takes stacks apart meets the same runs of parts again and again; to measure and compare them costs more
//          than to decide about them.
// Idea:    every arrangement is made once and measured once: equal ones are one object, compared and hashed as such.
// Source:  hash consing: Ershov, Communications of the ACM 1 (1958).
// Cost:    one look into a table an arrangement.
using System.Collections.Immutable;

namespace PanelService.Cutting.Patterns;

/// <summary>Blocks and their sizes, equal ones once. For one search, on one thread.</summary>
internal sealed class MeasuredBlocks(ImmutableArray<(long Width, long Height)> sizes, long kerf)
{
    private readonly Dictionary<Block, MeasuredBlock> _made = [];
    private readonly Dictionary<(MeasuredBlock Stack, int From, int To), MeasuredBlock> _slices = [];

    /// <summary>The block as known.</summary>
    public MeasuredBlock Of(Block block)
    {
        if (!_made.TryGetValue(block, out var known))
        {
            var (width, height) = BlockMath.Size(block, sizes, kerf);
            known = new MeasuredBlock(block, width, height);
            _made.Add(block, known);
        }

        return known;
    }

    /// <summary>Some of a stack's parts that follow one another; a single one stands for itself.</summary>
    public MeasuredBlock Of(MeasuredBlock stack, int from, int to)
    {
        if (!_slices.TryGetValue((stack, from, to), out var slice))
        {
            var whole = (StackBlock)stack.Block;
            slice = Of(to - from == 1 ? whole.Parts[from] : whole with { Parts = whole.Parts[from..to] });
            _slices.Add((stack, from, to), slice);
        }

        return slice;
    }
}

/// <summary>A block and the smallest rectangle that holds it; the same one only where it is the same object.</summary>
internal sealed class MeasuredBlock(Block block, long width, long height)
{
    public Block Block => block;

    public long Along(Axis axis) => axis == Axis.X ? width : height;
}
