namespace PanelService.Cutting.Patterns;

/// <summary>
/// The points of both axes for all stocks on which the pieces may lie in the same ways: one programme over the
/// largest extents answers for every one of them.
/// </summary>
internal sealed class Grid
{
    /// <summary>Makes the grid.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="turning">How each may lie on these stocks.</param>
    /// <param name="width">The widest stock's usable width.</param>
    /// <param name="height">The highest stock's usable height.</param>
    /// <param name="kerf">The kerf.</param>
    public Grid(IReadOnlyList<Piece> pieces, IReadOnlyList<Turning> turning, long width, long height, long kerf)
    {
        Kerf = kerf;
        PieceCount = pieces.Count;
        Shapes = [.. Shape.Of(pieces, turning, kerf).Where(s => s.Width <= width + kerf && s.Height <= height + kerf)];
        X = PointSet.Of(Extents(Shapes, pieces, s => s.Width), width + kerf);
        Y = PointSet.Of(Extents(Shapes, pieces, s => s.Height), height + kerf);
        CutsX = new CutTable(X);
        CutsY = new CutTable(Y);
    }

    /// <summary>The kerf every size is grown by.</summary>
    public long Kerf { get; }

    /// <summary>How many pieces the problem has.</summary>
    public int PieceCount { get; }

    /// <summary>The ways pieces can lie that fit at all.</summary>
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

    private static List<(long First, long? Second, int Demand)> Extents(
        Shape[] shapes, IReadOnlyList<Piece> pieces, Func<Shape, long> extent) =>
        [.. shapes.GroupBy(s => s.Piece).Select(ways =>
        {
            var sizes = ways.Select(extent).Distinct().ToArray();
            return (sizes[0], sizes.Length > 1 ? sizes[1] : (long?)null, pieces[ways.Key].Demand);
        })];
}
