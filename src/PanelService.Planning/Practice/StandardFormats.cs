using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Practice;

/// <summary>The formats painters buy frames in, as data.</summary>
public static class StandardFormats
{
    private static readonly string _letters = "FPM";

    /// <summary>All series: inch, French, Japanese, metric, ISO.</summary>
    public static ImmutableArray<FormatSeries> All { get; } = [Inch(), French(), Japanese(), Metric(), Iso()];

    private static FormatSeries Inch() => new(
        "Inch", LengthUnit.Inch, SourceMark.CommonPractice, "common practice, no standard",
        Plain(LengthUnit.Inch, [
            (4, 6), (5, 7), (6, 8), (8, 10), (9, 12), (11, 14), (12, 16), (14, 18), (16, 20), (18, 24), (20, 24),
            (22, 28), (24, 30), (24, 36), (30, 40), (36, 48),
            (5, 5), (6, 6), (8, 8), (10, 10), (12, 12), (16, 16), (20, 20), (24, 24), (30, 30),
            (6, 12), (8, 16), (10, 20), (12, 24)]));

    private static FormatSeries Metric() => new(
        "Metric", LengthUnit.Centimetre, SourceMark.CommonPractice, "common practice",
        Plain(LengthUnit.Centimetre, [
            (18, 24), (20, 20), (20, 30), (24, 30), (30, 30), (30, 40), (40, 50), (50, 60), (50, 70), (60, 80), (70, 100)]));

    private static FormatSeries Iso() => new(
        "ISO", LengthUnit.Millimetre, SourceMark.Published, "ISO 216, series A",
        [
            .. new (string Name, int Width, int Height)[]
                {
                    ("A5", 148, 210), ("A4", 210, 297), ("A3", 297, 420), ("A2", 420, 594), ("A1", 594, 841),
                }
                .Select(format => Make(format.Name, format.Width, format.Height, LengthUnit.Millimetre)),
        ]);

    private static FormatSeries French() => new(
        "French", LengthUnit.Centimetre, SourceMark.Published,
        "the French standard series Figure, Paysage, Marine, as tabulated in public encyclopaedias",
        Numbered(LengthUnit.Centimetre, [
            ("0", 18, [14, 12, 10]), ("1", 22, [16, 14, 12]), ("2", 24, [19, 16, 14]), ("3", 27, [22, 19, 16]),
            ("4", 33, [24, 22, 19]), ("5", 35, [27, 24, 22]), ("6", 41, [33, 27, 24]), ("8", 46, [38, 33, 27]),
            ("10", 55, [46, 38, 33]), ("12", 61, [50, 46, 38]), ("15", 65, [54, 50, 46]), ("20", 73, [60, 54, 50]),
            ("25", 81, [65, 60, 54]), ("30", 92, [73, 65, 60]), ("40", 100, [81, 73, 65]), ("50", 116, [89, 81, 73]),
            ("60", 130, [97, 89, 81]), ("80", 146, [114, 97, 89]), ("100", 162, [130, 114, 97]), ("120", 195, [130, 114, 97])]));

    private static FormatSeries Japanese() => new(
        "Japanese", LengthUnit.Millimetre, SourceMark.Published, "a stretcher maker's published table; S is square",
        Numbered(LengthUnit.Millimetre, [
            ("0", 180, [140, 120, 100]), ("SM", 227, [158]), ("3", 273, [221, 191, 161]), ("4", 333, [242, 220, 191]),
            ("6", 409, [318, 273, 242]), ("8", 455, [379, 333, 273]), ("10", 530, [455, 409, 333]),
            ("12", 606, [500, 455, 409]), ("15", 652, [530, 500, 455]), ("20", 727, [606, 530, 500]),
            ("25", 803, [652, 606, 530]), ("30", 909, [727, 652, 606]), ("40", 1000, [803, 727, 652]),
            ("50", 1167, [909, 803, 727]), ("60", 1303, [970, 894, 803]), ("80", 1455, [1121, 970, 894]),
            ("100", 1621, [1303, 1121, 970]), ("120", 1939, [1303, 1121, 970])], withSquares: true));

    private static ImmutableArray<StandardFormat> Plain(LengthUnit unit, ReadOnlySpan<(int Width, int Height)> sizes)
    {
        var formats = ImmutableArray.CreateBuilder<StandardFormat>(sizes.Length);
        foreach (var (width, height) in sizes)
        {
            formats.Add(Make(string.Create(CultureInfo.InvariantCulture, $"{width} × {height}"), width, height, unit));
        }

        return formats.MoveToImmutable();
    }

    private static ImmutableArray<StandardFormat> Numbered(
        LengthUnit unit, ReadOnlySpan<(string Number, int Long, int[] Shorts)> rows, bool withSquares = false)
    {
        var formats = ImmutableArray.CreateBuilder<StandardFormat>();
        foreach (var (number, longSide, shorts) in rows)
        {
            formats.AddRange(Row(unit, number, longSide, shorts));
            if (withSquares && shorts.Length == _letters.Length)
            {
                formats.Add(Make(number + "S", longSide, longSide, unit));
            }
        }

        return formats.ToImmutable();
    }

    private static IEnumerable<StandardFormat> Row(LengthUnit unit, string number, int longSide, int[] shorts) =>
        shorts.Select((side, i) => Make(shorts.Length == 1 ? number : number + _letters[i], side, longSide, unit));

    private static StandardFormat Make(string name, int width, int height, LengthUnit unit) =>
        new(name, Length.From(width, unit), Length.From(height, unit));
}
