// Problem: a strip with little to waste, of so many pieces that no table of blocks reaches from one end to the other: a plan.
// Idea:    sections from selvedge to selvedge that waste little are easy to come by: blocks of a table as wide as the
//          strip, and two blocks of one length beside one another. There are hundreds of thousands, mostly by chance, and
//          so many partitions of the pieces into such sections that one may be found: the piece in the fewest sections
//          that are still possible is placed next, each of its sections in turn; a piece in none ends the branch.
// Source:  exact cover: Knuth, "Dancing links" (2000); filtered lists instead of links, since there are many sections for
//          few pieces.
// Cost:    up to the work given, half a second mostly.
// Not:     complete: not every section is in the list.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Cuts a strip into sections.</summary>
internal sealed class SectionCover
{
    private const int LooksOfUnit = 250;
    private const int MostPairs = 1_500_000;

    private readonly StripPieces _strip;
    private readonly int _narrower;
    private readonly WorkMeter _work;
    private readonly List<CoverSection> _sections = [];
    private readonly HashSet<UInt128> _known = [];
    private readonly List<int> _chosen = [];
    private long _looks;
    private long _most;

    /// <summary>Starts without sections.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="narrower">Sections may be narrower than the strip by so much.</param>
    /// <param name="work">Where work is counted.</param>
    public SectionCover(StripPieces strip, int narrower, WorkMeter work) => (_strip, _narrower, _work) = (strip, narrower, work);

    /// <summary>Adds every block as wide as the strip.</summary>
    /// <param name="table">The blocks.</param>
    public void AddWide(BlockTable table)
    {
        for (int i = 0; i < table.All.Count; i++)
        {
            foreach (var (width, length) in WaysOf(table, i))
            {
                if (width >= _strip.Width - _narrower && width <= _strip.Width)
                {
                    Add(table.All[i].Set, length, table.All[i].Waste + ((_strip.Width - width) * length), (table, i, -1));
                }
            }
        }
    }

    /// <summary>Adds pairs of blocks beside one another that are as wide as the strip.</summary>
    /// <param name="table">The blocks.</param>
    /// <param name="pieces">A section has no more pieces than this.</param>
    /// <param name="most">No more sections are known than this; which pairs are taken is chance.</param>
    public void AddPairs(BlockTable table, int pieces, int most)
    {
        var pairs = Pairs(table, pieces);
        foreach (var (set, length, waste, first, second) in pairs.OrderBy(pair => Mixed(pair.Set)))
        {
            if (_sections.Count >= most)
            {
                break;
            }

            Add(set, length, waste, (table, first, second));
        }
    }

    /// <summary>Looks for sections that hold every piece once.</summary>
    /// <param name="units">The work allowed.</param>
    /// <returns>How the pieces lie; null where no plan was found.</returns>
    public Block? Find(long units)
    {
        _looks = 0;
        _most = Math.Min(units, _work.Left) * LooksOfUnit;
        var everything = (UInt128.One << _strip.Count) - 1;
        everything = _strip.Count == BlockTable.MostPieces ? UInt128.MaxValue : everything;
        bool found = Place(everything, _strip.Waste, [.. Enumerable.Range(0, _sections.Count)]);
        _work.Spend(_looks / LooksOfUnit);
        return found ? _chosen.Select(Lying).Aggregate((a, b) => BlockMath.Join(Axis.Y, a, b)) : null;
    }

    private static IEnumerable<(int Width, int Length)> WaysOf(BlockTable table, int block)
    {
        var it = table.All[block];
        yield return (it.Width, it.Length);
        if (table.Turn && it.Width != it.Length)
        {
            yield return (it.Length, it.Width);
        }
    }

    private static ulong Mixed(UInt128 set)
    {
        unchecked
        {
            ulong x = ((ulong)set * 0x9E3779B97F4A7C15UL) + ((ulong)(set >> 64) * 0x94D049BB133111EBUL);
            x = (x ^ (x >> 29)) * 0xBF58476D1CE4E5B9UL;
            return x ^ (x >> 32);
        }
    }

