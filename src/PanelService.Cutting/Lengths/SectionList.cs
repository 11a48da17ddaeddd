// Problem: the sections of a strip, from selvedge to selvedge, that waste next to nothing.
// Idea:    a block as wide as the strip; or two blocks of one length beside one another that are, found by their sizes. Each is
//          listed once, under that piece of it which fewest sections hold: who has such a piece left looks through one list.
// Source:  ours.
// Cost:    pairs of blocks that go together: for 100,000 blocks about a tenth of a second.
// Not:     every section: blocks are those of tables, and pairs are no longer looked for once there are enough.
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Lengths;

/// <summary>The sections of a strip.</summary>
internal sealed class SectionList
{
    // Sections of two blocks with more pieces than this leave the rest too little to choose from.
    private const int MostPieces = 14;

    // To look through more takes longer than it helps.
    private const int Enough = 150_000;
    private const int CheckEvery = 1000;

    private readonly StripPieces _strip;
    private readonly StripPart[] _parts;
    private readonly int _narrower;
    private readonly double _share;

    /// <summary>Lists the sections made of some parts.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="parts">The parts, those of few pieces first.</param>
    /// <param name="narrower">Sections may be narrower than the strip by so much.</param>
    /// <param name="share">The area sections may waste for each unit of their length.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public SectionList(StripPieces strip, IEnumerable<StripPart> parts, int narrower, double share, CancellationToken cancellation)
    {
        (_strip, _narrower, _share) = (strip, narrower, share);
        _parts = [.. Stoppable(parts, cancellation).Where(Suits)];
        var sections = All(cancellation);
        int[] holding = new int[strip.Count];
        foreach (var section in Stoppable(sections, cancellation))
        {
            foreach (int piece in StripPieces.PiecesOf(section.Set))
            {
                holding[piece]++;
            }
        }

        int[] rarest = [.. Enumerable.Range(0, strip.Count).OrderBy(piece => holding[piece])];
        int[] rank = new int[strip.Count];
        for (int i = 0; i < rarest.Length; i++)
        {
            rank[rarest[i]] = i;
        }

        var under = Stoppable(sections, cancellation).ToLookup(section => StripPieces.PiecesOf(section.Set).Min(piece => rank[piece]));
        Lists = [.. rarest.Select((piece, i) => (piece, under[i].ToArray()))];
    }

    /// <summary>Every piece, the one that fewest sections hold first, with the sections that hold it and no piece before it.</summary>
    public (int Piece, StripSection[] Sections)[] Lists { get; }

    /// <summary>How a section lies.</summary>
    /// <param name="section">The section.</param>
    public Block Lying(StripSection section)
    {
        var first = _parts[section.First].Lying(_strip, turned: false);
        return section.Second < 0 ? first : BlockMath.Join(Axis.X, first, _parts[section.Second].Lying(_strip, turned: false));
    }

    private bool Suits(StripPart part) => part.Width <= _strip.Width && part.Length <= _strip.Length && part.Waste <= _share * part.Length;

    private StripSection[] All(CancellationToken cancellation)
    {
        var shortest = new Dictionary<UInt128, StripSection>();
        var bySize = Stoppable(Enumerable.Range(0, _parts.Length), cancellation).ToLookup(i => (_parts[i].Length, _parts[i].Width));
        foreach (int first in Stoppable(Enumerable.Range(0, _parts.Length), cancellation))
        {
            var part = _parts[first];
            int beside = _strip.Width - part.Width;
            if (beside <= _narrower && part.Waste + (beside * part.Length) <= _share * part.Length)
            {
                Add(new StripSection(part.Set, part.Length, first, -1));
            }

            // Of two parts the one that is no wider is the first.
            for (int narrower = 0; narrower <= _narrower && beside - narrower >= part.Width && shortest.Count < Enough; narrower++)
            {
                foreach (int second in bySize[(part.Length, beside - narrower)])
                {
                    var other = _parts[second];
                    if ((part.Set & other.Set) == 0 && part.Waste + other.Waste + (narrower * part.Length) <= _share * part.Length
                        && UInt128.PopCount(part.Set | other.Set) <= (UInt128)MostPieces)
                    {
                        Add(new StripSection(part.Set | other.Set, part.Length, first, second));
                    }
                }
            }
        }

        return [.. shortest.Values];

        void Add(StripSection section)
        {
            if (!shortest.TryGetValue(section.Set, out var known) || section.Length < known.Length)
            {
                shortest[section.Set] = section;
            }
        }
    }

    private static IEnumerable<T> Stoppable<T>(IEnumerable<T> all, CancellationToken cancellation)
    {
        int count = 0;
        foreach (var one in all)
        {
            if (++count % CheckEvery == 0)
            {
                cancellation.ThrowIfCancellationRequested();
            }

            yield return one;
        }
    }
}

/// <summary>A part of a strip from selvedge to selvedge.</summary>
/// <param name="Set">Its pieces: one bit for each.</param>
/// <param name="Length">Its length.</param>
/// <param name="First">Its block, or the first of two beside one another, by its place in the list of parts.</param>
/// <param name="Second">The second of two; −1: there is none.</param>
internal readonly record struct StripSection(UInt128 Set, int Length, int First, int Second);
