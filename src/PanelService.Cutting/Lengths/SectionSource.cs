// Problem: draw a section of a strip, from selvedge to selvedge, that holds a certain piece, others that are still there, and wastes
//          next to nothing.
// Idea:    a block of a table as wide as the strip; or two blocks of one length beside one another that are. There are far too
//          many pairs to list them: the first is drawn from those that hold the piece, the second from those that go with it (PartList).
// Source:  ours.
// Cost:    some dozen looks a draw.
// Not:     every section: blocks are those of tables.
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>Draws sections of a strip.</summary>
internal sealed class SectionSource
{
    private const int Tries = 60;
    private const int Partners = 8;

    // Sections of more pieces than this leave the rest too little to choose from.
    private const int MostPieces = 14;

    private readonly StripPieces _strip;
    private readonly int _narrower;
    private readonly double _share;
    private readonly PartList<SectionPart>[] _holding;
    private readonly Dictionary<(int Length, int Width), PartList<SectionPart>> _bySize;

    /// <summary>Gathers the blocks of some tables.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="narrower">Sections may be narrower than the strip by so much.</param>
    /// <param name="share">The area sections may waste for each unit of their length.</param>
    /// <param name="random">Where chance comes from.</param>
    public SectionSource(StripPieces strip, IEnumerable<BlockTable> tables, int narrower, double share, SeededRandom random)
    {
        (_strip, _narrower, _share) = (strip, narrower, share);
        SectionPart[] parts = [.. tables.SelectMany(Parts).Where(Suits)];
        _holding = [.. strip.ByPiece(parts, part => part.Set, random)];
        _bySize = parts.GroupBy(part => (part.Length, part.Width)).ToDictionary(same => same.Key, same => new PartList<SectionPart>(same, part => part.Set, random));
    }

    /// <summary>How many blocks hold a piece.</summary>
    /// <param name="piece">The piece.</param>
    public int Holding(int piece) => _holding[piece].Count;

    /// <summary>Draws a section.</summary>
    /// <param name="piece">A piece it is to hold.</param>
    /// <param name="open">The pieces that are still there.</param>
    /// <param name="room">It is no longer than this.</param>
    /// <param name="random">Where chance comes from.</param>
    /// <returns>A section; null where none was come by.</returns>
    public StripSection? Draw(int piece, UInt128 open, int room, SeededRandom random)
    {
        var look = _holding[piece].Begin(Tries, random);
        while (look.Next(open, out var first))
        {
            if (first.Length <= room && Completed(first, open & ~first.Set, random) is { } section)
            {
                return section;
            }
        }

        return null;
    }

    private static IEnumerable<SectionPart> Parts(BlockTable table)
    {
        for (int i = 0; i < table.All.Count; i++)
        {
            var block = table.All[i];
            yield return new SectionPart(table, i, block.Set, block.Width, block.Length, block.Waste);
            if (table.Turn && block.Width != block.Length)
            {
                yield return new SectionPart(table, i, block.Set, block.Length, block.Width, block.Waste);
            }
        }
    }

    private bool Suits(SectionPart part) => part.Width <= _strip.Width && part.Length <= _strip.Length && part.Waste <= _share * part.Length;

    private StripSection? Completed(SectionPart first, UInt128 open, SeededRandom random)
    {
        int beside = _strip.Width - first.Width;
        double waste = (_share * first.Length) - first.Waste;
        if (beside <= _narrower)
        {
            return beside * first.Length <= waste ? new StripSection(first.Set, first.Length, first, null) : null;
        }

        int most = MostPieces - (int)UInt128.PopCount(first.Set);
        for (int narrower = 0; narrower <= _narrower && narrower * first.Length <= waste; narrower++)
        {
            if (!_bySize.TryGetValue((first.Length, beside - narrower), out var seconds))
            {
                continue;
            }

            var look = seconds.Begin(Partners, random);
            while (look.Next(open, out var second))
            {
                if (second.Waste + (narrower * first.Length) <= waste && (int)UInt128.PopCount(second.Set) <= most)
                {
                    return new StripSection(first.Set | second.Set, first.Length, first, second);
                }
            }
        }

        return null;
    }
}

/// <summary>A block of a table, the way it lies.</summary>
/// <param name="Table">Where it is from.</param>
/// <param name="At">Its place there.</param>
/// <param name="Set">Its pieces: one bit for each.</param>
/// <param name="Width">Its width as it lies.</param>
/// <param name="Length">Its length as it lies.</param>
/// <param name="Waste">The area in it that is no piece's.</param>
internal sealed record SectionPart(BlockTable Table, int At, UInt128 Set, int Width, int Length, int Waste)
{
    /// <summary>How the block lies.</summary>
    public Block Lying() => Table.Lying(At, turned: Table.All[At].Length != Length);
}

/// <summary>A part of a strip from selvedge to selvedge.</summary>
/// <param name="Set">Its pieces: one bit for each.</param>
/// <param name="Length">Its length.</param>
/// <param name="First">Its block, or the first of two beside one another.</param>
/// <param name="Second">The second of two.</param>
internal sealed record StripSection(UInt128 Set, int Length, SectionPart First, SectionPart? Second)
{
    /// <summary>How the section lies.</summary>
    public Block Lying() => Second is null ? First.Lying() : BlockMath.Join(Axis.X, First.Lying(), Second.Lying());
}
