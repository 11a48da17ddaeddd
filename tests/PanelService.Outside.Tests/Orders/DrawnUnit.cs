using System.Text.Json.Nodes;

namespace PanelService.Outside.Tests.Orders;

/// <summary>What random orders are drawn from in one unit of length. Whole numbers are of that unit.</summary>
/// <param name="Name">As the wire names it.</param>
/// <param name="Formats">Panel formats, the smallest first.</param>
/// <param name="Sheets">Board sizes; the last takes every format.</param>
/// <param name="Thicknesses">A thin and a thick board, as texts with their unit.</param>
/// <param name="RollWidths">Cloth widths.</param>
/// <param name="RollLength">Length of a whole roll.</param>
/// <param name="Steps">Steps cloth is sold by.</param>
/// <param name="CoveredArea">An area a liquid's coverage is given for.</param>
/// <param name="CoverVolume">A small volume that goes with it.</param>
/// <param name="Bottle">A bottle.</param>
internal sealed record DrawnUnit(
    string Name,
    (int Width, int Height)[] Formats,
    (int Width, int Height)[] Sheets,
    string[] Thicknesses,
    int[] RollWidths,
    int RollLength,
    int[] Steps,
    int CoveredArea,
    decimal CoverVolume,
    decimal Bottle)
{
    private static readonly DrawnUnit Inch = new(
        "inch",
        [(4, 6), (5, 7), (6, 8), (8, 10), (9, 12), (11, 14), (12, 16), (16, 20), (18, 24), (20, 24), (12, 12), (24, 36)],
        [(24, 48), (48, 48), (48, 96)],
        ["1/8 in", "3/16 in"],
        [54, 60, 72],
        216,
        [9, 18, 36],
        80,
        0.1m,
        8m);

    private static readonly DrawnUnit Centimetre = new(
        "centimetre",
        [(12, 18), (18, 24), (22, 27), (24, 33), (33, 41), (38, 46), (46, 55), (50, 61), (54, 65), (60, 73), (30, 30), (65, 92)],
        [(61, 122), (122, 122), (122, 244)],
        ["3,2 mm", "5 mm"],
        [140, 160, 210],
        500,
        [10, 50, 100],
        10_000,
        50m,
        500m);

    /// <summary>Every unit.</summary>
    public static readonly IReadOnlyList<DrawnUnit> All =
    [
        Inch,
        Centimetre,
        Centimetre with
        {
            Name = "millimetre",
            Formats = Tenfold(Centimetre.Formats),
            Sheets = [(610, 1220), (1220, 1220), (1220, 2440)],
            RollWidths = [1400, 1600, 2100],
            RollLength = 5000,
            Steps = [100, 500, 1000],
        },
    ];

    private bool IsInch => Name == "inch";

    /// <summary>A length as text with a unit of its own.</summary>
    public JsonNode Text(int length) => Name switch
    {
        "inch" when length % 12 == 0 => FormattableString.Invariant($"{length / 12}' 0\""),
        "inch" => FormattableString.Invariant($"{length}\""),
        "centimetre" => FormattableString.Invariant($"{length * 10} mm"),
        _ => FormattableString.Invariant($"{length / 10},{length % 10} cm"),
    };

    /// <summary>A small length: so many eighths of an inch, or of 2 mm.</summary>
    public JsonNode Fine(int count) => IsInch
        ? FormattableString.Invariant($"{count}/8")
        : JsonValue.Create(count * 2m / (Name == "centimetre" ? 10 : 1));

    /// <summary>A length no format has: the whole number and a bit, on a grain an ordinary tape shows.</summary>
    public JsonNode Coarse(int whole) => IsInch
        ? FormattableString.Invariant($"{whole} {1 + (2 * (whole % 4))}/8")
        : JsonValue.Create(whole + ((whole % 4) * (Name == "centimetre" ? 0.1m : 1m)));

    private static (int Width, int Height)[] Tenfold((int Width, int Height)[] list) =>
        [.. list.Select(one => (one.Width * 10, one.Height * 10))];
}
