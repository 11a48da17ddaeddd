// Problem: the same workpiece turns up with its parts in another order; it should be planned once.
// Idea:    a workpiece falls into bands along each axis (what cuts from edge to edge can part). Bands are closed up and
//          sorted; where both axes have bands, it is a grid, and whole columns and whole rows are sorted. What lies
//          within a band keeps its place, so that cuts which run through several bands stay possible.
// Cost:    sorting. Parts are kept sorted by place throughout, which moving them all by the same does not change.
// Not:     one form for all arrangements that are alike: some remain twice, which costs time and nothing else.
using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>Bands of an arrangement along an axis. Arrays of parts are sorted by place and never changed once made.</summary>
internal static class Bands
{
    /// <summary>The bands along an axis, by rising coordinate; one where nothing can be cut across it.</summary>
    /// <param name="parts">Sorted by place.</param>
    /// <param name="axis">The axis.</param>
    public static NeededPart[][] Of(NeededPart[] parts, Axis axis)
    {
        var order = Enumerable.Range(0, parts.Length).ToArray();
        long[] starts = Array.ConvertAll(parts, part => StartOf(part, axis));
        if (axis != Axis.X)
        {
            Array.Sort(starts, order);
        }

        int[] bandOf = new int[parts.Length];
        int count = 0;
        long end = long.MinValue;
        for (int i = 0; i < order.Length; i++)
        {
            count += starts[i] >= end ? 1 : 0;
            end = Math.Max(end, starts[i] + SizeOf(parts[order[i]], axis));
            bandOf[order[i]] = count - 1;
        }

        return count == 1 ? [parts] : Shared(parts, bandOf, count);
    }

    /// <summary>The extent of some parts along an axis.</summary>
    public static long Extent(NeededPart[] parts, Axis axis)
    {
        long start = long.MaxValue, end = long.MinValue;
        foreach (var part in parts)
        {
            start = Math.Min(start, StartOf(part, axis));
            end = Math.Max(end, StartOf(part, axis) + SizeOf(part, axis));
        }

        return end - start;
    }

    /// <summary>The arrangement with its bands closed up and sorted.</summary>
    /// <param name="parts">In whatever order.</param>
    public static NeededPart[] Sorted(NeededPart[] parts)
    {
        parts = [.. parts];
        Array.Sort(parts, PartOrder.ByPlace);
        return OfSorted(parts);
    }

    /// <summary>The same of parts that are sorted by place.</summary>
    public static NeededPart[] OfSorted(NeededPart[] parts)
    {
        var columns = Of(parts, Axis.X);
        var rows = Of(parts, Axis.Y);
        if (columns.Length > 1 && rows.Length > 1)
        {
            var closed = Joined(InOrder(columns, rows, Axis.Y), Axis.X);
            return Joined(InOrder(Of(closed, Axis.Y), Of(closed, Axis.X), Axis.X), Axis.Y);
        }

        var across = Joined(InOrder(columns, Axis.X), Axis.X);
        return Joined(InOrder(Of(across, Axis.Y), Axis.Y), Axis.Y);
    }

    /// <summary>Bands one after another along an axis, each keeping its place along the other.</summary>
    public static NeededPart[] Joined(IReadOnlyCollection<NeededPart[]> bands, Axis axis)
    {
        var parts = new NeededPart[bands.Sum(band => band.Length)];
        int count = 0;
        long at = 0;
        foreach (var band in bands)
        {
            long by = at - Start(band, axis);
            foreach (var part in band)
            {
                parts[count++] = Moved(part, axis, by);
            }

            at += Extent(band, axis);
        }

        if (axis != Axis.X)
        {
            Array.Sort(parts, PartOrder.ByPlace);
        }

        return parts;
    }

    /// <summary>Parts moved along an axis to begin at a place.</summary>
    public static NeededPart[] MovedTo(NeededPart[] parts, Axis axis, long at)
    {
        long by = at - Start(parts, axis);
        return by == 0 ? parts : Array.ConvertAll(parts, part => Moved(part, axis, by));
    }

    private static NeededPart[][] InOrder(NeededPart[][] bands, Axis axis)
    {
        NeededPart[][] moved = Array.ConvertAll(bands, band => MovedTo(band, axis, 0));
        Array.Sort(moved, PartOrder.Instance);
        return moved;
    }

    /// <summary>
    /// The bands of a grid in order, told apart by their blocks, in whatever order these follow; those alike keep the order they are in.
    /// </summary>
    private static NeededPart[][] InOrder(NeededPart[][] bands, NeededPart[][] others, Axis along)
    {
        long[] starts = Array.ConvertAll(others, other => Start(other, along));
        return [.. bands.Select(band => (Band: band, Blocks: BlocksOf(band, starts, along))).OrderBy(one => one.Blocks, PartOrder.OfBlocks).Select(one => one.Band)];
    }

    private static NeededPart[][] BlocksOf(NeededPart[] band, long[] starts, Axis along)
    {
        int[] blockOf = Array.ConvertAll(band, part =>
        {
            int at = Array.BinarySearch(starts, StartOf(part, along));
            return at >= 0 ? at : ~at - 1;
        });
        NeededPart[][] blocks = [.. Shared(band, blockOf, starts.Length).Where(block => block.Length > 0)];
        Axis other = along == Axis.X ? Axis.Y : Axis.X;
        blocks = Array.ConvertAll(blocks, block => MovedTo(MovedTo(block, along, 0), other, 0));
        Array.Sort(blocks, PartOrder.Instance);
        return blocks;
    }

    private static NeededPart[][] Shared(NeededPart[] parts, int[] bandOf, int bands)
    {
        int[] counts = new int[bands];
        foreach (int band in bandOf)
        {
            counts[band]++;
        }

        var shared = Array.ConvertAll(counts, count => new NeededPart[count]);
        Array.Clear(counts);
        for (int i = 0; i < parts.Length; i++)
        {
            shared[bandOf[i]][counts[bandOf[i]]++] = parts[i];
        }

        return shared;
    }

    private static NeededPart Moved(NeededPart part, Axis axis, long by) => axis == Axis.X ? part with { X = part.X + by } : part with { Y = part.Y + by };

    private static long Start(NeededPart[] parts, Axis axis)
    {
        long start = long.MaxValue;
        foreach (var part in parts)
        {
            start = Math.Min(start, StartOf(part, axis));
        }

        return start;
    }

    private static long StartOf(NeededPart part, Axis axis) => axis == Axis.X ? part.X : part.Y;

    private static long SizeOf(NeededPart part, Axis axis) => axis == Axis.X ? part.Width : part.Height;
}
