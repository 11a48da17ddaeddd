// Problem: a strip with a little to waste, of so many pieces that no table of blocks reaches from one end to the other: a plan.
// Idea:    sections that waste next to nothing are many (SectionSource). A walk goes from some of them to others (SectionWalk) that
//          leave a dozen pieces or two, and what there is to waste is left to these: a hundredth of a strip of fifty pieces is a
//          twentieth of what twelve need. Whether these fit the rest of the strip is decided for good (RestFronts), and some thousand
//          rests are tried. Where more than a dozen are left, some are put together first, by what the table of blocks has.
//          Long thin pieces make few sections across the strip, but many along it: the strip is looked at mirrored, too.
// Source:  ours.
// Cost:    a tenth of a millisecond a rest, after a third of a second for blocks and sections.
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

    // Of all rests that were ever put together next to none had more pieces than this.
    private const int MostLeft = 22;

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
    private readonly SeededRandom _random;
    private readonly SectionSource _sections;
    private readonly PartList<RestPart>[] _blocks;
    private readonly RestPart[] _pieces;
    private readonly SectionWalk _walk;
    private readonly RestFronts _fronts;
    private readonly HashSet<(UInt128 Open, int Room)> _decided = [];

    private SectionsAndRest(StripPieces strip, SectionSource sections, PartList<RestPart>[] blocks, SeededRandom random)
    {
        (_strip, _sections, _blocks, _random) = (strip, sections, blocks, random);
        _pieces = [.. Enumerable.Range(0, strip.Count).Select(p => new RestPart(null, p, strip.Sizes[p].Width, strip.Sizes[p].Length, UInt128.One << p))];
        _walk = new SectionWalk(strip, sections, FewestParts, random);
        _fronts = new RestFronts(strip.IsFree, strip.Width, strip.Length);
    }

    /// <summary>Gathers blocks and sections.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="work">Where the work of that is counted.</param>
    public static SectionsAndRest Of(StripPieces strip, WorkMeter work)
    {
        var random = new SeededRandom(1);
        int apart = 1 + (int)(strip.Waste * ApartShare / ((long)strip.Width * strip.Length));
        var table = new BlockTable(strip, new TableShape(strip.IsFree, WideTable), work);
        table.Fill();
        var shape = new TableShape(strip.IsFree, SectionTable, SectionPieces, apart, Waste: (int)strip.Waste / WastePart, Drawn: true);
        var small = new BlockTable(strip, shape, work);
        small.Fill();
        var sections = new SectionSource(strip, [table, small], apart, WasteShare * strip.Waste / strip.Length, random);
        return new SectionsAndRest(strip, sections, [.. strip.ByPiece([.. Blocks(table)], part => part.Set, random)], random);
    }

    /// <summary>How many rests were decided.</summary>
    public int Decided { get; private set; }

    /// <summary>Another search of the same blocks and sections.</summary>
    /// <param name="seed">Another seed gives another search.</param>
    public SectionsAndRest Another(ulong seed) => new(_strip, _sections, _blocks, new SeededRandom(seed));

    /// <summary>Draws until the work allowed is done.</summary>
    /// <param name="work">The work allowed.</param>
    /// <returns>How the pieces lie; null where no plan was found.</returns>
    public Block? Advance(WorkMeter work)
    {
        while (!work.Exhausted)
        {
            work.Spend(UnitsOfDraw);
            var taken = _walk.Step();
            if (taken.Left > MostLeft || (taken.Left <= FewestParts && !_decided.Add((taken.Open, taken.Room)))
                || DrawParts(taken.Open, FewestParts + _random.Below(MostParts - FewestParts + 1)) is not { } parts)
            {
                continue;
            }

            if (parts.Count == 0)
            {
                return Plan(taken.Chosen, null);
            }

            Decided++;
            long before = _fronts.Looks;
            bool fit = _fronts.Fit([.. parts.Select(part => (part.Width, part.Length))], taken.Room);
            work.Spend((_fronts.Looks - before) / LooksOfUnit);
            if (fit)
            {
                return Plan(taken.Chosen, _fronts.Plan((part, turned) => parts[part].Lying(_strip, turned)));
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
    private RestPart? DrawBlock(PartList<RestPart> of, UInt128 open)
    {
        RestPart? best = null;
        var look = of.Begin(Tries, _random);
        for (int found = 0; found < Compared && look.Next(open, out var block); found++)
        {
            best = best is null || block.Score > best.Score ? block : best;
        }

        return best;
    }

    /// <summary>A piece, or a block of a table, that is laid as one.</summary>
    private sealed record RestPart(BlockTable? Table, int At, int Width, int Length, UInt128 Set)
    {
        /// <summary>How unlikely a join of it is to be chance.</summary>
        public double Score { get; init; }

        public Block Lying(StripPieces strip, bool turned) => Table is null ? strip.Lying(At, turned) : Table.Lying(At, turned);
    }
}
