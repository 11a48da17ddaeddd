using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Benchmarks.Suites;

/// <summary>Orders of cloth alone: mixed sales and remnants, and strips that come out with no waste at all.</summary>
public static class ClothOrders
{
    /// <summary>200 orders over five cloths, two by the roll and three by length, and 0 to 4 remnants.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<OrderCase> Mixed(int draw)
    {
        for (int number = 0; number < 200; number++)
        {
            var random = Xorshift.Drawn(7_000 + number, draw);
            var formats = random.Draw(Inches.Formats, random.Between(1, 8));
            PanelLine[] lines = [.. formats.Select((format, i) => new PanelLine
            {
                Mark = $"M{i}",
                Width = Length.FromInches(format.Width),
                Height = Length.FromInches(format.Height),
                Quantity = random.Between(1, 24),
                Surface = Surface.Loose,
            })];
            yield return new OrderCase("all", $"cloth-{number}", Order(lines, Cloths(random), new BenchSettings()), plan => plan.ClothProof) { IsCloth = true };
        }
    }

    /// <summary>100 strips, cut up at random from edge to edge into 20 to 60 pieces; sold by the inch.</summary>
    /// <param name="draw">Which draw: <see cref="Options.Draw"/>.</param>
    public static IEnumerable<OrderCase> Strips(int draw)
    {
        for (int number = 0; number < 100; number++)
        {
            var random = Xorshift.Drawn(8_000 + number, draw);
            int width = random.Pick<int>([54, 60, 72, 84]), length = random.Between(2 * width, 5 * width);
            var pieces = CutUp(random, width, length, random.Between(20, 60));
            PanelLine[] lines = [.. pieces.GroupBy(piece => piece).Select((group, i) => new PanelLine
            {
                Mark = $"M{i}",
                Width = Length.FromInches(group.Key.Width),
                Height = Length.FromInches(group.Key.Length),
                Quantity = group.Count(),
                Surface = Surface.Loose,
            })];
            var cloth = new ClothSupply
            {
                Id = "strip",
                Width = Length.FromInches(width),
                Sale = new SaleByLength(Length.FromInches(1), new Money(100), null),
            };
            var bench = new BenchSettings { MarginSides = Length.Zero, MarginEnds = Length.Zero };
            yield return new OrderCase("all", $"strip-{number}", Order(lines, [cloth], bench), plan => plan.ClothProof)
            {
                KnownPlan = length * 100,
                IsCloth = true,
            };
        }
    }

    private static Order Order(PanelLine[] lines, ClothSupply[] cloths, BenchSettings bench) => new()
    {
        Units = LengthUnit.Inch,
        Currency = new Currency("EUR", 2),
        Panels = [.. lines],
        Cloths = [.. cloths],
        Bench = bench,
        Effort = Effort.Steady,
    };

    private static ClothSupply[] Cloths(Xorshift random)
    {
        ClothSupply[] cloths =
        [
            Cloth("roll-54", 54, new SaleByRoll(Length.FromInches(216), new Money(9_600), null)),
            Cloth("roll-72", 72, new SaleByRoll(Length.FromInches(360), new Money(19_800), null)),
            Cloth("yard-62", 62, new SaleByLength(Length.FromInches(36), new Money(3_100), null)),
            Cloth("half-54", 54, new SaleByLength(Length.FromInches(18), new Money(1_450), null)),
            Cloth("quarter-84", 84, new SaleByLength(Length.FromInches(9), new Money(1_120), null)),
        ];
        for (int i = random.Between(0, 4); i > 0; i--)
        {
            int at = random.Between(0, cloths.Length - 1);
            var remnant = new Remnant(
                $"r{i}", Length.FromInches(random.Between(10, 50)), Length.FromInches(random.Between(10, 60)), 1, new Money(random.Between(0, 3) * 100));
            cloths[at] = cloths[at] with { Remnants = cloths[at].Remnants.Add(remnant) };
        }

        return cloths;
    }

    private static ClothSupply Cloth(string id, int width, ClothSale sale) => new()
    {
        Id = id,
        Width = Length.FromInches(width),
        Selvedge = Length.FromInches(0.5m),
        Sale = sale,
    };

    private static List<(int Width, int Length)> CutUp(Xorshift random, int width, int length, int wanted)
    {
        const int Least = 4;
        var pieces = new List<(int Width, int Length)> { (width, length) };
        while (pieces.Count < wanted)
        {
            var largest = pieces.Where(piece => Math.Max(piece.Width, piece.Length) >= 2 * Least).MaxBy(piece => piece.Width * piece.Length);
            pieces.Remove(largest);
            bool across = largest.Length < 2 * Least || (largest.Width >= 2 * Least && random.Between(0, 1) == 0);
            int first = random.Between(Least, (across ? largest.Width : largest.Length) - Least);
            pieces.Add(across ? (first, largest.Length) : (largest.Width, first));
            pieces.Add(across ? (largest.Width - first, largest.Length) : (largest.Width, largest.Length - first));
        }

        return pieces;
    }
}
