// Problem: which sets of a few pieces fit which stocks?
// Idea:    the smallest rectangles a set can be cut from form a staircase: the less wide, the higher. A set's staircase
//          is the lower hull of those of all ways to part it in two and set the parts side by side or one above the
//          other, and two staircases set side by side add up step by step. So one sweep over all sets, parts before
//          wholes, decides every set on every stock at once.
// Source:  shape functions: Stockmeyer, Information and Control 57 (1983); Otten, ICCD (1983), there for one slicing
//          tree; here over all trees by a programme over sets.
// Cost:    (sets × their parts) / 2 × the steps of two staircases; sets that no stock has area for cost nothing.
//          Twelve different pieces on one large sheet: a quarter of a million pairs.
// Not:     for many different pieces: 3^n pairs.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>The staircases of all sets of pieces for stocks on which the pieces may lie in the same ways.</summary>
internal sealed class FrontTable
{
    private readonly MultisetIndex _sets;
    private readonly Shape[][] _shapes;
    private readonly (long Width, long Height)[] _stocks;
    private readonly WorkMeter _work;
    private readonly Staircase?[] _fronts;
    private readonly long[] _area;
    private readonly long _mostArea;

    /// <summary>Prepares a table; <see cref="Fill"/> computes it.</summary>
    /// <param name="sets">The numbering of the sets.</param>
    /// <param name="shapes">How each type may lie; sizes grown by the kerf.</param>
    /// <param name="stocks">The stocks' sizes, grown by the kerf.</param>
    /// <param name="work">Where work is counted.</param>
    public FrontTable(MultisetIndex sets, IReadOnlyList<Shape> shapes, IEnumerable<(long Width, long Height)> stocks, WorkMeter work)
    {
        (_sets, _stocks, _work) = (sets, [.. stocks], work);
        _shapes = [.. Enumerable.Range(0, sets.Types).Select(t => shapes.Where(s => s.Piece == t).ToArray())];
        _fronts = new Staircase?[sets.Count];
        _mostArea = _stocks.Max(s => s.Width * s.Height);
        _area = Areas();
    }

    /// <summary>How many pairs of parts <see cref="Fill"/> looks at: what it costs.</summary>
    public double Splits => Enumerable.Range(1, _sets.Count - 1)
        .Where(set => _area[set] <= _mostArea)
        .Sum(set => MultisetIndex.Number(_sets.Digits(set)) / 2);

    /// <summary>Computes every staircase.</summary>
    /// <returns>Whether the work sufficed; the table is of no use otherwise.</returns>
    public bool Fill()
    {
        var hull = new StaircaseBuilder(_stocks);
        long steps = 0;
        for (int set = 1; set < _sets.Count; set++)
        {
            if (_area[set] > _mostArea)
            {
                continue;
            }

            hull.Clear();
            PlaceSingle(set, hull);
            steps += JoinParts(set, hull) + 4;
            _fronts[set] = hull.Build();
            if (steps > 20_000)
            {
                _work.Spend(steps / 100);
                steps = 0;
                if (_work.Exhausted)
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Whether a set fits a rectangle.</summary>
    /// <param name="set">The set's number.</param>
    /// <param name="width">Width, grown by the kerf.</param>
    /// <param name="height">Height, grown by the kerf.</param>
    public bool Fits(int set, long width, long height) =>
        set == 0 || (_area[set] <= width * height && _fronts[set] is { } front && front.StepWithin(width, height) >= 0);

    /// <summary>The least a set takes along an axis.</summary>
    /// <param name="set">The set's number, not 0.</param>
    /// <param name="axis">The axis.</param>
    /// <param name="across">What there is along the other axis, grown by the kerf.</param>
    /// <returns>The extent, grown by the kerf; −1 where the set does not fit so.</returns>
    public long Least(int set, Axis axis, long across)
    {
        if (_fronts[set] is not { } front)
        {
            return -1;
        }

        int step = axis == Axis.X ? front.StepWithin(long.MaxValue, across) : front.LastWithin(across);
        return step < 0 ? -1 : axis == Axis.X ? front.Width[step] : front.Height[step];
    }

    /// <summary>The pieces' area, each grown by the kerf; above that of every stock where they cannot lie on them.</summary>
    /// <param name="set">The set's number.</param>
    public long AreaOf(int set) => _area[set];

    /// <summary>An arrangement of a set that fits.</summary>
    /// <param name="set">The set's number, not 0.</param>
    /// <param name="width">Width, grown by the kerf.</param>
    /// <param name="height">Height, grown by the kerf.</param>
    public Block Arrange(int set, long width, long height)
    {
        var front = _fronts[set]!;
        int step = front.StepWithin(width, height);
        (width, height) = (front.Width[step], front.Height[step]);
        for (int t = 0; t < _shapes.Length; t++)
        {
            foreach (var shape in set == _sets.One(t) ? _shapes[t] : [])
            {
                if (shape.Width <= width && shape.Height <= height)
                {
                    return new PieceBlock(t, shape.Turned);
                }
            }
        }

        return Split(set, width, height);
    }

    private Block Split(int set, long width, long height)
    {
        foreach (var (part, rest) in Parts(set))
        {
            if (_fronts[part] is not { } a || _fronts[rest] is not { } b)
            {
                continue;
            }

            if (a.StepWithin(long.MaxValue, height) is >= 0 and var i && b.StepWithin(long.MaxValue, height) is >= 0 and var j
                && a.Width[i] + b.Width[j] <= width)
            {
                return BlockMath.Join(Axis.X, Arrange(part, a.Width[i], height), Arrange(rest, b.Width[j], height));
            }

            if (a.LastWithin(width) is >= 0 and var k && b.LastWithin(width) is >= 0 and var l && a.Height[k] + b.Height[l] <= height)
            {
                return BlockMath.Join(Axis.Y, Arrange(part, width, a.Height[k]), Arrange(rest, width, b.Height[l]));
            }
        }

        throw new InvalidOperationException("A staircase's step has no origin.");
    }

    private long[] Areas()
    {
        long[] area = new long[_sets.Count];
        for (int set = 1; set < area.Length; set++)
        {
            int type = 0;
            while (_sets.Digit(set, type) == 0)
            {
                type++;
            }

            // A type that cannot lie here at all makes its sets too large for everything.
            long one = _shapes[type].Length == 0 ? _mostArea + 1 : _shapes[type][0].Width * _shapes[type][0].Height;
            area[set] = Math.Min(_mostArea + 1, area[set - _sets.One(type)] + one);
        }

        return area;
    }

    private void PlaceSingle(int set, StaircaseBuilder hull)
    {
        for (int t = 0; t < _shapes.Length; t++)
        {
            if (set == _sets.One(t))
            {
                foreach (var shape in _shapes[t])
                {
                    hull.Add(shape.Width, shape.Height);
                }
            }
        }
    }

    private long JoinParts(int set, StaircaseBuilder hull)
    {
        long steps = 0;
        foreach (var (part, rest) in Parts(set))
        {
            steps++;
            if (_fronts[part] is { } a && _fronts[rest] is { } b)
            {
                steps += a.Width.Length + b.Width.Length;
                hull.AddBeside(a, b);
                hull.AddAbove(a, b);
            }
        }

        return steps;
    }

    /// <summary>Every way to part a set in two, each once.</summary>
    private IEnumerable<(int Part, int Other)> Parts(int set)
    {
        foreach (int part in _sets.Parts(set))
        {
            // Numbers rise, so from the middle on every pair would come again.
            if (2L * part > set)
            {
                yield break;
            }

            if (part > 0)
            {
                yield return (part, set - part);
            }
        }
    }
}
