using System.Numerics;
using CsCheck;
using PanelService.Planning.Costing;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Tests.Costing;

public sealed class LargestRemainderTests
{
    private static readonly Gen<(long Total, int[] Weights)> _cases =
        Gen.Select(Gen.Long[0, 1_000_000], Gen.Int[0, 1000].Array[1, 12]).Where(c => c.Item2.Sum() > 0);

    [Fact]
    public void Share_of_any_amount_adds_up_exactly() => _cases.Sample(c =>
        Parts(c).Sum() == c.Total);

    [Fact]
    public void Share_of_any_amount_is_off_the_exact_share_by_less_than_one_unit() => _cases.Sample(c =>
        Parts(c).Zip(c.Weights).All(p => Math.Abs(p.First - ((decimal)c.Total * p.Second / c.Weights.Sum())) < 1));

    [Fact]
    public void Share_gives_nothing_to_a_weight_of_zero() => _cases.Sample(c =>
        Parts(c).Zip(c.Weights).All(p => p.Second > 0 || p.First == 0));

    [Fact]
    public void Share_of_equal_remainders_serves_the_first_first() =>
        Assert.Equal([34, 33, 33], Parts((100, [1, 1, 1])));

    [Fact]
    public void Share_without_weights_refuses_an_amount() =>
        Assert.Throws<ArgumentException>(() => LargestRemainder.Share(new Money(1), [BigInteger.Zero]));

    private static long[] Parts((long Total, int[] Weights) c) =>
        [.. LargestRemainder.Share(new Money(c.Total), [.. c.Weights.Select(w => (BigInteger)w)]).Select(m => m.Minor)];
}
