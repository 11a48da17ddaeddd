using System.Text.Json;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Suites;

/// <summary>
/// Published problems of fewest equal sheets, read from the data folder: two-dimensional packing (Berkey and Wang,
/// JORS 38, 1987; Martello and Vigo, Management Science 44, 1998) and cutting stock from a furniture plant (Macedo,
/// Alves and Valério de Carvalho, Computers &amp; OR 37, 2010). "OG": as given; "RG": turning allowed. No kerf.
/// </summary>
public static class PublishedSheets
{
    /// <summary>The packing problems; published bounds and plans beside them.</summary>
    /// <param name="folder">The data folder.</param>
    public static IEnumerable<CuttingCase> Packing(string? folder) => Read(folder, "packing250.json", (known) =>
        (known.GetProperty("ub").GetInt64(), known.GetProperty("lb").GetInt64()));

    /// <summary>The furniture problems; proven optima beside them where they are known.</summary>
    /// <param name="folder">The data folder.</param>
    public static IEnumerable<CuttingCase> Furniture(string? folder) => Read(folder, "furniture22.json", (known) =>
    {
        long? best = known.GetProperty("best") is { ValueKind: JsonValueKind.Number } number ? number.GetInt64() : null;
        return (best, known.GetProperty("proved").GetBoolean() ? best : null);
    });

    private static IEnumerable<CuttingCase> Read(
        string? folder, string file, Func<JsonElement, (long? Plan, long? Bound)> published)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder ?? ".", file)));
        foreach (var instance in document.RootElement.GetProperty("instances").EnumerateArray())
        {
            foreach (var (way, turning) in ((string, Turning)[])[("OG", Turning.Upright), ("RG", Turning.Either)])
            {
                if (instance.TryGetProperty(way, out var known))
                {
                    var (plan, bound) = published(known);
                    yield return new CuttingCase(way, $"{way} {instance.GetProperty("name").GetString()}", Problem(instance, turning))
                    {
                        KnownPlan = plan,
                        KnownBound = bound,
                    };
                }
            }
        }
    }

    private static CuttingProblem Problem(JsonElement instance, Turning turning)
    {
        var sheet = new Stock(instance.GetProperty("L").GetInt64(), instance.GetProperty("W").GetInt64(), 1, null);
        var pieces = instance.GetProperty("items").EnumerateArray().Select(item =>
            new Piece(item[0].GetInt64(), item[1].GetInt64(), item[2].GetInt32(), [turning]));
        return new CuttingProblem([sheet], [.. pieces], 0);
    }
}
