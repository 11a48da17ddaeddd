namespace PanelService.Drawing.Drafting;

/// <summary>
/// A dimension line in the manner of technical drawing: a thin line from edge to edge, a 45° tick at each end, the
/// size in a gap. Inside a piece its own edges serve as extension lines; outside, they are drawn.
/// </summary>
internal static class DimensionLine
{
    private const double Tick = 0.9;

    /// <summary>Draws the line from one end to the other around its label.</summary>
    /// <param name="sketch">The drawing.</param>
    /// <param name="from">Where it begins: an x for a level line, a y for an upright one.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="label">The size, standing on the line.</param>
    public static void Draw(Sketch sketch, double from, double to, Label label)
    {
        double tick = sketch.Paper(Tick);
        sketch.Dimensions.Append(label.Upright ? Upright(from, to, label, tick) : Level(from, to, label, tick));
        sketch.Letters.Add(label.Draw());
    }

    /// <summary>The extension lines of a dimension outside the outline.</summary>
    public static string Extensions(Box outline, double offset, double gap, bool upright) => upright
        ? Ink.Line(-gap, outline.Y, -offset - gap, outline.Y) + Ink.Line(-gap, outline.Bottom, -offset - gap, outline.Bottom)
        : Ink.Line(outline.X, -gap, outline.X, -offset - gap) + Ink.Line(outline.Right, -gap, outline.Right, -offset - gap);

    private static string Level(double from, double to, Label label, double tick)
    {
        Box gap = label.Box;
        double y = label.Y;
        return Ink.Line(from, y, gap.X, y) + Ink.Line(gap.Right, y, to, y)
            + Ink.Line(from - tick, y + tick, from + tick, y - tick)
            + Ink.Line(to - tick, y + tick, to + tick, y - tick);
    }

    private static string Upright(double from, double to, Label label, double tick)
    {
        Box gap = label.Box;
        double x = label.X;
        return Ink.Line(x, from, x, gap.Y) + Ink.Line(x, gap.Bottom, x, to)
            + Ink.Line(x - tick, from + tick, x + tick, from - tick)
            + Ink.Line(x - tick, to + tick, x + tick, to - tick);
    }
}
