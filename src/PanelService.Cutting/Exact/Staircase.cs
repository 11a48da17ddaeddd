// Problem: the smallest rectangles that a set can be cut from, of all ways to part it in two (FrontTable).
// Idea:    the less wide, the higher: they form a staircase. Two sets side by side take the widths of both and the higher of
//          the heights, so that two staircases are walked from their highest steps down, always the higher one a step; one
//          above the other the same from the widest on. What comes of it goes into one hull, kept in order of width.
// Source:  shape functions: Stockmeyer, Information and Control 57 (1983).
// Cost:    a step of either staircase each, and a bisection and a shift in the hull; nothing is allocated on the way.
// Not:     rectangles that fit none of the stocks given.
namespace PanelService.Cutting.Exact;

/// <summary>The smallest rectangles something can be cut from: widths rising, heights falling.</summary>
/// <param name="Width">Widths, rising.</param>
/// <param name="Height">The heights that go with them, falling.</param>
internal sealed record Staircase(long[] Width, long[] Height)
{
    /// <summary>The first step (so the narrowest) that lies within a rectangle; −1 where there is none.</summary>
    /// <param name="width">The rectangle's width.</param>
    /// <param name="height">Its height.</param>
    public int StepWithin(long width, long height)
    {
        for (int i = 0; i < Width.Length && Width[i] <= width; i++)
        {
            if (Height[i] <= height)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The lowest step within a width; −1 where there is none.</summary>
    /// <param name="width">The width.</param>
    public int LastWithin(long width)
    {
        int i = Width.Length - 1;
        while (i >= 0 && Width[i] > width)
        {
            i--;
        }

        return i;
    }
}

/// <summary>Collects rectangles and keeps the lower hull of those that fit one of some stocks.</summary>
internal sealed class StaircaseBuilder((long Width, long Height)[] stocks)
{
    private readonly long _mostWidth = stocks.Max(s => s.Width);
    private readonly long _mostHeight = stocks.Max(s => s.Height);
    private long[] _width = new long[64];
    private long[] _height = new long[64];
    private int _count;

    /// <summary>Starts anew.</summary>
    public void Clear() => _count = 0;

    /// <summary>What was collected; null where nothing fits.</summary>
    public Staircase? Build() => _count == 0 ? null : new Staircase(_width[.._count], _height[.._count]);

    /// <summary>All rectangles of two staircases side by side.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    public void AddBeside(Staircase a, Staircase b)
    {
        long[] aw = a.Width, ah = a.Height, bw = b.Width, bh = b.Height;
        int i = 0;
        int j = 0;
        while (i < aw.Length && j < bw.Length)
        {
            long width = aw[i] + bw[j];
            if (width > _mostWidth)
            {
                return;
            }

            long height = Math.Max(ah[i], bh[j]);
            Add(width, height);
            bool stepA = ah[i] == height;
            bool stepB = bh[j] == height;
            i += stepA ? 1 : 0;
            j += stepB ? 1 : 0;
        }
    }

    /// <summary>All rectangles of two staircases one above the other.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    public void AddAbove(Staircase a, Staircase b)
    {
        long[] aw = a.Width, ah = a.Height, bw = b.Width, bh = b.Height;
        int i = aw.Length - 1;
        int j = bw.Length - 1;
        while (i >= 0 && j >= 0)
        {
            long height = ah[i] + bh[j];
            if (height > _mostHeight)
            {
                return;
            }

            long width = Math.Max(aw[i], bw[j]);
            Add(width, height);
            bool stepA = aw[i] == width;
            bool stepB = bw[j] == width;
            i -= stepA ? 1 : 0;
            j -= stepB ? 1 : 0;
        }
    }

    /// <summary>One rectangle.</summary>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    public void Add(long width, long height)
    {
        // The first step wider than the new one; the one before it must be higher, or the new one is not needed.
        int low = 0;
        int high = _count;
        while (low < high)
        {
            int middle = (low + high) >> 1;
            if (_width[middle] <= width)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        if ((low > 0 && _height[low - 1] <= height) || !FitsAny(width, height))
        {
            return;
        }

        int from = low > 0 && _width[low - 1] == width ? low - 1 : low;
        int to = low;
        while (to < _count && _height[to] >= height)
        {
            to++;
        }

        Replace(from, to, width, height);
    }

    private bool FitsAny(long width, long height)
    {
        foreach (var stock in stocks)
        {
            if (width <= stock.Width && height <= stock.Height)
            {
                return true;
            }
        }

        return false;
    }

    private void Replace(int from, int to, long width, long height)
    {
        int count = _count - (to - from) + 1;
        if (count > _width.Length)
        {
            Array.Resize(ref _width, 2 * _width.Length);
            Array.Resize(ref _height, 2 * _height.Length);
        }

        if (to != from + 1)
        {
            Array.Copy(_width, to, _width, from + 1, _count - to);
            Array.Copy(_height, to, _height, from + 1, _count - to);
        }

        (_width[from], _height[from], _count) = (width, height, count);
    }
}
