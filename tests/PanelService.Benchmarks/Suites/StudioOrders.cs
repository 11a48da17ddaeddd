using PanelService.Cutting;

namespace PanelService.Benchmarks.Suites;

/// <summary>Orders as a studio writes them: standard inch formats, kerf 1/8 in.</summary>
public static class StudioOrders
{
    private static readonly (int Width, int Height, int Price)[] Sheets = [(24, 48, 610), (48, 48, 1090), (48, 96, 1980)];

    // Two thicknesses, three sizes: thin boards serve what is smaller than 16 x 20 in, thick ones serve everything.
    private static readonly (int Width, int Height, int Price, bool Thick)[] Boards =
    [
        (24, 48, 610, false), (48, 48, 1120, false), (48, 96, 2050, false), (24, 48, 940, true), (48, 96, 3180, true),
    ];

    /// <summary>500 orders of 1 to 12 formats, 1 to 40 of each, from sheets of one size.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<CuttingCase> OneSheetSize(int draw)
    {
        for (int number = 0; number < 500; number++)
        {
            var random = Xorshift.Drawn(1_000 + number, draw);
            var sheet = random.Pick(Sheets);
            var formats = random.Draw(
                [.. Inches.Formats.Where(f => Inches.Fits(f, (sheet.Width, sheet.Height)))], random.Between(1, 12));
            Stock[] stocks = [Sheet(sheet.Width, sheet.Height, sheet.Price)];
            Piece[] pieces =
                [.. formats.Select(f => Panel(f, random.Between(1, 40), [Turning.Either]))];
            yield return new CuttingCase(
                $"{sheet.Width}x{sheet.Height}", $"studio-{number}", new CuttingProblem([.. stocks], [.. pieces], Inches.Eighth));
        }
    }

    /// <summary>100 of these orders on sheets of which the fence reaches a third, the longer way.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<CuttingCase> LimitedFence(int draw) => OneSheetSize(draw).Take(100).Select(one => one with
    {
        Name = one.Name.Replace("studio", "fence", StringComparison.Ordinal),
        Problem = one.Problem with { FenceReach = one.Problem.Stocks.Max(stock => Math.Max(stock.Width, stock.Height)) / 3 },
    });

    /// <summary>500 orders from five boards of two thicknesses and three sizes and 1 to 4 offcuts on hand at no cost.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<CuttingCase> MixedBoards(int draw)
    {
        for (int number = 0; number < 500; number++)
        {
            var random = Xorshift.Drawn(2_000 + number, draw);
            var formats = random.Draw(Inches.Formats, random.Between(1, 12));
            int[] demands = [.. formats.Select(_ => random.Between(1, 40))];
            yield return new CuttingCase("all", $"mixed-{number}", Mixed(random, formats, demands, random.Between(1, 4)));
        }
    }

    /// <summary>300 orders of 1 to 12 pieces in all, from 2 to 4 sheet sizes.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<CuttingCase> Small(int draw)
    {
        (int Width, int Height, int Price)[] sizes = [(24, 24, 340), (24, 48, 610), (48, 48, 1090), (48, 96, 1980)];
        for (int number = 0; number < 300; number++)
        {
            var random = Xorshift.Drawn(3_000 + number, draw);
            var sheets = random.Draw(sizes, random.Between(2, 4));
            var fitting = Inches.Formats.Where(f => sheets.Any(s => Inches.Fits(f, (s.Width, s.Height)))).ToArray();
            var drawn = Enumerable.Range(0, random.Between(1, 12)).Select(_ => random.Pick(fitting)).ToArray();
            var pieces = drawn.GroupBy(f => f).Select(
                group => Panel(group.Key, group.Count(), [.. Enumerable.Repeat(Turning.Either, sheets.Length)]));
            yield return new CuttingCase(
                "all",
                $"small-{number}",
                new CuttingProblem([.. sheets.Select(s => Sheet(s.Width, s.Height, s.Price))], [.. pieces], Inches.Eighth));
        }
    }

    /// <summary>Ten formats, 10 to 100,000 panels, five boards; five orders of each size.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<CuttingCase> Large(int draw)
    {
        foreach (int panels in (int[])[10, 100, 1_000, 10_000, 100_000])
        {
            for (int number = 0; number < 5; number++)
            {
                var random = Xorshift.Drawn(4_000 + number, draw);
                var formats = random.Draw(Inches.Formats, 10);
                int[] weights = [.. formats.Select(_ => random.Between(1, 9))];
                int[] demands = [.. weights.Select(w => Math.Max(1, (int)((long)panels * w / weights.Sum())))];
                yield return new CuttingCase($"{panels} panels", $"large-{panels}-{number}", Mixed(random, formats, demands, 0));
            }
        }
    }

    private static CuttingProblem Mixed(
        Xorshift random, IReadOnlyList<(int Width, int Height)> formats, IReadOnlyList<int> demands, int offcuts)
    {
        List<(Stock Stock, bool Thick)> stocks = [.. Boards.Select(b => (Sheet(b.Width, b.Height, b.Price), b.Thick))];
        for (int i = 0; i < offcuts; i++)
        {
            long width = Inches.Eighth * random.Between(6 * 8, 24 * 8), height = Inches.Eighth * random.Between(8 * 8, 40 * 8);
            stocks.Add((new Stock(width, height, 0, 1), random.Between(0, 1) == 1));
        }

        var pieces = formats.Zip(demands, (format, demand) => Panel(
            format, demand, [.. stocks.Select(s => s.Thick || IsThin(format) ? Turning.Either : Turning.None)]));
        return new CuttingProblem([.. stocks.Select(s => s.Stock)], [.. pieces], Inches.Eighth);
    }

    // Common practice: 1/8 in board for a panel that fits inside 16 x 20 in and is smaller than it.
    private static bool IsThin((int Width, int Height) format) =>
        Inches.Fits(format, (16, 20)) && format is not ((16, 20) or (20, 16));

    private static Stock Sheet(int width, int height, int price) => new(width * Inches.One, height * Inches.One, price, null);

    private static Piece Panel((int Width, int Height) format, int demand, Turning[] on) =>
        new(format.Width * Inches.One, format.Height * Inches.One, demand, [.. on]);
}
