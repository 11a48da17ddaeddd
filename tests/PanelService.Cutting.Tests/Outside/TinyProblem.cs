namespace PanelService.Cutting.Tests.Outside;

/// <summary>Problems small enough for every reference: a few pieces, one to three small stocks, some limited, some
/// on hand, drawn from a seed.</summary>
internal static class TinyProblem
{
    /// <summary>The problem of a seed: always the same.</summary>
    public static CuttingProblem Of(int seed)
    {
        var random = new Random(seed);
        Stock[] stocks = [.. Enumerable.Range(0, random.Next(1, 4)).Select(i => new Stock(
            random.Next(6, 13), random.Next(6, 13), random.Next(0, 21), i > 0 && random.Next(3) == 0 ? random.Next(1, 3) : null))];
        for (int i = 1; i < stocks.Length; i++)
        {
            // On hand: one or two, at little or nothing.
            stocks[i] = random.Next(3) == 0 ? stocks[i] with { Price = random.Next(0, 3), Limit = random.Next(1, 3) } : stocks[i];
        }

        stocks[0] = stocks[0] with { Width = 12, Price = random.Next(5, 21), Limit = seed % 10 == 0 ? 2 : null };
        var pieces = new List<Piece>();
        int left = random.Next(1, 7);
        while (left > 0)
        {
            int demand = random.Next(1, Math.Min(3, left) + 1);
            var ways = stocks.Select((_, i) => i == 0 || random.Next(5) > 0 ? Ways(random) : Turning.None);
            pieces.Add(new Piece(random.Next(2, 10), random.Next(2, 7), demand, [.. ways]));
            left -= demand;
        }

        return new CuttingProblem([.. stocks], [.. pieces], random.Next(0, 2));
    }

    private static Turning Ways(Random random) => random.Next(4) == 0 ? Turning.Upright : Turning.Either;
}
