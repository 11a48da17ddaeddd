using System.Collections.Immutable;
using PanelService.Cutting.Many;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Tests.Outside;

namespace PanelService.Cutting.Tests.Exact;

/// <summary>The best pattern within limits, against brute force and published optima.</summary>
public sealed class BoundedPatternTests
{
    [Fact]
    public void Best_value_of_a_tiny_sheet_within_limits_is_that_of_brute_force()
    {
        for (int seed = 0; seed < 500; seed++)
        {
            var random = new Random(seed);
            int kerf = random.Next(0, 3), width = random.Next(5, 15), height = random.Next(5, 15);
            Turning[] ways = [Turning.Upright, Turning.Turned, Turning.Either];
            Piece[] pieces = [.. Enumerable.Range(0, random.Next(1, 6)).Select(_ => new Piece(
                random.Next(1, 9), random.Next(1, 9), random.Next(1, 4), [ways[random.Next(3)]]))];
            int[] values = [.. pieces.Select(_ => random.Next(0, 40))];

            var (value, block, bound) = BestPattern.Bounded(width, height, [.. pieces], [.. values], kerf);

            long best = new GuillotineBruteForce(pieces, 0, kerf).Sets(width, height)
                .Max(set => values.Select((v, i) => (long)v * GuillotineBruteForce.Count(set, i)).Sum());
            Assert.Equal((seed, best, best), (seed, value, bound));
            CheckBlock(block, width, height, pieces, values, kerf, value);
        }
    }

    /// <summary>
    /// Christofides and Whitlock, Operations Research 25 (1977), first problem, and the problems CHL5 and Hchl8s of the
    /// published set; optima as in Furini, Malaguti and Thomopulos, INFORMS Journal on Computing 28 (2016).
    /// </summary>
    [Fact]
    public void Best_value_within_limits_of_a_published_sheet_is_the_published_one()
    {
        (int Width, int Height, int Value, int Most)[] first =
            [(8, 4, 66, 2), (3, 7, 35, 1), (8, 2, 24, 3), (3, 4, 17, 5), (3, 3, 11, 2), (3, 2, 8, 2), (2, 1, 2, 1)];
        (int Width, int Height, int Value, int Most)[] second =
        [
            (14, 2, 28, 1), (1, 5, 5, 1), (20, 4, 80, 2), (12, 3, 36, 3), (11, 8, 88, 2), (11, 6, 66, 2), (7, 9, 63, 1),
            (17, 5, 85, 1), (7, 14, 98, 2), (1, 7, 7, 3),
        ];

        Assert.Equal((244, 244), Best(15, 10, first));
        Assert.Equal((390, 390), Best(20, 20, second));
        Assert.Equal((911, 911), Best(49, 20, second));
    }

    [Fact]
    public void A_sheet_nothing_fits_is_worth_nothing() =>
        Assert.Equal((0L, null, 0L), BestPattern.Bounded(3, 3, [new Piece(4, 1, 1, [Turning.Upright])], [7], 0));

    [Fact]
    public void A_stopped_search_still_gives_a_true_bound()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        var (value, _, bound) = BestPattern.Bounded(
            20, 20, [new Piece(7, 9, 1, [Turning.Either]), new Piece(8, 5, 2, [Turning.Either])], [63, 40], 0, Effort.Quick, source.Token);

        Assert.InRange(143, value, bound);
    }

    private static (long Value, long Bound) Best(int width, int height, (int Width, int Height, int Value, int Most)[] given)
    {
        Piece[] pieces = [.. given.Select(one => new Piece(one.Width, one.Height, one.Most, [Turning.Upright]))];
        int[] values = [.. given.Select(one => one.Value)];
        var (value, block, bound) = BestPattern.Bounded(width, height, [.. pieces], [.. values], 0);
        CheckBlock(block, width, height, pieces, values, 0, value);
        return (value, bound);
    }

    private static void CheckBlock(Block? block, int width, int height, Piece[] pieces, int[] values, int kerf, long value)
    {
        int[] counts = new int[pieces.Length];
        void Count(Block part)
        {
            if (part is PieceBlock piece)
            {
                counts[piece.Piece]++;
                Assert.True(pieces[piece.Piece].On[0].HasFlag(piece.Turned ? Turning.Turned : Turning.Upright));
                return;
            }

            foreach (var inner in ((StackBlock)part).Parts)
            {
                Count(inner);
            }
        }

        if (block is not null)
        {
            Count(block);
            var (needsWidth, needsHeight) = SheetCutter.SizeOf(block, [.. pieces.Select(p => (p.Width, p.Height))], kerf);
            Assert.True(needsWidth <= width && needsHeight <= height);
        }

        Assert.All(counts, (count, i) => Assert.True(count <= pieces[i].Demand));
        Assert.Equal(value, counts.Select((count, i) => (long)count * values[i]).Sum());
    }

    [Fact]
    public void Odd_sizes_with_tens_of_thousands_of_sums_are_cut_and_bounded_in_little_memory()
    {
        var random = new SeededRandom(3);
        ImmutableArray<Piece> pieces =
            [.. Enumerable.Range(0, 60).Select(_ => new Piece(501 + random.Below(4000), 501 + random.Below(4000), 1000, [Turning.Either]))];
        ImmutableArray<int> values = [.. pieces.Select(piece => (int)(piece.Width * piece.Height / 1000))];
        long before = GC.GetAllocatedBytesForCurrentThread();

        var (value, block, bound) = BestPattern.Bounded(12_231, 24_431, pieces, values, kerf: 32, Effort.Quick);

        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        var size = BlockMath.Size(block!, [.. pieces.Select(piece => (piece.Width, piece.Height))], kerf: 32);
        Assert.InRange(size.Width, 1, 12_231);
        Assert.InRange(size.Height, 1, 24_431);
        Assert.Equal(value, BlockMath.Counts(block!, pieces.Length).Zip(values).Sum(pair => (long)pair.First * pair.Second));
        Assert.InRange(bound, value, (12_231 + 32) * (24_431 + 32) / 1000);
        Assert.True(value > bound * 0.8, $"{value} of {bound}");
        Assert.True(allocated < 500_000_000, $"{allocated} bytes");
    }
}
