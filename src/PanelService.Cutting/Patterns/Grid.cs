// Problem: odd sizes have too many points. 30 formats in tenths of a millimetre on 1220 × 2440 mm give 2,500 × 14,600.
// Idea:    sizes rounded to a coarser unit have few. Rounded down they stand for a problem in which everything that
//          truly fits still fits: values found there are upper bounds. Rounded up they stand for one in which
//          everything that fits there truly fits: patterns found there can be cut.
// Source:  Beasley, JORS 36 (1985), on reduced point sets; the two-sided rounding is plain monotony.
// Cost:    the unit is the smallest of the form (whole extent / 2^k) that keeps a programme within the work asked for.
// Not:     exact: what lies between the two roundings stays open, unless the true points are few enough to be used.
namespace PanelService.Cutting.Patterns;

/// <summary>
/// The points of both axes for all stocks on which the pieces may lie in the same ways: one programme over the
/// largest extents answers for every one of them.
/// </summary>
internal sealed class Grid
{
    // A bit set of more places than this takes longer to make than a coarse programme to run.
    private const long MostPlaces = 200_000;

    private Grid(GridArea area, Shape[] shapes, PointSet x, PointSet y, CancellationToken cancellation = default)
    {
        (Shapes, PieceCount, Kerf, X, Y) = (shapes, area.Pieces.Count, area.Kerf, x, y);
        CutsX = new CutTable(X, area.MostNear, cancellation);
        CutsY = new CutTable(Y, area.MostNear, cancellation);
    }

    /// <summary>The kerf every size is grown by.</summary>
    public long Kerf { get; }

    /// <summary>How many pieces the problem has.</summary>
    public int PieceCount { get; }

    /// <summary>Whether sizes are the true ones.</summary>
    public bool IsExact { get; private init; }

    /// <summary>Pieces too small for a grid of rounded-down sizes, with their areas: a bound counts them by area.</summary>
    public (int Piece, double Area)[] Tiny { get; private init; } = [];

    /// <summary>The ways pieces can lie that fit at all, in the grid's sizes.</summary>
    public Shape[] Shapes { get; }

    /// <summary>Points along the width.</summary>
    public PointSet X { get; }

    /// <summary>Points along the height.</summary>
    public PointSet Y { get; }

    /// <summary>Cuts across the width.</summary>
    public CutTable CutsX { get; }

    /// <summary>Cuts across the height.</summary>
    public CutTable CutsY { get; }

    /// <summary>How much work one programme is: cell visits.</summary>
    public long Work => (CutsX.Count * Y.Count) + (CutsY.Count * X.Count) + ((long)X.Count * Y.Count);

    /// <summary>The exact grid.</summary>
    /// <param name="area">Pieces and the extents of the largest stock.</param>
    public static Grid Exact(GridArea area)
    {
        var shapes = area.Shapes(unit: 1, up: false);
        return new Grid(area, shapes, area.PointsX(shapes), area.PointsY(shapes)) { IsExact = true };
    }

    /// <summary>The exact grid where a programme over it is little enough work, else the finest coarse one that is.</summary>
    /// <param name="area">Pieces and the extents of the largest stock.</param>
    /// <param name="up">Whether a coarse grid's sizes are rounded up, so that its patterns fit, or down, so that its values are bounds.</param>
    /// <param name="mostWork">The most work, in cell visits.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public static Grid Within(GridArea area, bool up, long mostWork, CancellationToken cancellation = default)
    {
        for (long unit = 1; ; unit = unit == 1 ? Math.Max(2, area.Longest / 8192) : (unit * 5 / 4) + 1)
        {
            var shapes = area.Shapes(unit, up);
            if (area.Places(shapes) > MostPlaces)
            {
                continue;
            }

            var (x, y) = (area.PointsX(shapes, cancellation), area.PointsY(shapes, cancellation));
            if (WorkOf(x, y) <= mostWork)
            {
                return new Grid(area, shapes, x, y, cancellation)
                {
                    IsExact = unit == 1,
                    Tiny = up ? [] : area.Tiny(unit),
                };
            }
        }
    }

    /// <summary>No more work than this is a programme over these points.</summary>
    private static long WorkOf(PointSet x, PointSet y) => (CutTable.Most(x) * y.Count) + (CutTable.Most(y) * x.Count) + ((long)x.Count * y.Count);
}
