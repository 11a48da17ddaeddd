using System.Collections.Immutable;
using System.Text.Json;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Suites;

/// <summary>
/// Published best values of one sheet, read from the data folder: Beasley's unconstrained problems (JORS 36, 1985;
/// optima by Cintra et al., EJOR 191, 2008), as given and with turning.
/// </summary>
public static class PublishedValues
{
    // The data file says 22503 for okp2. With these pieces that cannot be: a constraint model that lets pieces lie
    // anyhow, without the guillotine rule, is proven to have no solution worth 22503 or more (CP-SAT, 260 s), and 22502
    // is the optimum without the rule in Fekete, Schepers and van der Veen, Operations Research 55 (2007; from memory).
    private const long FreeOptimumOfOkp2 = 22502;

    /// <summary>The unconstrained problems, both ways.</summary>
    /// <param name="folder">The data folder.</param>
    public static IEnumerable<ValueCase> Unconstrained(string? folder)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder ?? ".", "gcut.json")));
        foreach (var instance in document.RootElement.GetProperty("instances").EnumerateArray())
        {
            string name = instance.GetProperty("name").GetString()!;
            yield return Case(instance, $"OG {name}", Turning.Upright, instance.GetProperty("opt_oriented").GetInt64());
            yield return Case(instance, $"RG {name}", Turning.Either, instance.GetProperty("opt_rotated").GetInt64());
        }
    }

    private static ValueCase Case(JsonElement instance, string name, Turning turning, long optimum)
    {
        long width = instance.GetProperty("L").GetInt64(), height = instance.GetProperty("W").GetInt64();
        ImmutableArray<Piece> pieces = [.. instance.GetProperty("items").EnumerateArray().Select(item =>
            new Piece(item[0].GetInt64(), item[1].GetInt64(), int.MaxValue, [turning]))];
        ImmutableArray<int> values = [.. instance.GetProperty("items").EnumerateArray().Select(item => item[2].GetInt32())];
        string group = name.EndsWith("gcut13", StringComparison.Ordinal) ? "gcut13" : "gcut1-12";
        return new ValueCase(
            group,
            name,
            optimum,
            () =>
            {
                long value = BestPattern.Unlimited(width, height, pieces, values, 0).Value;
                return (value, value);
            },
            Sheet(width, height, pieces),
            values);
    }

    private static CuttingProblem Sheet(long width, long height, ImmutableArray<Piece> pieces) =>
        new([new Stock(width, height, 1, 1)], pieces, 0);

    /// <summary>
    /// The bounded problems: no piece more often than given, oriented. Optima: Furini, Malaguti and Thomopulos,
    /// INFORMS Journal on Computing 28 (2016); for okp2 see below.
    /// </summary>
    /// <param name="folder">The data folder.</param>
    public static IEnumerable<ValueCase> Constrained(string? folder)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder ?? ".", "knapsack59.json")));
        foreach (var instance in document.RootElement.GetProperty("instances").EnumerateArray())
        {
            long width = instance.GetProperty("L").GetInt64(), height = instance.GetProperty("W").GetInt64();
            var items = instance.GetProperty("items").EnumerateArray().ToArray();
            ImmutableArray<Piece> pieces = [.. items.Select(item =>
                new Piece(item[0].GetInt64(), item[1].GetInt64(), item[3].GetInt32(), [Turning.Upright]))];

            // A value of 0 stands for the piece's area.
            ImmutableArray<int> values = [.. items.Select(item =>
                item[2].GetInt32() is > 0 and var value ? value : item[0].GetInt32() * item[1].GetInt32())];
            string name = instance.GetProperty("name").GetString()!;
            yield return new ValueCase(
                "all",
                name,
                name == "okp2" ? FreeOptimumOfOkp2 : instance.GetProperty("opt_oriented").GetInt64(),
                () =>
                {
                    var (value, _, bound) = BestPattern.Bounded(width, height, pieces, values, 0);
                    return (value, bound);
                },
                Sheet(width, height, pieces),
                values);
        }
    }
}
