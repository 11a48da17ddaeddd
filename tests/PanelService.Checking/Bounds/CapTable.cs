// Problem: what is the most that one pattern of a stock can be worth?
// Idea:    F(x, y) = the best of one piece, of two rectangles left and right of a cut, and of two below and above one,
//          for x and y among the sums of extents. A pattern may hold more of a piece than is wanted, so what comes out is
//          a true upper bound; patterns within the demand have all their edges on these points.
//          Too many points: every size is rounded down to a unit and raised again as far as may be (RaisedLengths). What fitted
//          still fits, so it stays an upper bound. A piece smaller than the unit counts by its area instead. Where the fence does
//          not reach as far as half the stock, cuts with both parts wider are left out.
// Source:  Gilmore and Gomory, Operations Research 14 (1966). Shares no line with the engine: that one fills tiles of
//          32-bit numbers and drops cuts, this one goes through all of them in 64 bits.
// Cost:    x²y/4 + y²x/4 additions for x and y points.
using System.Numerics;

namespace PanelService.Checking.Bounds;

/// <summary>Best pattern values of stocks on which every piece may lie alike.</summary>
internal sealed class CapTable
{
    /// <summary>A second or two of work: enough for the true sizes of inch formats.</summary>
    public const double Quick = 2.5e9;

    /// <summary>Ten seconds or so, for where the quick one says too little.</summary>
    public const double Slow = 1.5e10;

    /// <summary>Minutes, for where that is too little, too.</summary>
    public const double Last = 1e11;

    // Units tried for an axis, and by what part of the least they are larger at most: a twentieth.
    private const int UnitsTried = 12;
    private const int LargerShare = 20;

    private readonly BoundCase _case;
    private readonly List<Shape> _shapes = [];
    private readonly List<(int Piece, long Area)> _tiny = [];
    private readonly List<(int Piece, long Area)> _areas = [];
    private readonly bool _swapped;
    private long[] _x = [];
    private long[] _y = [];
    private int[][] _farY = [];
    private RaisedLengths? _unitsX;
    private RaisedLengths? _unitsY;
    private long[][] _best = [];

    /// <summary>Prepares points and shapes.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="stocks">Stocks with the same ways of lying.</param>
    /// <param name="mostWork">The most additions.</param>
    public CapTable(BoundCase problem, int[] stocks, double mostWork)
    {
        (_case, Stocks) = (problem, stocks);
        long width = stocks.Max(s => problem.Stocks[s].Width) + problem.Kerf;
        long height = stocks.Max(s => problem.Stocks[s].Height) + problem.Kerf;
        _areas.AddRange(Ways(width, height).Select(shape => (shape.Piece, shape.Width * shape.Height)));
        for (long unit = 1; ; unit = unit == 1 ? Math.Max(2, Math.Max(width, height) / 20_000) : unit + Math.Max(1, unit / 12))
        {
            if (unit == 1 && !Countable(width, height))
            {
                continue;
            }

            Prepare(Down, Down, width, height);
            if (Work(_x.Length, _y.Length) <= mostWork)
            {
                Exact = unit == 1;
                if (!Exact)
                {
                    Raise(unit, width, height);
                }

                break;
            }

            long Down(long length) => length / unit * unit;
        }

        // Cuts of the first axis are tried for many places at once, so that one gets the more points.
        _swapped = _y.Length > _x.Length;
        if (_swapped)
        {
            (_x, _y) = (_y, _x);
            (_unitsX, _unitsY) = (_unitsY, _unitsX);
        }

        _farY = [.. Enumerable.Range(0, _y.Length).Select(j => Far(_y, j, Near(_unitsY)))];
    }

    /// <summary>The stocks.</summary>
    public int[] Stocks { get; }

    /// <summary>Whether sizes are the true ones.</summary>
    public bool Exact { get; }

    /// <summary>Fills the table.</summary>
    /// <param name="values">Per piece, 0 or more.</param>
    /// <returns>Whether the numbers are small enough for that.</returns>
    public bool Fill(IReadOnlyList<long> values)
    {
        if (_shapes.Any(shape => (BigInteger)values[shape.Piece] * _x[^1] * _y[^1] / ((BigInteger)shape.Width * shape.Height) >= long.MaxValue / 4))
        {
            return false;
        }

        _best = [.. _x.Select(_ => new long[_y.Length])];
        for (int i = 1; i < _x.Length; i++)
        {
            FillRow(i, values);
        }

        return true;
    }

