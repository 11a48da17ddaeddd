using CsCheck;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Costing;

public sealed class TallyTests
{
    private static readonly Gen<Order> _orders = Gen.Select(
        Gen.Select(Gen.Int[4, 15], Gen.Int[4, 18], Gen.Int[1, 9], Gen.Enum<Surface>()).Array[1, 4],
        Gen.Int[0, 3],
        Gen.Int[0, 4000],
        Gen.Int[0, 2000]).Select((lines, onHand, overhead, hour) =>
        OrderOf([.. lines.Select((l, i) => Line($"L{i}", l.Item1, l.Item2, l.Item3) with { Surface = l.Item4, ShopPrice = new Money(977) })]) with
        {
            Boards = [Hardboard with { OnHand = onHand, Value = new Money(333), EdgeTrim = Inches(0.25m) }],
            Adhesives = [Glue with { OnHand = Volume.From(1.7m, LengthUnit.Inch), Value = new Money(101) }],
            Overheads = [new Overhead("hire", new Money(overhead))],
            LabourPerHour = new Money(hour),
            Consumables = [new Consumable("blade", WornBy.SawMetre, new Money(hour), 37.5m), new Consumable("knife", WornBy.ClothFoot, new Money(overhead), 11)],
            Tools = [new Tool("saw", new Money(overhead * 10L), 13)],
        });

    [Fact]
    public void Cash_and_goods_used_are_what_is_used_and_what_is_kept() => Each((plan, cost) => Assert.Equal(
        cost.Cash + cost.OnHandUsed,
        cost.Used - Sum(cost, line => line.Labour) - Sum(cost, line => line.Overheads)
            - Sum(cost, line => line.Consumables) - Sum(cost, line => line.Tools) + cost.BackOnRack));

    [Fact]
    public void Used_is_the_sum_of_the_lines() => Each((_, cost) => Assert.Equal(cost.Used, Sum(cost, line => line.Total)));

    [Fact]
    public void Cash_is_the_sum_of_the_shopping_list() => Each((plan, cost) =>
        Assert.Equal(cost.Cash.Minor, plan.Buy.Sum(purchase => purchase.Cost.Minor)));

    [Fact]
    public void Overheads_are_handed_out_whole() => Each((plan, cost) =>
        Assert.Equal(plan.Order.Overheads[0].Cost, Sum(cost, line => line.Overheads)));

    [Fact]
    public void Wear_and_tools_are_handed_out_whole() => Each((_, cost) => Assert.Equal(
        cost.Consumables.Sum(use => use.Cost.Minor) + cost.Tools.Sum(use => use.Cost.Minor),
        (Sum(cost, line => line.Consumables) + Sum(cost, line => line.Tools)).Minor));

    [Fact]
    public void Proof_spends_cash_and_the_goods_used() => Each((plan, cost) =>
        Assert.Equal(plan.Proof.Spent, cost.Cash + cost.OnHandUsed));

    [Fact]
    public void Saved_is_the_shop_price_of_all_less_their_total() => Each((plan, cost) => Assert.Equal(
        plan.Panels.Sum(panel => panel.Line.Quantity * 977L) - cost.Used.Minor, cost.SavedTotal!.Value.Minor));

    [Fact]
    public void ByArea_of_an_8_by_10_out_of_a_6_10_sheet_is_42_cents() =>
        Assert.Equal(0.42m, Math.Round(Planned(OrderOf(Line("A", 8, 10, 1))).Cost.Lines[0].ByArea.Board / 100, 2));

    private static void Each(Action<Plan, Tally> check) => _orders.Sample(
        order =>
        {
            var plan = Planned(order);
            check(plan, plan.Cost);
        },
        iter: 15);

    private static Money Sum(Tally cost, Func<LineCost, Money> part) =>
        cost.Lines.Aggregate(Money.Zero, (sum, line) => sum + part(line));
}
