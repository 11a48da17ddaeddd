namespace PanelService.Drawing.Drafting;

/// <summary>An upright rectangle in millimetres of the material.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge; y grows downwards.</param>
/// <param name="Width">Extent along x.</param>
/// <param name="Height">Extent along y.</param>
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>Touching boxes do not overlap; rounding in the ninth digit must not make them.</summary>
    private const double Touch = 1e-6;

    public double Right => X + Width;

    public double Bottom => Y + Height;

    public double CentreX => X + (Width / 2);

    public double CentreY => Y + (Height / 2);

    public static Box Centred(double x, double y, double width, double height) =>
        new(x - (width / 2), y - (height / 2), width, height);

    public bool Overlaps(Box other) =>
        X < other.Right - Touch && other.X < Right - Touch && Y < other.Bottom - Touch && other.Y < Bottom - Touch;

    public bool Holds(Box other) =>
        other.X >= X - Touch && other.Right <= Right + Touch && other.Y >= Y - Touch && other.Bottom <= Bottom + Touch;

    /// <summary>The part of this box that lies within another; of no extent where they do not meet.</summary>
    public Box Clip(Box to)
    {
        double x = Math.Max(X, to.X);
        double y = Math.Max(Y, to.Y);
        return new Box(x, y, Math.Max(0, Math.Min(Right, to.Right) - x), Math.Max(0, Math.Min(Bottom, to.Bottom) - y));
    }

    public Box Shrink(double by) => new(X + by, Y + by, Math.Max(0, Width - (2 * by)), Math.Max(0, Height - (2 * by)));
}
