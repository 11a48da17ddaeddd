namespace PanelService.Cutting.Patterns;

/// <summary>A piece in one of the ways it may lie, grown by one kerf each way.</summary>
/// <param name="Width">Extent along x, kerf included.</param>
/// <param name="Height">Extent along y, kerf included.</param>
/// <param name="Piece">The piece's index in the problem.</param>
/// <param name="Turned">Whether its own width lies along y.</param>
internal readonly record struct Shape(long Width, long Height, int Piece, bool Turned)
{
    /// <summary>Every way each piece may lie, one entry for a square piece.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="turning">How each may lie.</param>
    /// <param name="kerf">The kerf to grow by.</param>
    public static List<Shape> Of(IReadOnlyList<Piece> pieces, IReadOnlyList<Turning> turning, long kerf)
    {
        var shapes = new List<Shape>();
        for (int i = 0; i < pieces.Count; i++)
        {
            long width = pieces[i].Width + kerf;
            long height = pieces[i].Height + kerf;
            bool upright = turning[i].HasFlag(Turning.Upright);
            if (upright)
            {
                shapes.Add(new Shape(width, height, i, Turned: false));
            }

            if (turning[i].HasFlag(Turning.Turned) && !(upright && width == height))
            {
                shapes.Add(new Shape(height, width, i, Turned: true));
            }
        }

        return shapes;
    }
}
