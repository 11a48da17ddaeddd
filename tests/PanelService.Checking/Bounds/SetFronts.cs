// Problem: which sets of pieces can guillotine cuts get out of a rectangle?
// Idea:    for every set the smallest rectangles that hold it: of a set of one its piece, of a larger one those made of
//          the rectangles of two parts of it, side by side or one above the other. Of all pairs of a width and a height
//          only those that no other beats both ways are kept.
// Cost:    pairs of sets within the whole, times the rectangles of each; for up to some million pairs.
// Source:  the definition of a guillotine pattern, put bottom-up. No points, no values, no bounds.
namespace PanelService.Checking.Bounds;

/// <summary>The smallest rectangles of every set of pieces on stocks where they may lie alike.</summary>
internal sealed class SetFronts
{
    private readonly PieceSets _sets;
    private readonly (long Width, long Height)[][] _fronts;
    private readonly long _width;
    private readonly long _height;

    /// <summary>Computes them.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="sets">Its sets.</param>
    /// <param name="stocks">Stocks with the same ways of lying.</param>
    public SetFronts(BoundCase problem, PieceSets sets, int[] stocks)
    {
        _sets = sets;
        _width = stocks.Max(s => problem.Stocks[s].Width) + problem.Kerf;
        _height = stocks.Max(s => problem.Stocks[s].Height) + problem.Kerf;
        _fronts = new (long, long)[sets.Count][];
        _fronts[0] = [(0, 0)];
        for (int set = 1; set < sets.Count; set++)
        {
            _fronts[set] = Front(problem, set, stocks[0]);
        }
    }

    /// <summary>Whether a set can be cut from a rectangle.</summary>
    /// <param name="set">The set.</param>
    /// <param name="width">Width, one kerf included.</param>
    /// <param name="height">Height, one kerf included.</param>
    public bool Fits(int set, long width, long height) => Array.Exists(_fronts[set], r => r.Width <= width && r.Height <= height);

    private (long Width, long Height)[] Front(BoundCase problem, int set, int stock)
    {
        var found = new List<(long Width, long Height)>();
        if (_sets.Single(set) is { } piece)
        {
            var (width, height) = (problem.Pieces[piece].Width + problem.Kerf, problem.Pieces[piece].Height + problem.Kerf);
            var (upright, turned) = problem.Pieces[piece].On[stock];
            Add(found, upright, width, height);
            Add(found, turned, height, width);
        }

        foreach (int part in _sets.PartsOf(set))
        {
            int other = set - part;
            if (part <= other)
            {
                Join(found, _fronts[part], _fronts[other]);
            }
        }

        return [.. found];
    }

    private void Join(List<(long Width, long Height)> found, (long Width, long Height)[] some, (long Width, long Height)[] others)
    {
        foreach (var a in some)
        {
            foreach (var b in others)
            {
                Add(found, true, a.Width + b.Width, Math.Max(a.Height, b.Height));
                Add(found, true, Math.Max(a.Width, b.Width), a.Height + b.Height);
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
