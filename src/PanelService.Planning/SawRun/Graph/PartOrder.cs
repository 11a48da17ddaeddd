using System.Runtime.InteropServices;
using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>An order of arrangements whose parts are sorted by place: for sorting bands and for finding equal ones.</summary>
internal sealed class PartOrder : IComparer<Rectangle[]>, IEqualityComparer<Rectangle[]>
{
    /// <summary>The one there is.</summary>
    public static PartOrder Instance { get; } = new();

    /// <summary>Parts by x, then y.</summary>
    public static IComparer<Rectangle> ByPlace { get; } = Comparer<Rectangle>.Create(Place);

    /// <summary>Several arrangements one after another; a shorter row first.</summary>
    public static IComparer<Rectangle[][]> OfBlocks { get; } = Comparer<Rectangle[][]>.Create(Blocks);

    /// <inheritdoc/>
    public int Compare(Rectangle[]? x, Rectangle[]? y)
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
    public bool Equals(Rectangle[]? x, Rectangle[]? y) => x.AsSpan().SequenceEqual(y);

    /// <inheritdoc/>
    public int GetHashCode(Rectangle[] obj)
    {
        var hash = new HashCode();
        hash.AddBytes(MemoryMarshal.AsBytes(obj.AsSpan()));
        return hash.ToHashCode();
    }

    private static int Place(Rectangle a, Rectangle b)
    {
        int order = a.X.CompareTo(b.X);
        order = order != 0 ? order : a.Y.CompareTo(b.Y);
        order = order != 0 ? order : a.Width.CompareTo(b.Width);
        return order != 0 ? order : a.Height.CompareTo(b.Height);
    }

    private static int Blocks(Rectangle[][]? x, Rectangle[][]? y)
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
