using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>An order of arrangements whose parts are sorted by place: for sorting bands and for finding equal ones.</summary>
internal sealed class PartOrder : IComparer<Rectangle[]>, IEqualityComparer<(long Width, long Height, Rectangle[] Parts)>
{
    /// <summary>The one there is.</summary>
    public static PartOrder Instance { get; } = new();

    /// <summary>Parts by x, then y.</summary>
    public static Comparison<Rectangle> ByPlace { get; } = (a, b) => (a.X, a.Y, a.Width, a.Height).CompareTo((b.X, b.Y, b.Width, b.Height));

    /// <inheritdoc/>
    public int Compare(Rectangle[]? x, Rectangle[]? y)
    {
        for (int i = 0; i < Math.Min(x!.Length, y!.Length); i++)
        {
            int order = ByPlace(x[i], y[i]);
            if (order != 0)
            {
                return order;
            }
        }

        return x.Length.CompareTo(y.Length);
    }

    /// <inheritdoc/>
    public bool Equals((long Width, long Height, Rectangle[] Parts) x, (long Width, long Height, Rectangle[] Parts) y) =>
        x.Width == y.Width && x.Height == y.Height && x.Parts.AsSpan().SequenceEqual(y.Parts);

    /// <inheritdoc/>
    public int GetHashCode((long Width, long Height, Rectangle[] Parts) obj)
    {
        var hash = new HashCode();
        hash.Add(obj.Width);
        hash.Add(obj.Height);
        foreach (var part in obj.Parts)
        {
            hash.Add(part);
        }

        return hash.ToHashCode();
    }
}
