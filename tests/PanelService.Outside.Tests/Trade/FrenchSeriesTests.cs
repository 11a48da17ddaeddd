using System.Text.Json;
using PanelService.Outside.Tests.Orders;

namespace PanelService.Outside.Tests.Trade;

/// <summary>
/// The French standard series, centimetres: long side by short side of Figure, Paysage and Marine, as tabulated in
/// public encyclopaedias; typed in here once more, by number.
/// </summary>
public sealed class FrenchSeriesTests(Service service) : IClassFixture<Service>
{
    private const string Table = """
        0 18 14 12 10 | 1 22 16 14 12 | 2 24 19 16 14 | 3 27 22 19 16 | 4 33 24 22 19 | 5 35 27 24 22 | 6 41 33 27 24 |
        8 46 38 33 27 | 10 55 46 38 33 | 12 61 50 46 38 | 15 65 54 50 46 | 20 73 60 54 50 | 25 81 65 60 54 |
        30 92 73 65 60 | 40 100 81 73 65 | 50 116 89 81 73 | 60 130 97 89 81 | 80 146 114 97 89 |
        100 162 130 114 97 | 120 195 130 114 97
        """;

    [Fact]
    public async Task French_series_of_the_service_is_the_published_table()
    {
        using var all = JsonDocument.Parse(await service.Get("/api/formats"));
        var french = all.RootElement.EnumerateArray().Single(series => series.GetProperty("name").GetString() == "French");

        Assert.Equal("centimetre", french.GetProperty("units").GetString());
        Assert.Equal(
            Published().Order(StringComparer.Ordinal),
            french.GetProperty("formats").EnumerateArray().Select(Told).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Published() =>
        from row in Table.Split('|')
        let numbers = row.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)
        from letter in Enumerable.Range(0, 3)
        select $"{numbers[0]}{"FPM"[letter]} {numbers[2 + letter]} x {numbers[1]}";

    private static string Told(JsonElement format) => FormattableString.Invariant(
        $"{format.GetProperty("name").GetString()} {format.GetProperty("width").GetDecimal():0.######} x {format.GetProperty("height").GetDecimal():0.######}");
}
