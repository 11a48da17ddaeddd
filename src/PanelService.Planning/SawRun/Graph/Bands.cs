// Problem: the same workpiece turns up with its parts in another order; it should be planned once.
// Idea:    a workpiece falls into bands along each axis (what cuts from edge to edge can part). Bands are closed up and
//          sorted; where both axes have bands, it is a grid, and whole columns and whole rows are sorted. What lies
//          within a band keeps its place, so that cuts which run through several bands stay possible.
// Cost:    sorting.
// Not:     one form for all arrangements that are alike: some remain twice, which costs time and nothing else.
using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>Bands of an arrangement along an axis.</summary>
internal static class Bands
{
    /// <summary>The bands along an axis, by rising coordinate; one where nothing can be cut across it.</summary>
    public static List<Rectangle[]> Of(Rectangle[] parts, Axis axis)
    {
        var bands = new List<Rectangle[]>();
        var band = new List<Rectangle>();
        long end = long.MinValue;
        foreach (var part in parts.OrderBy(part => StartOf(part, axis)))
        {
            if (band.Count > 0 && StartOf(part, axis) >= end)
            {
                bands.Add([.. band]);
                band.Clear();
            }

            band.Add(part);
            end = Math.Max(end, StartOf(part, axis) + SizeOf(part, axis));
        }

        bands.Add([.. band]);
        return bands;
    }

    /// <summary>The extent of some parts along an axis.</summary>
    public static long Extent(Rectangle[] parts, Axis axis) =>
        parts.Max(part => StartOf(part, axis) + SizeOf(part, axis)) - parts.Min(part => StartOf(part, axis));

    /// <summary>The arrangement with its bands closed up and sorted.</summary>
    public static Rectangle[] Sorted(Rectangle[] parts)
    {
        var columns = Of(parts, Axis.X);
        var rows = Of(parts, Axis.Y);
        if (columns.Count > 1 && rows.Count > 1)
        {
            var closed = Joined(columns.OrderBy(column => new GridBand(column, rows, Axis.Y)), Axis.X);
            var newColumns = Of(closed, Axis.X);
            return Joined(Of(closed, Axis.Y).OrderBy(row => new GridBand(row, newColumns, Axis.X)), Axis.Y);
        }

        var across = Joined(columns.Select(column => MovedTo(column, Axis.X, 0)).Order(PartOrder.Instance), Axis.X);
        return Joined(Of(across, Axis.Y).Select(row => MovedTo(row, Axis.Y, 0)).Order(PartOrder.Instance), Axis.Y);
    }

    /// <summary>Bands one after another along an axis, each keeping its place along the other.</summary>
    public static Rectangle[] Joined(IEnumerable<Rectangle[]> bands, Axis axis)
    {
        var parts = new List<Rectangle>();
        long at = 0;
        foreach (var band in bands)
        {
            parts.AddRange(MovedTo(band, axis, at));
            at += Extent(band, axis);
        }

        parts.Sort(PartOrder.ByPlace);
        return [.. parts];
    }

    /// <summary>Parts moved along an axis to begin at a place, sorted.</summary>
    public static Rectangle[] MovedTo(Rectangle[] parts, Axis axis, long at)
    {
        long by = at - parts.Min(part => StartOf(part, axis));
        Rectangle[] moved = [.. parts.Select(part => axis == Axis.X ? part with { X = part.X + by } : part with { Y = part.Y + by })];
        Array.Sort(moved, PartOrder.ByPlace);
        return moved;
    }

    private static long StartOf(Rectangle part, Axis axis) => axis == Axis.X ? part.X : part.Y;

    private static long SizeOf(Rectangle part, Axis axis) => axis == Axis.X ? part.Width : part.Height;

    /// <summary>A band of a grid, told apart by its extent and its blocks, in whatever order these follow.</summary>
    private sealed class GridBand : IComparable<GridBand>
    {
        private readonly List<Rectangle[]> _blocks;

        public GridBand(Rectangle[] band, List<Rectangle[]> others, Axis along)
        {
            var own = band.ToHashSet();
            _blocks = [.. others
                .Select(other => other.Where(own.Contains).ToArray())
                .Where(block => block.Length > 0)
                .Select(block => MovedTo(MovedTo(block, along, 0), along == Axis.X ? Axis.Y : Axis.X, 0))
                .Order(PartOrder.Instance)];
        }

        public int CompareTo(GridBand? other)
        {
            for (int i = 0; i < Math.Min(_blocks.Count, other!._blocks.Count); i++)
            {
                int order = PartOrder.Instance.Compare(_blocks[i], other._blocks[i]);
                if (order != 0)
                {
                    return order;
                }
            }

            return _blocks.Count.CompareTo(other._blocks.Count);
        }
    }
}
