// Problem: which sets of pieces can guillotine cuts get out of a rectangle?
// Idea:    for every set the smallest rectangles that hold it: of a set of one its piece, of a larger one those made of
//          the rectangles of two parts of it, side by side or one above the other. Of all pairs of a width and a height
//          only those that no other beats both ways are kept. Of two parts one must be within the fence's reach. Sets that are larger than the largest stock are left out.
// Cost:    every set with each of its parts, times the rectangles of both; where that is too much it says so.
// Source:  the definition of a guillotine pattern, put bottom-up. No points, no values, no bounds.
namespace PanelService.Checking.Bounds;

/// <summary>The smallest rectangles of every set of pieces on stocks where they may lie alike.</summary>
internal sealed class SetFronts
{
    private const int MostSets = 60_000;
    private const long MostParts = 20_000_000;

    private readonly BoundCase _case;
    private readonly int _stock;
    private readonly long _width;
    private readonly long _height;
    private readonly long[] _one;
    private readonly List<(int[] Digits, long Number)> _sets = [];
    private readonly Dictionary<long, (long Width, long Height)[]> _fronts = [];

    private SetFronts(BoundCase problem, int[] stocks)
    {
        (_case, _stock) = (problem, stocks[0]);
        _width = stocks.Max(s => problem.Stocks[s].Width) + problem.Kerf;
        _height = stocks.Max(s => problem.Stocks[s].Height) + problem.Kerf;
        _one = new long[problem.Pieces.Length];
        long one = 1;
        for (int i = 0; i < _one.Length; i++)
        {
            _one[i] = one;
            one *= problem.Pieces[i].Demand + 1;
        }
    }

    /// <summary>Computes them.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="stocks">Stocks with the same ways of lying.</param>
    /// <returns>The fronts; null: too many sets.</returns>
    public static SetFronts? Of(BoundCase problem, int[] stocks)
    {
        if (problem.Pieces.Aggregate(1.0, (count, piece) => count * (piece.Demand + 1.0)) > 1e18)
        {
            return null;
        }

        var fronts = new SetFronts(problem, stocks);
        fronts.List(0, new int[problem.Pieces.Length], (Int128)fronts._width * fronts._height);
        if (fronts._sets.Count > MostSets || fronts._sets.Sum(set => set.Digits.Aggregate(1L, (parts, d) => parts * (d + 1))) > MostParts)
        {
            return null;
        }

        fronts.Fill();
        return fronts;
    }

    /// <summary>The sets that fit a rectangle and that no larger one that fits it holds.</summary>
    /// <param name="width">Width, one kerf included.</param>
    /// <param name="height">Height, one kerf included.</param>
    public List<int[]> Greatest(long width, long height) =>
        [.. _sets.Where(set => Fits(set.Number, width, height) && !CanGrow(set, width, height)).Select(set => set.Digits)];

    private bool CanGrow((int[] Digits, long Number) set, long width, long height) => Enumerable.Range(0, _one.Length)
        .Any(i => set.Digits[i] < _case.Pieces[i].Demand && Fits(set.Number + _one[i], width, height));

    private bool Fits(long set, long width, long height) =>
        _fronts.TryGetValue(set, out var front) && Array.Exists(front, r => r.Width <= width && r.Height <= height);

    /// <summary>Every set that is no larger than the largest stock.</summary>
    private void List(int piece, int[] digits, Int128 room)
    {
        if (_sets.Count > MostSets)
        {
            return;
        }

        if (piece == digits.Length)
        {
            _sets.Add(([.. digits], digits.Select((d, i) => d * _one[i]).Sum()));
            return;
        }

        var area = (Int128)(_case.Pieces[piece].Width + _case.Kerf) * (_case.Pieces[piece].Height + _case.Kerf);
        for (int count = 0; count <= _case.Pieces[piece].Demand && count * area <= room; count++)
        {
            digits[piece] = count;
            List(piece + 1, digits, room - (count * area));
        }

        digits[piece] = 0;
    }

    private void Fill()
    {
        // A part has a smaller number than the whole.
        _sets.Sort((a, b) => a.Number.CompareTo(b.Number));
        foreach (var (digits, number) in _sets.Where(set => set.Number > 0))
        {
            var front = Front(digits, number);
            if (front.Count > 0)
            {
                _fronts[number] = [.. front];
            }
        }
    }

    private List<(long Width, long Height)> Front(int[] digits, long number)
    {
        var found = new List<(long Width, long Height)>();
        int single = Array.IndexOf(_one, number);
        if (single >= 0 && digits[single] == 1)
        {
            var (width, height) = (_case.Pieces[single].Width + _case.Kerf, _case.Pieces[single].Height + _case.Kerf);
            var (upright, turned) = _case.Pieces[single].On[_stock];
            Add(found, upright, width, height);
            Add(found, turned, height, width);
        }

        int[] part = new int[digits.Length];
        for (long at = Next(part, digits, 0); at < number; at = Next(part, digits, at))
        {
            if (2 * at <= number && _fronts.TryGetValue(at, out var some) && _fronts.TryGetValue(number - at, out var others))
            {
                Join(found, some, others);
            }
        }

        return found;
    }

    /// <summary>The next part of a set, counting up.</summary>
    private long Next(int[] part, int[] digits, long number)
    {
        for (int i = 0; i < part.Length; i++)
        {
            if (part[i] < digits[i])
            {
                part[i]++;
                return number + _one[i];
            }

            number -= part[i] * _one[i];
            part[i] = 0;
        }

        return long.MaxValue;
    }

    private void Join(List<(long Width, long Height)> found, (long Width, long Height)[] some, (long Width, long Height)[] others)
    {
        foreach (var a in some)
        {
            foreach (var b in others)
            {
                Add(found, Math.Min(a.Width, b.Width) <= _case.MostNear, a.Width + b.Width, Math.Max(a.Height, b.Height));
                Add(found, Math.Min(a.Height, b.Height) <= _case.MostNear, Math.Max(a.Width, b.Width), a.Height + b.Height);
            }
        }
    }

    private void Add(List<(long Width, long Height)> found, bool mayLie, long width, long height)
    {
        if (!mayLie || width > _width || height > _height || found.Exists(r => r.Width <= width && r.Height <= height))
        {
            return;
        }

        found.RemoveAll(r => r.Width >= width && r.Height >= height);
        found.Add((width, height));
    }
}
