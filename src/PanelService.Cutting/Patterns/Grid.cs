// Problem: odd sizes have too many points. 30 formats in tenths of a millimetre on 1220 × 2440 mm give 2,500 × 14,600.
// Idea:    fewer points do. Small whole numbers in place of the sizes (LengthScale) stand for a problem in which everything that
//          truly fits still fits: values found there are upper bounds. Patterns that can be cut come from true sizes on a part of
//          the points: what a cut leaves is rounded down to a point, so that only the inner cuts lose anything, where sizes rounded
//          up lose by every piece.
// Source:  Beasley, JORS 36 (1985), on reduced point sets; for the numbers see LengthScale; the rest is plain monotony.
// Cost:    the finest of a row of units, each an eighth larger, that keeps a programme within the work asked for. Of ten orders
//          of 30 formats, 12 to 21 sheets, the relaxation came out 0.03 to 0.09 sheets lower than by sizes rounded up.
// Not:     exact: what lies between the two stays open, unless the true points are few enough to be used.
namespace PanelService.Cutting.Patterns;

/// <summary>
/// The points of both axes for all stocks on which the pieces may lie in the same ways: one programme over the
/// largest extents answers for every one of them.
/// </summary>
internal sealed class Grid
{
    // A bit set of more places than this takes longer to make than a coarse programme to run.
    private const long MostPlaces = 200_000;

    // The finest coarse grid tried has so many points along the longer axis.
    private const long FirstPoints = 8192;

    private Grid(GridArea area, Shape[] shapes, PointSet x, PointSet y, CancellationToken cancellation = default)
    {
        (Shapes, PieceCount, Kerf, X, Y) = (shapes, area.Pieces.Count, area.Kerf, x, y);
        Heights = [.. shapes.Select(shape => shape.Height)];
        Corners = [.. shapes.Select(shape => (X.Floor(shape.Width), Y.Floor(shape.Height)))];
        CutsX = new CutTable(X, area.MostNear, cancellation);
        CutsY = new CutTable(Y, area.MostNear, cancellation);
    }

    /// <summary>The kerf every size is grown by.</summary>
    public long Kerf { get; private init; }

    private LengthScale? ScaleX { get; init; }

    private LengthScale? ScaleY { get; init; }

    /// <summary>The largest point along the width that a rectangle reaches; −1 where it reaches none.</summary>
    /// <param name="width">Its width, a kerf included.</param>
    public int Column(long width) => X.Floor(ScaleX?.Of(width) ?? width);

    /// <summary>The largest point along the height that a rectangle reaches; −1 where it reaches none.</summary>
    /// <param name="height">Its height, a kerf included.</param>
    public int Row(long height) => Y.Floor(ScaleY?.Of(height) ?? height);

    /// <summary>How many pieces the problem has.</summary>
    public int PieceCount { get; }

    /// <summary>Whether sizes are the true ones.</summary>
    public bool IsExact { get; private init; }

    /// <summary>Pieces too small for a bounding grid's units, with their areas: a bound counts them by area.</summary>
    public (int Piece, double Area)[] Tiny { get; private init; } = [];

    /// <summary>The ways pieces can lie that fit at all, in the grid's sizes.</summary>
    public Shape[] Shapes { get; }

    /// <summary>The shapes' true heights; in the order of <see cref="Shapes"/>.</summary>
    public long[] Heights { get; private init; }