    /// <summary>No pattern of a stock within the demand is worth more.</summary>
    /// <param name="stock">One of <see cref="Stocks"/>.</param>
    /// <param name="values">The values the table was filled with.</param>
    public long Cap(int stock, IReadOnlyList<long> values)
    {
        var (i, j) = Corner(stock);
        var area = (BigInteger)(_case.Stocks[stock].Width + _case.Kerf) * (_case.Stocks[stock].Height + _case.Kerf);
        var tiny = MostByArea(_tiny, values, area);
        return Exact ? _best[i][j] : (long)BigInteger.Min(_best[i][j] + tiny, MostByArea(_areas, values, area));
    }

    /// <summary>Per piece how many a best pattern of a stock holds; meaningful where <see cref="Exact"/>.</summary>
    /// <param name="stock">One of <see cref="Stocks"/>.</param>
    /// <param name="values">The values the table was filled with.</param>
    public int[] Pattern(int stock, IReadOnlyList<long> values)
    {
        int[] counts = new int[_case.Pieces.Length];
        var (i, j) = Corner(stock);
        Trace(i, j, values, counts);
        return counts;
    }

    /// <summary>What an area is worth when it is filled with the piece that is worth most for its own.</summary>
    private static BigInteger MostByArea(List<(int Piece, long Area)> pieces, IReadOnlyList<long> values, BigInteger area) =>
        pieces.Select(one => ((values[one.Piece] * area) + one.Area - 1) / one.Area).DefaultIfEmpty(0).Max();

    private (int I, int J) Corner(int stock)
    {
        var (width, height) = (_case.Stocks[stock].Width + _case.Kerf, _case.Stocks[stock].Height + _case.Kerf);
        var (along, across) = _swapped ? (height, width) : (width, height);
        return (Floor(_x, _unitsX?.Of(along) ?? along), Floor(_y, _unitsY?.Of(across) ?? across));
    }

    private long Near(RaisedLengths? units) =>
        _case.MostNear == long.MaxValue ? long.MaxValue : units?.Of(_case.MostNear) ?? _case.MostNear;

    // Sums in steps of the sizes' divisor must be few enough to be marked one by one.
    private bool Countable(long width, long height)
    {
        long unit = Ways(width, height).Aggregate(0L, (d, s) => (long)BigInteger.GreatestCommonDivisor(d, BigInteger.GreatestCommonDivisor(s.Width, s.Height)));
        return unit == 0 || Math.Max(width, height) / unit <= 500_000;
    }

    /// <summary>Shapes and points with lengths as they are told to be; of length 0 they count by their area.</summary>
    private void Prepare(Func<long, long> alongX, Func<long, long> alongY, long width, long height)
    {
        _shapes.Clear();
        _tiny.Clear();
        foreach (var way in Ways(width, height))
        {
            var told = way with { Width = alongX(way.Width), Height = alongY(way.Height) };
            if (told.Width == 0 || told.Height == 0)
            {
                _tiny.Add((way.Piece, way.Width * way.Height));
            }
            else
            {
                _shapes.Add(told);
            }
        }

        _x = SumPoints.Of(Extents(shape => shape.Width), alongX(width));
        _y = SumPoints.Of(Extents(shape => shape.Height), alongY(height));
    }

    private void Raise(long unit, long width, long height)
    {
        Shape[] ways = [.. Ways(width, height)];
        double[] areas = [.. ways.Select(way => (double)way.Width * way.Height * _case.Pieces[way.Piece].Demand)];
        (_unitsX, _unitsY) = (Longest(way => way.Width, width), Longest(way => way.Height, height));
        Prepare(_unitsX.Of, _unitsY.Of, width, height);

        // Of some units a little larger, the one in which the pieces are longest, compared with the axis.
        RaisedLengths Longest(Func<Shape, long> extent, long axis) => Enumerable.Range(0, UnitsTried)
            .Select(k => new RaisedLengths(ways.Select(extent), axis, unit + (unit * k / (UnitsTried * LargerShare))))
            .MaxBy(units => ways.Select((way, i) => areas[i] * units.Of(extent(way)) / extent(way)).Sum() / units.Of(axis))!;
    }

    private List<(long[] Extents, int Most)> Extents(Func<Shape, long> extent) => [.. _shapes
        .GroupBy(shape => shape.Piece)
        .Select(ways => (ways.Select(extent).Distinct().ToArray(), _case.Pieces[ways.Key].Demand))];

