namespace PanelService.Drawing.Drafting;

/// <summary>
/// How the drawing lies on paper. The view box counts millimetres of the material; one millimetre of paper is
/// <see cref="Scale"/> of them. The whole never exceeds 186 × 245 mm, which both A4 and Letter hold with the
/// margins browsers and printers take.
/// </summary>
internal sealed record PaperFit
{
    public const double MostWidth = 186;
    public const double MostHeight = 245;
    public const double LeastWidth = 120;
    public const double Above = 11;
    public const double Left = 11;
    public const double Below = 6;
    public const double StripHeight = 19;

    /// <summary>Room to the right for cut numbers.</summary>
    public const double NarrowRight = 6;

    /// <summary>Room to the right for leader lines and what they lead to.</summary>
    public const double LeaderRight = 40;

    /// <summary>Millimetres of material in one of paper, 1 or more.</summary>
    public required double Scale { get; init; }

    /// <summary>The whole drawing.</summary>
    public required Box Page { get; init; }

    /// <summary>Where the key stands.</summary>
    public required Box Key { get; init; }

    /// <summary>Where the title strip stands.</summary>
    public required Box Strip { get; init; }

    /// <summary>Room for leaders on the right, in millimetres of material.</summary>
    public required Box Margin { get; init; }

    /// <summary>Finds the largest scale at which everything fits.</summary>
    /// <param name="outline">The material.</param>
    /// <param name="right">Room to the right, in millimetres of paper.</param>
    /// <param name="keyHeight">Height of the key on paper for a given width of it.</param>
    public static PaperFit For(Box outline, double right, Func<double, double> keyHeight)
    {
        double key = 0;
        double scale;
        double width;
        double grown;
        do
        {
            grown = key;
            double across = outline.Width / (MostWidth - Left - right);
            double down = outline.Height / (MostHeight - Above - Below - StripHeight - key);
            scale = Math.Max(1, Math.Max(across, down));
            width = Math.Clamp((outline.Width / scale) + Left + right, LeastWidth, MostWidth);

            // A smaller width wants a higher key, which wants a smaller width: the key only grows, so this ends.
            key = Math.Max(grown, keyHeight(width));
        }
        while (key > grown);
        return Lay(outline, right, scale, width, key);
    }

    private static PaperFit Lay(Box outline, double right, double scale, double width, double key)
    {
        double body = (outline.Width / scale) + Left + right;
        double x = -(Left + ((width - body) / 2)) * scale;
        double y = -Above * scale;
        double below = outline.Height + (Below * scale);
        double wide = width * scale;
        return new PaperFit
        {
            Scale = scale,
            Page = new Box(x, y, wide, below - y + ((key + StripHeight) * scale)),
            Key = new Box(x, below, wide, key * scale),
            Strip = new Box(x, below + (key * scale), wide, StripHeight * scale),
            Margin = new Box(outline.Width, 0, right * scale, outline.Height),
        };
    }
}