    /// <summary>The points along the width and the height that the shapes reach; in the order of <see cref="Shapes"/>.</summary>
    public (int Column, int Row)[] Corners { get; }

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
        var shapes = area.Shapes(1, up: false);
        return new Grid(area, shapes, area.PointsX(shapes), area.PointsY(shapes)) { IsExact = true };
    }

    /// <summary>The exact grid; null where a programme over it is too much work.</summary>
    /// <param name="area">Pieces and the extents of the largest stock.</param>
    /// <param name="mostWork">The most work, in cell visits.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public static Grid? ExactWithin(GridArea area, long mostWork, CancellationToken cancellation = default)
    {
        var shapes = area.Shapes(1, up: false);
        if (area.Places(shapes) > MostPlaces)
        {
            return null;
        }

        var (x, y) = (area.PointsX(shapes, cancellation), area.PointsY(shapes, cancellation));
        return WorkOf(x, y) > mostWork ? null : new Grid(area, shapes, x, y, cancellation) { IsExact = true };
    }

    /// <summary>
    /// The exact grid where a programme over it is little enough work, else one as fine as that allows in which whatever fits
    /// still fits: its values are bounds.
    /// </summary>
    /// <param name="area">Pieces and the extents of the largest stock.</param>
    /// <param name="mostWork">The most work, in cell visits.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public static Grid Bounding(GridArea area, long mostWork, CancellationToken cancellation = default) =>
        ExactWithin(area, mostWork, cancellation) ?? Rounded(area, up: false, mostWork, cancellation);

    private static Grid Rounded(GridArea area, bool up, long mostWork, CancellationToken cancellation)
    {
        for (long unit = NextUnit(1, area); ; unit = NextUnit(unit, area))
        {
            var shapes = area.Shapes(unit, up);
            if (area.Places(shapes) > MostPlaces || WorkOf(area.PointsX(shapes, cancellation), area.PointsY(shapes, cancellation)) > mostWork)
            {
                continue;
            }

            return up
                ? new Grid(area, shapes, area.PointsX(shapes, cancellation), area.PointsY(shapes, cancellation), cancellation)
                : Scaled(area, unit, cancellation);
        }
    }

    private static Grid Scaled(GridArea area, long unit, CancellationToken cancellation)
    {
        var (x, y) = area.Scales(unit, cancellation);
        var ways = area.Ways();
        var shapes = ways.Select(way => way with { Width = x.Of(way.Width), Height = y.Of(way.Height) }).ToArray();
        bool[] isTiny = [.. shapes.Select(shape => shape.Width == 0 || shape.Height == 0)];
        Shape[] large = [.. shapes.Where((_, s) => !isTiny[s])];
        var scaled = area.Scaled(x, y);
        return new Grid(scaled, large, scaled.PointsX(large, cancellation), scaled.PointsY(large, cancellation), cancellation)
        {
            ScaleX = x,
            ScaleY = y,
            Kerf = area.Kerf,
            Heights = [.. ways.Where((_, s) => !isTiny[s]).Select(way => way.Height)],
            Tiny = [.. ways.Where((_, s) => isTiny[s]).Select(way => (way.Piece, (double)way.Width * way.Height)).Distinct()],
        };
    }

    /// <summary>
    /// The exact grid where a programme over it is little enough work, else one of fewer points, on which every piece keeps
    /// its true size and what a cut leaves is rounded down to a point: its patterns fit.
    /// </summary>
    /// <param name="area">Pieces and the extents of the largest stock.</param>
    /// <param name="mostWork">The most work, in cell visits.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public static Grid Fitting(GridArea area, long mostWork, CancellationToken cancellation = default)
    {
        if (ExactWithin(area, mostWork, cancellation) is { } exact)
        {
            return exact;
        }

        // Of very many small pieces a row has more inner cuts than points can be spared for.
        if (area.MostPieces > NarrowTable.MostPieces)
        {
            return Rounded(area, up: true, mostWork, cancellation);
        }

        // Sizes of very many places are rounded first.
        long unit = 1;
        var shapes = area.Shapes(unit, up: true);
        while (area.Places(shapes) > MostPlaces)
        {
            unit = NextUnit(unit, area);
            shapes = area.Shapes(unit, up: true);
        }

        var (allX, allY) = (area.PointsX(shapes, cancellation), area.PointsY(shapes, cancellation));
        for (long interval = Math.Max(unit, area.Longest / FirstPoints); interval <= area.Longest; interval = (interval * 9 / 8) + 1)
        {
            cancellation.ThrowIfCancellationRequested();
            var (x, y) = (allX.Thinned(shapes.Select(s => s.Width), interval), allY.Thinned(shapes.Select(s => s.Height), interval));
            if (WorkOf(x, y) <= mostWork)
            {
                return new Grid(area, shapes, x, y, cancellation);
            }
        }

        // The pieces' own sides are too many.
        return Rounded(area, up: true, mostWork, cancellation);
    }

    private static long NextUnit(long unit, GridArea area) => unit == 1 ? Math.Max(2, area.Longest / FirstPoints) : (unit * 9 / 8) + 1;

    /// <summary>No more work than this is a programme over these points.</summary>
    private static long WorkOf(PointSet x, PointSet y) => (CutTable.Most(x) * y.Count) + (CutTable.Most(y) * x.Count) + ((long)x.Count * y.Count);
}