    private IEnumerable<Shape> Ways(long width, long height)
    {
        for (int i = 0; i < _case.Pieces.Length; i++)
        {
            var piece = _case.Pieces[i];
            var (upright, turned) = piece.On[Stocks[0]];
            var (w, h) = (piece.Width + _case.Kerf, piece.Height + _case.Kerf);
            if (upright && w <= width && h <= height)
            {
                yield return new Shape(i, w, h);
            }

            if (turned && h <= width && w <= height)
            {
                yield return new Shape(i, h, w);
            }
        }
    }

    private static double Work(double x, double y) => (x * x / 4 * y) + (y * y / 4 * x);

    private void FillRow(int i, IReadOnlyList<long> values)
    {
        long[] row = _best[i];
        _best[i - 1].CopyTo(row, 0);
        foreach (var shape in _shapes)
        {
            var (along, across) = _swapped ? (shape.Height, shape.Width) : (shape.Width, shape.Height);
            if (along <= _x[i])
            {
                int at = Array.BinarySearch(_y, across);
                row[at] = Math.Max(row[at], values[shape.Piece]);
            }
        }

        int[] far = Far(_x, i, Near(_unitsX));
        for (int k = 1; k < far.Length; k++)
        {
            RaiseToSum(row, _best[k], _best[far[k]]);
        }

        for (int j = 1; j < _y.Length; j++)
        {
            row[j] = Math.Max(Math.Max(row[j], row[j - 1]), BestCut(row, _farY[j]));
        }
    }

    private static void RaiseToSum(long[] target, long[] a, long[] b)
    {
        int lanes = Vector<long>.Count;
        int j = 0;
        for (; j + lanes <= target.Length; j += lanes)
        {
            Vector.Max(new Vector<long>(target, j), new Vector<long>(a, j) + new Vector<long>(b, j)).CopyTo(target, j);
        }

        for (; j < target.Length; j++)
        {
            target[j] = Math.Max(target[j], a[j] + b[j]);
        }
    }

    private static long BestCut(long[] row, int[] far)
    {
        long best = 0;
        for (int k = 1; k < far.Length; k++)
        {
            best = Math.Max(best, unchecked(row[k] + row[far[k]]));
        }

        return best;
    }

    /// <summary>
    /// For every first part up to the middle of a point: the largest point the second part holds. One of the two lies at the fence; of
    /// what is needed of each the smaller is no wider than that, so first parts end where the fence does.
    /// </summary>
    private static int[] Far(long[] points, int at, long mostNear)
    {
        var far = new List<int>();
        int rest = at;
        for (int k = 0; k <= at && 2 * points[k] <= points[at] && points[k] <= mostNear; k++)
        {
            while (points[rest] > points[at] - points[k])
            {
                rest--;
            }

            far.Add(rest);
        }

        return [.. far];
    }

    private static int Floor(long[] points, long extent)
    {
        int at = Array.BinarySearch(points, extent);
        return at >= 0 ? at : ~at - 1;
    }

    private void Trace(int i, int j, IReadOnlyList<long> values, int[] counts)
    {
        long worth = _best[i][j];
        if (worth == 0)
        {
            return;
        }

        foreach (var shape in _shapes.Where(shape => values[shape.Piece] == worth))
        {
            var (along, across) = _swapped ? (shape.Height, shape.Width) : (shape.Width, shape.Height);
            if (along <= _x[i] && across <= _y[j])
            {
                counts[shape.Piece]++;
                return;
            }
        }

        int[] farX = Far(_x, i, Near(_unitsX));
        int k = FirstCut(farX, (near, rest) => _best[near][j] + _best[rest][j] == worth && _best[near][j] > 0);
        if (k > 0)
        {
            Trace(k, j, values, counts);
            Trace(farX[k], j, values, counts);
            return;
        }

        k = FirstCut(_farY[j], (near, rest) => _best[i][near] + _best[i][rest] == worth && _best[i][near] > 0);
        if (k > 0)
        {
            Trace(i, k, values, counts);
            Trace(i, _farY[j][k], values, counts);
            return;
        }

        // Nothing new here: the same pattern lies in a smaller rectangle.
        (i, j) = i > 0 && _best[i - 1][j] == worth ? (i - 1, j) : (i, j - 1);
        Trace(i, j, values, counts);
    }

    private static int FirstCut(int[] far, Func<int, int, bool> matches)
    {
        for (int k = 1; k < far.Length; k++)
        {
            if (matches(k, far[k]))
            {
                return k;
            }
        }

        return -1;
    }

    private readonly record struct Shape(int Piece, long Width, long Height);
}