    private List<(UInt128 Set, int Length, int Waste, int First, int Second)> Pairs(BlockTable table, int pieces)
    {
        var byLength = new SortedDictionary<int, SortedDictionary<int, List<int>>>();
        for (int i = 0; i < table.All.Count; i++)
        {
            foreach (var (width, length) in WaysOf(table, i).Where(way => way.Width < _strip.Width))
            {
                var widths = Get(byLength, length);
                Get(widths, width).Add(i);
            }
        }

        var pairs = new List<(UInt128, int, int, int, int)>();
        long tries = 0;
        foreach (var (length, widths) in byLength)
        {
            foreach (var (width, firsts) in widths)
            {
                for (int other = Math.Max(width, _strip.Width - _narrower - width); other <= _strip.Width - width; other++)
                {
                    if (widths.TryGetValue(other, out var seconds) && pairs.Count < MostPairs)
                    {
                        tries += (long)firsts.Count * seconds.Count;
                        Join(firsts, seconds, length, (_strip.Width - width - other) * length);
                    }
                }
            }
        }

        _work.Spend(tries / LooksOfUnit * 4);
        return pairs;

        void Join(List<int> firsts, List<int> seconds, int length, int beside)
        {
            _work.Cancellation.ThrowIfCancellationRequested();
            foreach (int a in firsts)
            {
                var one = table.All[a];
                foreach (int b in seconds)
                {
                    var other = table.All[b];
                    int waste = one.Waste + other.Waste + beside;
                    if ((one.Set & other.Set) == 0 && waste <= _strip.Waste && (int)UInt128.PopCount(one.Set | other.Set) <= pieces)
                    {
                        pairs.Add((one.Set | other.Set, length, waste, a, b));
                    }
                }
            }
        }

        static TValue Get<TValue>(SortedDictionary<int, TValue> map, int key)
            where TValue : new()
        {
            if (!map.TryGetValue(key, out var value))
            {
                map[key] = value = new TValue();
            }

            return value;
        }
    }

    private void Add(UInt128 set, int length, int waste, (BlockTable Table, int First, int Second) from)
    {
        if (waste <= _strip.Waste && _known.Add(set))
        {
            _sections.Add(new CoverSection(set, length, waste, from.Table, from.First, from.Second));
        }
    }

    private bool Place(UInt128 open, long spare, int[] list)
    {
        int rarest = Rarest(open, list);
        if (rarest < 0)
        {
            return false;
        }

        foreach (int at in list)
        {
            var section = _sections[at];
            if ((section.Set >> rarest & UInt128.One) == 0 || section.Waste > spare)
            {
                continue;
            }

            _chosen.Add(at);
            if (section.Set == open || Place(open & ~section.Set, spare - section.Waste, Within(section.Set, spare - section.Waste)))
            {
                return true;
            }

            _chosen.RemoveAt(_chosen.Count - 1);
            if (_looks > _most)
            {
                return false;
            }
        }

        return false;

        int[] Within(UInt128 taken, long left)
        {
            _work.Cancellation.ThrowIfCancellationRequested();
            _looks += list.Length;
            return Array.FindAll(list, i => (_sections[i].Set & taken) == 0 && _sections[i].Waste <= left);
        }
    }

    /// <summary>The piece in the fewest sections; −1 where one is in none.</summary>
    private int Rarest(UInt128 open, int[] list)
    {
        Span<int> counts = stackalloc int[BlockTable.MostPieces];
        counts.Clear();
        foreach (int at in list)
        {
            CountBits((ulong)_sections[at].Set, counts);
            CountBits((ulong)(_sections[at].Set >> 64), counts[64..]);
        }

        _looks += 4L * list.Length;
        int best = -1;
        for (int p = 0; p < _strip.Count; p++)
        {
            if ((open >> p & UInt128.One) == 0)
            {
                continue;
            }

            if (counts[p] == 0)
            {
                return -1;
            }

            best = best < 0 || counts[p] < counts[best] ? p : best;
        }

        return best;
    }

    private static void CountBits(ulong bits, Span<int> counts)
    {
        for (; bits != 0; bits &= bits - 1)
        {
            counts[System.Numerics.BitOperations.TrailingZeroCount(bits)]++;
        }
    }

    private Block Lying(int at)
    {
        var section = _sections[at];
        var first = Part(section.First);
        return section.Second < 0 ? first : BlockMath.Join(Axis.X, first, Part(section.Second));

        Block Part(int block) => section.Table.Lying(block, turned: section.Table.All[block].Length != section.Length);
    }

    private sealed record CoverSection(UInt128 Set, int Length, int Waste, BlockTable Table, int First, int Second);
}
