using System.Runtime.InteropServices;
using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>An order of arrangements whose parts are sorted by place: for sorting bands and for finding equal ones.</summary>
internal sealed class PartOrder : IComparer<NeededPart[]>, IEqualityComparer<NeededPart[]>
{
    /// <summary>The one there is.</summary>
    public static PartOrder Instance { get; } = new();

    /// <summary>Parts by x, then y.</summary>
    public static IComparer<NeededPart> ByPlace { get; } = Comparer<NeededPart>.Create(Place);

    /// <summary>Several arrangements one after another; a shorter row first.</summary>
    public static IComparer<NeededPart[][]> OfBlocks { get; } = Comparer<NeededPart[][]>.Create(Blocks);

    /// <inheritdoc/>
    public int Compare(NeededPart[]? x, NeededPart[]? y)
    {
        for (int i = 0; i < Math.Min(x!.Length, y!.Length); i++)
        {
            int order = Place(x[i], y[i]);
            if (order != 0)
            {
                return order;
            }
        }

        return x.Length.CompareTo(y.Length);
    }

    /// <inheritdoc/>
    public bool Equals(NeededPart[]? x, NeededPart[]? y) => x.AsSpan().SequenceEqual(y);

    /// <inheritdoc/>
    public int GetHashCode(NeededPart[] obj)
    {
        var hash = new HashCode();
        hash.AddBytes(MemoryMarshal.AsBytes(obj.AsSpan()));
        return hash.ToHashCode();
    }

    private static int Place(NeededPart a, NeededPart b)
    {
        int order = a.X.CompareTo(b.X);
        order = order != 0 ? order : a.Y.CompareTo(b.Y);
        order = order != 0 ? order : a.Width.CompareTo(b.Width);
        order = order != 0 ? order : a.Height.CompareTo(b.Height);
        return order != 0 ? order : a.Panels.CompareTo(b.Panels);
    }

    private static int Blocks(NeededPart[][]? x, NeededPart[][]? y)
    {
        for (int i = 0; i < Math.Min(x!.Length, y!.Length); i++)
        {
            int order = Instance.Compare(x[i], y[i]);
            if (order != 0)
            {
                return order;
            }
        }

        return x.Length.CompareTo(y.Length);
    }
}
