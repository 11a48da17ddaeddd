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
    /// <summary>The widest that the narrower part of a cut may be, kerf included.</summary>
    public long MostNear { get; init; } = long.MaxValue;

    /// <summary>The longer extent, kerf included.</summary>
    public long Longest => Math.Max(Width, Height) + Kerf;

    /// <summary>The largest stock holds no more pieces than this.</summary>
    public double MostPieces => (double)(Width + Kerf) * (Height + Kerf) / Ways()
        .Select(s => (double)s.Width * s.Height).DefaultIfEmpty(1).Min();

    /// <summary>The ways pieces can lie that truly fit, with their sizes rounded to a unit.</summary>
    /// <param name="unit">The unit; 1: the true sizes.</param>
    /// <param name="up">Whether sizes are rounded up (what no longer fits is left out) or down (what is smaller than the
    /// unit is left out).</param>
    public Shape[] Shapes(long unit, bool up)
    {
        long add = up ? unit - 1 : 0;
        return [.. Ways()
            .Where(s => up || (s.Width >= unit && s.Height >= unit))
            .Select(s => s with { Width = (s.Width + add) / unit * unit, Height = (s.Height + add) / unit * unit })
            .Where(Fits)];
    }

    /// <summary>The ways pieces can lie that truly fit, kerf included.</summary>
    public Shape[] Ways() => [.. Shape.Of(Pieces, Turning, Kerf).Where(Fits)];

    /// <summary>The same area in the units of scales, the kerf counted in.</summary>
    /// <param name="x">The scale along the width.</param>
    /// <param name="y">The scale along the height.</param>
    public GridArea Scaled(LengthScale x, LengthScale y) => this with
    {
        Width = x.Of(Width + Kerf),
        Height = y.Of(Height + Kerf),
        Kerf = 0,
        MostNear = MostNear == long.MaxValue ? MostNear : Math.Max(x.Of(MostNear), y.Of(MostNear)),
    };

    /// <summary>The scales of both axes for a unit.</summary>
    /// <param name="unit">The least unit.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public (LengthScale X, LengthScale Y) Scales(long unit, CancellationToken cancellation)
    {
        var shapes = Ways();
        double[] areas = [.. shapes.Select(s => (double)s.Width * s.Height * Pieces[s.Piece].Demand)];
        return (
            LengthScale.Make([.. shapes.Select((s, i) => (s.Width, areas[i]))], Width + Kerf, unit, cancellation),
            LengthScale.Make([.. shapes.Select((s, i) => (s.Height, areas[i]))], Height + Kerf, unit, cancellation));
    }

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
