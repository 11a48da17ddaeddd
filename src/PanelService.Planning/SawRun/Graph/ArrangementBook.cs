// Problem: a graph comes to the same arrangement a hundred times, and to bring it into its one form takes a dozen sorts.
// Idea:    bands have numbers; some bands of a workpiece, by their numbers, are brought into form once.
// Cost:    a look into a table of a few numbers for each choice of bands, where all parts were sorted before: a graph of the
//          workshop's demo order took most of a second that way.
using System.Runtime.InteropServices;
using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>The arrangements that a graph has come to.</summary>
internal sealed class ArrangementBook
{
    private readonly Dictionary<NeededPart[], Arrangement> _known = new(PartOrder.Instance);
    private readonly Dictionary<NeededPart[], int> _bands = new(PartOrder.Instance);
    private readonly Dictionary<int[], Arrangement> _joined = new(NumbersEqual.Instance);

    /// <summary>The one form of some parts.</summary>
    /// <param name="parts">In whatever order.</param>
    public Arrangement Of(NeededPart[] parts) => Known(Bands.Sorted(parts));

    /// <summary>The bands of an arrangement, those alike together.</summary>
    /// <param name="arrangement">The arrangement.</param>
    /// <param name="axis">Across what they can be parted.</param>
    public BandSort[] Sorts(Arrangement arrangement, Axis axis) => arrangement.Sorts(axis, SortsOf);

    /// <summary>The one form of some bands of an arrangement.</summary>
    /// <param name="axis">Across what they lie.</param>
    /// <param name="sorts">The bands.</param>
    /// <param name="taken">How many of each.</param>
    public Arrangement Joined(Axis axis, BandSort[] sorts, int[] taken)
    {
        int[] key = new int[1 + (2 * taken.Count(count => count > 0))];
        key[0] = (int)axis;
        int at = 1;
        for (int i = 0; i < sorts.Length; i++)
        {
            if (taken[i] > 0)
            {
                (key[at], key[at + 1]) = (sorts[i].Number, taken[i]);
                at += 2;
            }
        }

        if (!_joined.TryGetValue(key, out var joined))
        {
            NeededPart[][] bands = [.. sorts.SelectMany((sort, i) => Enumerable.Repeat(sort.Band, taken[i]))];
            joined = Known(Bands.OfSorted(Bands.Joined(bands, axis)));
            _joined.Add(key, joined);
        }

        return joined;
    }

    private Arrangement Known(NeededPart[] parts)
    {
        if (!_known.TryGetValue(parts, out var known))
        {
            known = new Arrangement(parts);
            _known.Add(parts, known);
        }

        return known;
    }

    /// <summary>The sorts by rising number, so that equal choices have equal keys.</summary>
    private BandSort[] SortsOf(NeededPart[] parts, Axis axis) =>
    [
        .. Bands.Of(parts, axis)
            .Select(band => Bands.MovedTo(band, axis, 0))
            .GroupBy(NumberOf)
            .OrderBy(group => group.Key)
            .Select(group => new BandSort(group.Key, group.First(), Bands.Extent(group.First(), axis), group.Count())),
    ];

    private int NumberOf(NeededPart[] band)
    {
        ref int number = ref CollectionsMarshal.GetValueRefOrAddDefault(_bands, band, out bool known);
        number = known ? number : _bands.Count;
        return number;
    }

    private sealed class NumbersEqual : IEqualityComparer<int[]>
    {
        public static NumbersEqual Instance { get; } = new();

        public bool Equals(int[]? x, int[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(int[] obj)
        {
            var hash = new HashCode();
            hash.AddBytes(MemoryMarshal.AsBytes(obj.AsSpan()));
            return hash.ToHashCode();
        }
    }
}
