using CsCheck;
using PanelService.Cutting.Exact;

namespace PanelService.Cutting.Tests.Exact;

/// <summary>The cheapest counts of stocks against all counts looked through one by one.</summary>
public sealed class LeastCountsTests
{
    private const int Most = 4;

    private static readonly Gen<(long[] Prices, CountsNeed[] Needs, int[][] Excluded)> Problems =
        Gen.Int[1, 4].SelectMany(stocks => Gen.Select(
            Gen.Long[0, 9].Array[stocks],
            Gen.Select(Gen.Long[0, 6].Array[stocks], Gen.Long[1, 40], (worth, needed) => new CountsNeed(worth, needed)).Array[1, 4],
            Gen.Int[0, Most].Array[stocks].Array[0, 3]));

    [Fact]
    public void No_counts_that_are_enough_cost_less() => Problems.Sample(
        problem =>
        {
            int[] least = new int[problem.Prices.Length];
            int[] most = [.. least.Select(_ => Most)];
            Assert.True(LeastCounts.TryFind(problem.Prices, (least, most), problem.Needs, problem.Excluded, out int[]? found));
            long? cheapest = All(most).Where(counts => IsEnough(counts, problem.Needs, problem.Excluded))
                .Select(counts => (long?)Price(counts, problem.Prices)).Min();
            Assert.Equal(cheapest, found is null ? null : Price(found, problem.Prices));
            Assert.True(found is null || IsEnough(found, problem.Needs, problem.Excluded));
        },
        iter: 2_000,
        seed: "0N0XIzNsQ0O2");

    [Fact]
    public void The_least_of_a_stock_is_kept_to()
    {
        Assert.True(LeastCounts.TryFind([5, 3], ([2, 0], [4, 9]), [new CountsNeed([1, 1], 4)], [], out int[]? found));
        Assert.Equal([2, 2], found!);
    }

    [Fact]
    public void Of_counts_of_one_price_those_with_the_most_room_are_taken()
    {
        // 4 buys four of the first, two and one, or two of the second: worth 8, 9 and 10. 3 buys 7 at most.
        Assert.True(LeastCounts.TryFind([1, 2], ([0, 0], [9, 9]), [new CountsNeed([2, 5], 8)], [], out int[]? found));
        Assert.Equal([0, 2], found!);
    }

    [Fact]
    public void It_says_so_when_there_are_too_many_to_look_through()
    {
        long[] prices = [.. Enumerable.Range(0, 12).Select(s => 1_000L + s)];
        int[] most = [.. prices.Select(_ => 1_000)];
        CountsNeed[] needs = [new([.. prices.Select((_, s) => 997L + (s * 7 % 5))], 1_234_567)];
        Assert.False(LeastCounts.TryFind(prices, (new int[12], most), needs, [], out _));
    }

    private static IEnumerable<int[]> All(int[] most) => most.Aggregate(
        (IEnumerable<int[]>)[[]], (parts, limit) => parts.SelectMany(part => Enumerable.Range(0, limit + 1).Select(n => (int[])[.. part, n])));

    private static bool IsEnough(int[] counts, CountsNeed[] needs, int[][] excluded) =>
        needs.All(need => need.Worth.Zip(counts).Sum(pair => pair.First * pair.Second) >= need.Needed)
        && !excluded.Any(bad => bad.Zip(counts).All(pair => pair.Second <= pair.First));

    private static long Price(int[] counts, long[] prices) => counts.Zip(prices).Sum(pair => pair.First * pair.Second);
}
