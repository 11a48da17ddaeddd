using PanelService.Cutting;

namespace PanelService.Benchmarks.Suites;

/// <summary>Sheets cut up at random from edge to edge, to be put together again: only the kerf is wasted.</summary>
public static class Jigsaws
{
    private const int LeastSide = 3 * 8;
    private const int Price = 610;

    /// <summary>100 jigsaws of 1 to 4 sheets of 24 x 48 in, each in 6 to 12 pieces, kerf 1/8 in.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<CuttingCase> All(int draw)
    {
        for (int number = 0; number < 100; number++)
        {
            var random = Xorshift.Drawn(5_000 + number, draw);
            int sheets = 1 + (number % 4);
            var pieces = Enumerable.Range(0, sheets).SelectMany(_ => CutUp(random)).ToArray();
            var problem = new CuttingProblem(
                [new Stock(24 * Inches.One, 48 * Inches.One, Price, null)],
                [.. pieces.GroupBy(p => p).Select(g => new Piece(
                    g.Key.Width * Inches.Eighth, g.Key.Height * Inches.Eighth, g.Count(), [Turning.Either]))],
                Inches.Eighth);
            yield return new CuttingCase($"{sheets} sheets", $"jigsaw-{number}", problem)
            {
                KnownPlan = sheets * Price,
            };
        }
    }

    // Sides in eighths of an inch. The largest piece that can still be parted is parted next.
    private static List<(int Width, int Height)> CutUp(Xorshift random)
    {
        var pieces = new List<(int Width, int Height)> { (24 * 8, 48 * 8) };
        int wanted = random.Between(6, 12);
        while (pieces.Count < wanted)
        {
            var largest = pieces.Where(p => CanPart(p.Width) || CanPart(p.Height)).MaxBy(p => p.Width * p.Height);
            pieces.Remove(largest);
            bool acrossX = CanPart(largest.Width) && (!CanPart(largest.Height) || random.Between(0, 1) == 0);
            int side = acrossX ? largest.Width : largest.Height;
            int first = random.Between(LeastSide, side - 1 - LeastSide);
            int second = side - 1 - first;
            pieces.Add(acrossX ? (first, largest.Height) : (largest.Width, first));
            pieces.Add(acrossX ? (second, largest.Height) : (largest.Width, second));
        }

        return pieces;
    }

    private static bool CanPart(int side) => side >= (2 * LeastSide) + 1;
}
