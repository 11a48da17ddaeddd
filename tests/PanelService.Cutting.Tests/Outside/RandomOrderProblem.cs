namespace PanelService.Cutting.Tests.Outside;

/// <summary>Small orders of inch formats from sheets of several sizes and prices, with offcuts on hand and limits.</summary>
internal static class RandomOrderProblem
{
    private static readonly (int Width, int Height)[] Formats =
        [(4, 6), (5, 7), (6, 8), (8, 10), (9, 12), (11, 14), (12, 12), (12, 16), (14, 18), (16, 20), (18, 24)];

    private static readonly (int Width, int Height, int Price)[] Sheets = [(24, 24, 340), (24, 48, 610), (48, 48, 1090), (30, 40, 700)];

    /// <summary>The problem of a seed: always the same. In eighths of an inch.</summary>
    public static CuttingProblem Of(int seed)
    {
        var random = new Random(seed);
        var stocks = Sheets.OrderBy(_ => random.Next()).Take(random.Next(1, 4))
            .Select((sheet, i) => new Stock(sheet.Width * 8, sheet.Height * 8, sheet.Price, i > 0 && random.Next(4) == 0 ? random.Next(1, 4) : null))
            .ToList();
        for (int i = random.Next(0, 3); i > 0; i--)
        {
            stocks.Add(new Stock(random.Next(48, 192), random.Next(64, 320), 0, random.Next(1, 3)));
        }

        int most = seed % 2 == 0 ? 3 : 25;
        var pieces = Formats.OrderBy(_ => random.Next()).Take(random.Next(1, 6)).Select(format => new Piece(
            format.Width * 8, format.Height * 8, random.Next(1, most + 1), [.. stocks.Select((_, i) => Way(random, i))]));
        return new CuttingProblem([.. stocks], [.. pieces], 1);
    }

    private static Turning Way(Random random, int stock) =>
        stock > 0 && random.Next(8) == 0 ? Turning.None : random.Next(6) == 0 ? Turning.Upright : Turning.Either;
}
