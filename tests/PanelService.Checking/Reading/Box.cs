namespace PanelService.Checking.Reading;

/// <summary>A rectangle in whole steps.</summary>
internal readonly record struct Box(long X, long Y, long Width, long Height)
{
    public long Right => X + Width;

    public long Top => Y + Height;

    public Int128 Area => (Int128)Width * Height;

    public bool IsInside(Box outer) => X >= outer.X && Y >= outer.Y && Right <= outer.Right && Top <= outer.Top;

    public bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Top && other.Y < Top;

    public bool Holds(long a, long b) => (a <= Width && b <= Height) || (b <= Width && a <= Height);

    public override string ToString() => FormattableString.Invariant($"[{X}, {Y}; {Width} x {Height} steps]");
}
