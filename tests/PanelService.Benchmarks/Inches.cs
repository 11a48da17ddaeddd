namespace PanelService.Benchmarks;

/// <summary>Lengths of the drawn suites, in the steps of 3.125 µm that the service itself plans in.</summary>
public static class Inches
{
    /// <summary>Steps of 1/8 in.</summary>
    public const long Eighth = 1016;

    /// <summary>Steps of 1 in.</summary>
    public const long One = 8 * Eighth;

    /// <summary>Steps of 0.1 mm.</summary>
    public const long TenthOfMillimetre = 32;

    /// <summary>Painters' formats, inches (common practice; no standard): width by height.</summary>
    public static readonly IReadOnlyList<(int Width, int Height)> Formats =
    [
        (4, 6), (5, 7), (6, 8), (8, 10), (9, 12), (11, 14), (12, 16), (14, 18), (16, 20), (18, 24), (20, 24),
        (22, 28), (24, 30), (24, 36), (5, 5), (6, 6), (8, 8), (10, 10), (12, 12), (16, 16), (20, 20), (24, 24),
        (6, 12), (8, 16), (10, 20), (12, 24),
    ];

    /// <summary>Whether a format fits inside a sheet, either way round.</summary>
    public static bool Fits((int Width, int Height) format, (int Width, int Height) sheet) =>
        (format.Width <= sheet.Width && format.Height <= sheet.Height)
        || (format.Height <= sheet.Width && format.Width <= sheet.Height);
}
