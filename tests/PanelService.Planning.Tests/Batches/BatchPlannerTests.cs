using System.Collections.Immutable;
using CsCheck;
using PanelService.Planning.Batches;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Batches;

public sealed class BatchPlannerTests
{
    [Fact]
    public void Plan_buys_the_eleventh_panel_rather_than_a_second_sheet()
    {
        var plan = Planned(OrderOf(Line("A", 8, 10, 11) with { MayBuy = true, ShopPrice = new Money(200) }));
        Assert.Equal((10, 1), (plan.Panels[0].Made, plan.Panels[0].Bought));
        Assert.Equal(new Proof(new Money(810), new Money(810)), plan.Proof);
    }

    [Fact]
    public void Plan_makes_what_the_shop_sells_too_dear()
    {
        var plan = Planned(OrderOf(Line("A", 8, 10, 11) with { MayBuy = true, ShopPrice = new Money(700) }));
        Assert.Equal((11, 0), (plan.Panels[0].Made, plan.Panels[0].Bought));
    }

    [Fact]
    public void Plan_counts_cloth_and_glue_when_it_buys()
    {
        // One sheet, one step of cloth and one bottle are 6.10 + 31.00 + 7.90 for two panels; the shop asks 20.00 for both.
        var plan = Planned(OrderOf(Line("A", 8, 10, 2) with { Surface = Surface.Cloth, MayBuy = true, ShopPrice = new Money(1000) }));
        Assert.Equal(2, plan.Panels[0].Bought);
        Assert.Equal(2000, plan.Proof.Spent.Minor);
    }

    [Fact]
    public void Plan_is_never_dearer_than_with_nothing_bought_and_never_below_its_bound() => Gen
        .Select(Gen.Int[4, 14], Gen.Int[4, 18], Gen.Int[1, 8], Gen.Int[50, 900]).Array[1, 3].Sample(
        lines =>
        {
            var order = OrderOf([.. lines.Select((l, i) => Line($"L{i}", l.Item1, l.Item2, l.Item3) with { ShopPrice = new Money(l.Item4) })]);
            var made = Planned(order);
            var mayBuy = Planned(order with { Panels = [.. order.Panels.Select(line => line with { MayBuy = true })] });
            Assert.True(mayBuy.Proof.Spent <= made.Proof.Spent);
            Assert.True(mayBuy.Proof.LeastPossible <= mayBuy.Proof.Spent);
            Assert.Equal(mayBuy.Proof.Spent, mayBuy.Cost.Cash);
            Assert.All(mayBuy.Panels, panel => Assert.Equal(panel.Line.Wanted, panel.Made + panel.Bought));
        },
        iter: 20);

    [Fact]
    public void Bound_is_never_above_any_decision_what_to_buy() => Gen
        .Select(Gen.Int[4, 14], Gen.Int[4, 18], Gen.Int[1, 3], Gen.Int[100, 2500], Gen.Enum<Surface>()).Array[1, 3].Sample(
        lines =>
        {
            var order = OrderOf([.. lines.Select((l, i) => Line($"L{i}", l.Item1, l.Item2, l.Item3) with { MayBuy = true, ShopPrice = new Money(l.Item4), Surface = l.Item5 })]);
            var proof = Planned(order).Proof;
            var maker = new BatchMaker(order, new Search(null, default, CancellationToken.None));
            Assert.All(Decisions(lines.Select(l => l.Item3).ToArray()), bought => Assert.True(proof.LeastPossible <= maker.Make(bought).Spent));
        },
        iter: 25);

    /// <summary>Every number that may be bought of every line.</summary>
    private static IEnumerable<ImmutableArray<int>> Decisions(int[] wanted) => wanted.Aggregate(
        (IEnumerable<ImmutableArray<int>>)[[]],
        (all, count) => all.SelectMany(first => Enumerable.Range(0, count + 1).Select(first.Add)));
}
