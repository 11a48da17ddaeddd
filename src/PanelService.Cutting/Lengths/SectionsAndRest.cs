// Problem: a strip with a little to waste, of so many pieces that no table of blocks reaches from one end to the other: a plan.
// Idea:    sections that waste next to nothing are many (SectionSource). Some are drawn, rare pieces first, until a dozen pieces are
//          left, and all there is to waste is left to these: a hundredth of a strip of fifty pieces is a twentieth of what twelve
//          need. Whether these fit the rest of the strip is decided for good (RestFronts), in a millisecond, and some thousand
//          rests are tried. Where more than a dozen are left, some are put together first, by what the table of blocks has.
//          Long thin pieces make few sections across the strip, but many along it: the strip is looked at mirrored, too.
// Source:  ours.
// Cost:    a millisecond a draw, after half a second for blocks and sections.
// Not:     complete.
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Draws sections of a strip and decides what is left.</summary>
internal sealed class SectionsAndRest
{
    private const int FewestParts = 12;
    private const int MostParts = 14;

    // Blocks that are one part of the rest have no more pieces than this; of so many that come up the likeliest is taken.
    private const int PartPieces = 8;
    private const int Compared = 3;
    private const int Tries = 60;

    // Sections may waste this share of what would be theirs, blocks for them this part of all there is to waste, and sides in them
    // be one step more apart for every 1/64 of the strip that is waste.
    private const double WasteShare = 0.5;
    private const int WastePart = 8;
    private const int ApartShare = 64;

    // Blocks kept of each number of pieces: without waste, and of few pieces with a little.
    private const int WideTable = 1000;
    private const int SectionTable = 3000;
    private const int SectionPieces = 6;

    private const int UnitsOfDraw = 30;
    private const int LooksOfUnit = 200;

    private readonly StripPieces _strip;
    private readonly SeededRandom _random = new(1);
    private readonly SectionSource _sections;
    private readonly RestPart[][] _blocks;
    private readonly RestPart[] _pieces;
    private readonly int[] _rarestFirst;

    /// <summary>Gathers blocks and sections.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="work">Where the work of that is counted.</param>
    public SectionsAndRest(StripPieces strip, WorkMeter work)
    {
        _strip = strip;
        int apart = 1 + (int)(strip.Waste * ApartShare / ((long)strip.Width * strip.Length));
        _sections = new SectionSource(strip, apart, WasteShare * strip.Waste / strip.Length);
        var table = new BlockTable(strip, new TableShape(strip.IsFree, WideTable), work);
        table.Fill();
        _sections.Add(table);
        var shape = new TableShape(strip.IsFree, SectionTable, SectionPieces, apart, Waste: (int)strip.Waste / WastePart, Drawn: true);
        var small = new BlockTable(strip, shape, work);
        small.Fill();
        _sections.Add(small);
        _blocks = ByPiece(Blocks(table));
        _pieces = [.. Enumerable.Range(0, strip.Count).Select(p => new RestPart(null, p, strip.Sizes[p].Width, strip.Sizes[p].Length, UInt128.One << p))];
        _rarestFirst = [.. Enumerable.Range(0, strip.Count).OrderBy(_sections.Holding)];
    }

    /// <summary>Draws until the work allowed is done.</summary>
    /// <param name="work">The work allowed.</param>
    /// <returns>How the pieces lie; null where no plan was found.</returns>
    public Block? Advance(WorkMeter work)
    {
        while (!work.Exhausted)
        {
            work.Spend(UnitsOfDraw);
            var (sections, open, room) = DrawSections();
            if (DrawParts(open, FewestParts + _random.Below(MostParts - FewestParts + 1)) is not { } parts)
            {
                continue;
            }

            if (parts.Count == 0)
            {
                return Plan(sections, null);
            }

            var fronts = new RestFronts([.. parts.Select(part => (part.Width, part.Length))], _strip.IsFree, _strip.Width, room);
            bool fit = fronts.Fit();
            work.Spend(fronts.Looks / LooksOfUnit);
            if (fit)
            {
                return Plan(sections, fronts.Plan((part, turned) => parts[part].Lying(_strip, turned)));
            }
        }

        return null;
    }

