using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>A piece of a strip, or a block of a table, the way it lies.</summary>
/// <param name="Table">The table; null: it is a piece.</param>
/// <param name="At">Its place there; the piece.</param>
/// <param name="Set">Its pieces: one bit for each.</param>
/// <param name="Width">Its width as it lies.</param>
/// <param name="Length">Its length as it lies.</param>
internal readonly record struct StripPart(BlockTable? Table, int At, UInt128 Set, int Width, int Length)
{
    /// <summary>The area in it that is no piece's.</summary>
    public int Waste { get; init; }

    /// <summary>Whether the strip it lies on is the mirrored one of the table's.</summary>
    public bool IsMirrored { get; init; }

    /// <summary>The blocks of a table in every way they may lie.</summary>
    /// <param name="table">The table.</param>
    /// <param name="mirrored">Whether they are to lie on the strip mirrored.</param>
    public static IEnumerable<StripPart> Of(BlockTable table, bool mirrored)
    {
        for (int i = 0; i < table.All.Count; i++)
        {
            var block = table.All[i];
            var (width, length) = mirrored ? (block.Length, block.Width) : (block.Width, block.Length);
            var part = new StripPart(table, i, block.Set, width, length) { Waste = block.Waste, IsMirrored = mirrored };
            yield return part;
            if (table.Turn && width != length)
            {
                yield return part with { Width = length, Length = width };
            }
        }
    }

    /// <summary>How it lies.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="turned">Whether it is turned against its width and length.</param>
    public Block Lying(StripPieces strip, bool turned)
    {
        if (Table is null)
        {
            return strip.Lying(At, turned);
        }

        bool along = turned != IsMirrored;
        var block = Table.Lying(At, turned: Table.All[At].Length != (along ? Width : Length));
        return IsMirrored ? BlockMath.Mirrored(block) : block;
    }
}
