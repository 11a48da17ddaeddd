using PanelService.Planning.Curves;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Curves;

/// <summary>From where on the roll beats cloth by length.</summary>
public sealed class BatchCurveTests
{
    // 9 x 11 in cloths one after another along the warp. Four take 44 in, four steps of 12 in at 10.00; the roll of 72 in at 35.00 holds six.
    private static readonly ClothSupply _yard = new()
    {
        Id = "yard",
        Width = Inches(11),
        Warp = Grain.Height,
        Sale = new SaleByLength(Inches(12), new Money(1000), AtMost: null),
    };

    private static readonly ClothSupply _roll = _yard with { Id = "roll", Sale = new SaleByRoll(Inches(72), new Money(3500), ForSale: null) };

    [Theory]
    [InlineData(null, null, null, 4)]
    [InlineData("linen", "linen", "linen", 4)]
    [InlineData(null, "linen", "cotton", 4)]
    [InlineData("linen", "linen", "cotton", null)]
    [InlineData("cotton", "linen", "cotton", null)]
    [InlineData("cotton", null, "cotton", null)]
    public void Roll_beats_cloth_by_length_only_where_a_line_may_have_either(string? asked, string? yard, string? roll, int? from) =>
        Assert.Equal(from, CurveOf(asked, _yard with { Kind = yard }, _roll with { Kind = roll }).RollFrom?.Times);

    [Fact]
    public void Roll_of_another_kind_that_is_always_bought_does_not_count()
    {
        // Cotton comes on the roll only; of linen the roll is dearer than any length that is wanted here.
        var cotton = _roll with { Id = "cotton", Kind = "cotton" };

        var curve = CurveOf(["linen", "cotton"], _yard with { Kind = "linen" }, _roll with { Kind = "linen", Sale = new SaleByRoll(Inches(72), new Money(350_000), ForSale: null) }, cotton);

        Assert.All(curve.Points, point => Assert.True(point.BuysRollOf("cotton")));
        Assert.Null(curve.RollFrom);
    }

    private static BatchCurve CurveOf(string? asked, params ClothSupply[] cloths) => CurveOf([asked], cloths);

    private static BatchCurve CurveOf(string?[] asked, params ClothSupply[] cloths)
    {
        Order At(int times) => OrderOf([.. asked.Select((kind, i) => Line(((char)('A' + i)).ToString(), 8, 10, times) with { Surface = Surface.Loose, Cloth = kind })]) with { Cloths = [.. cloths] };
        return new BatchCurve(At(1), [.. Enumerable.Range(1, 6).Select(times => CurvePoint.Of(Planned(At(times)), times))], EndsBecause: null);
    }
}