    private static Block Plan(List<StripSection> sections, Block? rest)
    {
        var lying = sections.Select(section => section.Lying());
        return (rest is null ? lying : lying.Append(rest)).Aggregate((a, b) => BlockMath.Join(Axis.Y, a, b));
    }

    private static IEnumerable<RestPart> Blocks(BlockTable table)
    {
        for (int i = 0; i < table.All.Count; i++)
        {
            var block = table.All[i];
            int pieces = (int)UInt128.PopCount(block.Set);
            if (pieces is > 1 and <= PartPieces)
            {
                yield return new RestPart(table, i, block.Width, block.Length, block.Set) { Score = block.Score / (pieces - 1) };
            }
        }
    }

    private (List<StripSection> Sections, UInt128 Open, int Room) DrawSections()
    {
        var chosen = new List<StripSection>();
        var open = _strip.Everything;
        int room = _strip.Length;
        int left = _strip.Count;
        foreach (int p in _rarestFirst)
        {
            if (left <= FewestParts)
            {
                break;
            }

            if ((open >> p & UInt128.One) != 0 && _sections.Draw(p, open, room, _random) is { } section)
            {
                chosen.Add(section);
                room -= section.Length;
                open &= ~section.Set;
                left = (int)UInt128.PopCount(open);
            }
        }

        return (chosen, open, room);
    }

    /// <summary>What is left as no more parts than so many, some of them blocks; null where that did not come out.</summary>
    private List<RestPart>? DrawParts(UInt128 open, int most)
    {
        var parts = new List<RestPart>();
        int count = (int)UInt128.PopCount(open);
        for (int tries = 0; tries < Tries && count > most; tries++)
        {
            int p = _random.Below(_strip.Count);
            if ((open >> p & UInt128.One) != 0 && DrawBlock(_blocks[p], open) is { } block)
            {
                parts.Add(block);
                open &= ~block.Set;
                count -= (int)UInt128.PopCount(block.Set) - 1;
            }
        }

        if (count > most)
        {
            return null;
        }

        parts.AddRange(StripPieces.PiecesOf(open).Select(p => _pieces[p]));
        return parts;
    }

    /// <summary>The likeliest of a few.</summary>
    private RestPart? DrawBlock(RestPart[] of, UInt128 open)
    {
        RestPart? best = null;
        int from = _random.Below(Math.Max(1, of.Length));
        int found = 0;
        for (int t = 0; t < Math.Min(Tries, of.Length) && found < Compared; t++)
        {
            var block = Drawn(of, from, t);
            if ((block.Set & ~open) == 0)
            {
                found++;
                best = best is null || block.Score > best.Score ? block : best;
            }
        }

        return best;
    }

    /// <summary>One of a short list in turn, of a long one by chance.</summary>
    private RestPart Drawn(RestPart[] of, int from, int turn) => of.Length <= Tries ? of[(from + turn) % of.Length] : of[_random.Below(of.Length)];

    private RestPart[][] ByPiece(IEnumerable<RestPart> parts)
    {
        List<RestPart>[] lists = [.. Enumerable.Range(0, _strip.Count).Select(_ => new List<RestPart>())];
        foreach (var part in parts)
        {
            foreach (int p in StripPieces.PiecesOf(part.Set))
            {
                lists[p].Add(part);
            }
        }

        return [.. lists.Select(list => list.ToArray())];
    }

    /// <summary>A piece, or a block of a table, that is laid as one.</summary>
    private sealed record RestPart(BlockTable? Table, int At, int Width, int Length, UInt128 Set)
    {
        /// <summary>How unlikely a join of it is to be chance.</summary>
        public double Score { get; init; }

        public Block Lying(StripPieces strip, bool turned) => Table is null ? strip.Lying(At, turned) : Table.Lying(At, turned);
    }
}
