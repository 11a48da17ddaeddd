using System.Collections.Immutable;

namespace PanelService.Cutting.Tests.Outside;

/// <summary>
/// Single sheets whose best value is published. gcut1 to gcut3: Beasley, Journal of the Operational Research Society
/// 36 (1985) 297-306; optima by Cintra, Miyazawa, Wakabayashi and Xavier, European Journal of Operational Research
/// 191 (2008), oriented and turned. A piece is worth its area and may be cut any number of times.
/// </summary>
public sealed class PublishedOptimaTests
{
    private static readonly (int Width, int Height)[] First =
        [(167, 184), (114, 118), (167, 152), (83, 140), (70, 86), (143, 166), (120, 160), (66, 148), (87, 141), (69, 165)];

    private static readonly (int Width, int Height)[] Second =
    [
        (120, 133), (135, 186), (86, 75), (103, 73), (66, 85), (135, 97), (91, 175), (131, 176), (71, 176), (153, 72),
        (87, 148), (168, 107), (118, 90), (140, 109), (132, 159), (152, 93), (135, 68), (121, 158), (68, 94), (155, 76),
    ];

    private static readonly (int Width, int Height)[] Third =
    [
        (66, 80), (164, 107), (64, 184), (121, 86), (163, 135), (85, 98), (81, 102), (103, 186), (152, 106), (176, 139),
        (111, 118), (69, 169), (146, 133), (112, 112), (133, 160), (63, 129), (163, 152), (110, 155), (96, 136), (92, 142),
        (84, 143), (119, 133), (71, 71), (146, 84), (93, 86), (89, 86), (101, 146), (172, 73), (73, 169), (99, 99),
    ];

    [Theory]
    [InlineData(1, 56460, 58136)]
    [InlineData(2, 60536, 60611)]
    [InlineData(3, 61036, 61626)]
    public void Best_value_of_a_published_sheet_is_the_published_one(int number, long oriented, long turned)
    {
        var sizes = number switch { 1 => First, 2 => Second, _ => Third };

        Assert.Equal((oriented, turned), (Best(sizes, Turning.Upright), Best(sizes, Turning.Either)));
    }

    [Theory]
    [InlineData(1, 58136)]
    [InlineData(2, 60611)]
    [InlineData(3, 61626)]
    public void Bound_of_a_published_sheet_comes_down_to_the_published_value_as_more_work_is_allowed(int number, long turned)
    {
        var sizes = number switch { 1 => First, 2 => Second, _ => Third };
        ImmutableArray<Piece> pieces = [.. sizes.Select(size => new Piece(size.Width, size.Height, int.MaxValue, [Turning.Either]))];
        ImmutableArray<int> values = [.. sizes.Select(size => size.Width * size.Height)];
        long[] bounds = [.. new long[] { 300, 3_000, 30_000, 30_000_000 }.Select(work => BestPattern.AtMost(250, 250, pieces, values, 0, work))];

        Assert.All(bounds, bound => Assert.InRange(bound, turned, turned * 3));
        Assert.True(bounds[0] > turned, "three hundred cuts cannot tell");
        Assert.Equal(turned, bounds[^1]);
    }

    /// <summary>
    /// Christofides and Whitlock, Operations Research 25 (1977), first problem: 244 is the best value of a 15 x 10
    /// sheet when every piece has a greatest number. The reference of these tests must find it too.
    /// </summary>
    [Fact]
    public void Best_value_of_the_first_problem_of_Christofides_and_Whitlock_is_the_published_one()
    {
        (int Width, int Height, int Value, int Most)[] given =
            [(8, 4, 66, 2), (3, 7, 35, 1), (8, 2, 24, 3), (3, 4, 17, 5), (3, 3, 11, 2), (3, 2, 8, 2), (2, 1, 2, 1)];
        Piece[] pieces = [.. given.Select(one => new Piece(one.Width, one.Height, one.Most, [Turning.Upright]))];
        int[] values = [.. given.Select(one => one.Value)];

        var (value, _, bound) = BestPattern.Bounded(15, 10, [.. pieces], [.. values], 0);

        Assert.Equal((244, 244, 244), (value, bound, BestByForce(15, 10, pieces, values, 0)));
    }

    [Fact]
    public void Best_value_within_limits_of_a_tiny_sheet_is_that_of_brute_force()
    {
        for (int seed = 0; seed < 300; seed++)
        {
            var random = new Random(seed);
            Piece[] pieces = [.. Enumerable.Range(0, random.Next(1, 5)).Select(_ => new Piece(
                random.Next(2, 9), random.Next(2, 9), random.Next(1, 4), [random.Next(2) == 0 ? Turning.Upright : Turning.Either]))];
            int[] values = [.. pieces.Select(_ => random.Next(0, 50))];
            int width = random.Next(5, 15), height = random.Next(5, 15), kerf = random.Next(0, 3);

            var (value, _, bound) = BestPattern.Bounded(width, height, [.. pieces], [.. values], kerf);

            long best = BestByForce(width, height, pieces, values, kerf);
            Assert.Equal((best, best), (value, bound));
        }
    }

    [Fact]
    public void Best_value_of_a_tiny_sheet_is_that_of_brute_force()
    {
        for (int seed = 0; seed < 300; seed++)
        {
            var random = new Random(seed);
            Piece[] pieces = [.. Enumerable.Range(0, random.Next(1, 5)).Select(_ => new Piece(
                random.Next(2, 9), random.Next(2, 9), int.MaxValue, [random.Next(2) == 0 ? Turning.Upright : Turning.Either]))];
            int[] values = [.. pieces.Select(_ => random.Next(0, 50))];
            int width = random.Next(5, 21), height = random.Next(5, 21), kerf = random.Next(0, 3);

            var (value, _) = BestPattern.Unlimited(width, height, [.. pieces], [.. values], kerf);

            Assert.Equal(BestWithoutLimits(width, height, pieces, values, kerf), value);
        }
    }

    private static long Best((int Width, int Height)[] sizes, Turning turning) => BestPattern.Unlimited(
        250, 250, [.. sizes.Select(size => new Piece(size.Width, size.Height, int.MaxValue, [turning]))], [.. sizes.Select(size => size.Width * size.Height)], 0).Value;

    private static long BestByForce(int width, int height, Piece[] pieces, int[] values, int kerf) =>
        new GuillotineBruteForce(pieces, 0, kerf).Sets(width, height).Max(set => values.Select((value, i) => (long)value * GuillotineBruteForce.Count(set, i)).Sum());

    // Every cut at every whole position.
    private static long BestWithoutLimits(int width, int height, Piece[] pieces, int[] values, int kerf)
    {
        var best = new long[width + 1, height + 1];
        for (int w = 1; w <= width; w++)
        {
            for (int h = 1; h <= height; h++)
            {
                for (int i = 0; i < pieces.Length; i++)
                {
                    bool fits = (pieces[i].Width <= w && pieces[i].Height <= h)
                        || (pieces[i].On[0] == Turning.Either && pieces[i].Height <= w && pieces[i].Width <= h);
                    best[w, h] = Math.Max(best[w, h], fits ? values[i] : 0);
                }

                for (int at = 1; at < w - kerf; at++)
                {
                    best[w, h] = Math.Max(best[w, h], best[at, h] + best[w - kerf - at, h]);
                }

                for (int at = 1; at < h - kerf; at++)
                {
                    best[w, h] = Math.Max(best[w, h], best[w, at] + best[w, h - kerf - at]);
                }
            }
        }

        return best[width, height];
    }
}
