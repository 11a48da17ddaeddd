using PanelService.Cutting;

namespace PanelService.Benchmarks.Suites;

/// <summary>Thirty formats in tenths of a millimetre, where the points of an exact programme are many.</summary>
public static class OddFormats
{
    /// <summary>Ten orders of 30 formats of 100.0 to 700.0 mm, 1 to 20 of each, from 1220 x 2440 mm, kerf 3.2 mm.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<CuttingCase> All(int draw)
    {
        for (int number = 0; number < 10; number++)
        {
            var random = Xorshift.Drawn(6_000 + number, draw);
            Piece[] pieces = [.. Enumerable.Range(0, 30).Select(_ => new Piece(
                random.Between(1000, 7000) * Inches.TenthOfMillimetre,
                random.Between(1000, 7000) * Inches.TenthOfMillimetre,
                random.Between(1, 20),
                [Turning.Either]))];
            Stock[] stocks = [new(12200 * Inches.TenthOfMillimetre, 24400 * Inches.TenthOfMillimetre, 1480, null)];
            yield return new CuttingCase(
                "all", $"odd-{number}", new CuttingProblem([.. stocks], [.. pieces], 32 * Inches.TenthOfMillimetre));
        }
    }
}
