using System.Numerics;

namespace PanelService.Cutting.Patterns;

/// <summary>What a grid is made for.</summary>
/// <param name="Pieces">The pieces.</param>
/// <param name="Turning">How each may lie on these stocks.</param>
/// <param name="Width">The widest stock's usable width.</param>
/// <param name="Height">The highest stock's usable height.</param>
/// <param name="Kerf">The kerf.</param>
internal sealed record GridArea(
    IReadOnlyList<Piece> Pieces, IReadOnlyList<Turning> Turning, long Width, long Height, long Kerf)
{
    // Units tried for an axis, and by what part of the least they are larger at most: a fifth.
    private const int UnitsTried = 200;
    private const int LargerShare = 5;

    /// <summary>The widest that the narrower part of a cut may be, kerf included.</summary>
    public long MostNear { get; init; } = long.MaxValue;

    /// <summary>The longer extent, kerf included.</summary>
    public long Longest => Math.Max(Width, Height) + Kerf;

    /// <summary>The largest stock holds no more pieces than this.</summary>
    public double MostPieces => (double)(Width + Kerf) * (Height + Kerf) / Shape.Of(Pieces, Turning, Kerf)
        .Where(Fits).Select(s => (double)s.Width * s.Height).DefaultIfEmpty(1).Min();

    /// <summary>The ways pieces can lie that truly fit, with their sizes rounded to a unit.</summary>
    /// <param name="units">The unit along the width and along the height; 1: the true sizes.</param>
    /// <param name="up">Whether sizes are rounded up (what no longer fits is left out) or down (what is smaller than the
    /// unit is left out: see <see cref="Tiny"/>).</param>
    public Shape[] Shapes((long X, long Y) units, bool up)
    {
        var (x, y) = units;
        var (addX, addY) = up ? (x - 1, y - 1) : (0, 0);
        return [.. Shape.Of(Pieces, Turning, Kerf)
            .Where(Fits)
            .Where(s => up || (s.Width >= x && s.Height >= y))
            .Select(s => s with { Width = (s.Width + addX) / x * x, Height = (s.Height + addY) / y * y })
            .Where(Fits)];
    }

    /// <summary>
    /// The units, not much larger than the least, under which sizes rounded down let the least onto a sheet that is rounded
    /// down with them: what the pieces lose is to be little, what the sheet loses much.
    /// </summary>
    /// <param name="least">The least unit.</param>
    public (long X, long Y) UnitsDown(long least)
    {
        var shapes = Shape.Of(Pieces, Turning, Kerf).Where(Fits).ToArray();
        double[] areas = [.. shapes.Select(s => (double)s.Width * s.Height * Pieces[s.Piece].Demand)];
        double all = areas.Sum();
        long[] units = [.. Enumerable.Range(0, UnitsTried).Select(k => least + (least * k / (UnitsTried * LargerShare))).Distinct()];
        return (units.MinBy(unit => Gain(unit, s => s.Width, Width + Kerf)), units.MinBy(unit => Gain(unit, s => s.Height, Height + Kerf)));

        double Gain(long unit, Func<Shape, long> extent, long whole) =>
            (shapes.Select((s, i) => areas[i] * (extent(s) % unit) / extent(s)).Sum() / all) - ((double)(whole % unit) / whole);
    }

    /// <summary>The pieces too small for a unit that sizes are rounded down to: they count by their area.</summary>
    /// <param name="units">The unit along the width and along the height.</param>
    /// <returns>Index and area, kerf included.</returns>
    public (int Piece, double Area)[] Tiny((long X, long Y) units) =>
        [.. Shape.Of(Pieces, Turning, Kerf)
            .Where(s => Fits(s) && (s.Width < units.X || s.Height < units.Y))
            .Select(s => (s.Piece, (double)s.Width * s.Height))
            .Distinct()];

    private bool Fits(Shape shape) => shape.Width <= Width + Kerf && shape.Height <= Height + Kerf;

    /// <summary>How many places the sums of the longer axis have to be looked for in.</summary>
    /// <param name="shapes">The shapes.</param>
    public long Places(Shape[] shapes)
    {
        long divisor = shapes.Aggregate(0L, (d, s) => (long)BigInteger.GreatestCommonDivisor(d, BigInteger.GreatestCommonDivisor(s.Width, s.Height)));
        return divisor == 0 ? 0 : Longest / divisor;
    }

    /// <summary>The points along the width.</summary>
    /// <param name="shapes">The shapes.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public PointSet PointsX(Shape[] shapes, CancellationToken cancellation = default) =>
        PointSet.Of(Extents(shapes, s => s.Width), Width + Kerf, cancellation);

    /// <summary>The points along the height.</summary>
    /// <param name="shapes">The shapes.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public PointSet PointsY(Shape[] shapes, CancellationToken cancellation = default) =>
        PointSet.Of(Extents(shapes, s => s.Height), Height + Kerf, cancellation);

    private List<(long First, long? Second, int Demand)> Extents(Shape[] shapes, Func<Shape, long> extent) =>
        [.. shapes.GroupBy(s => s.Piece).Select(ways =>
        {
            long[] sizes = [.. ways.Select(extent).Distinct()];
            return (sizes[0], sizes.Length > 1 ? sizes[1] : (long?)null, Pieces[ways.Key].Demand);
        })];
}
