using CsCheck;
using PanelService.Planning.Cloth.Bounds;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Cloth;

public sealed class ClothBoundTests
{
    private static readonly Money _nothingKnown = new(1_000_000_000);

    private static readonly Gen<Order> _orders = Gen.Select(
        Gen.Select(Gen.Int[3, 30], Gen.Int[3, 30], Gen.Int[1, 15], Gen.Bool).Array[1, 4],
        Gen.Select(Gen.Int[35, 84], Gen.Int[9, 40], Gen.Int[100, 4000], Gen.Bool).Array[1, 3],
        Gen.Select(Gen.Int[10, 40], Gen.Int[10, 60], Gen.Int[1, 2], Gen.Int[0, 400]).Array[0, 2]).Select(OrderOfRandom);

    [Fact]
    public void Bound_is_never_above_a_plan() => _orders.Sample(
        order =>
        {
            if (Planner.Plan(order) is Plans.Planned { Plan: var plan })
            {
                Assert.True(BoundOf(order) <= plan.ClothProof.Spent);
            }
        },
        iter: 150);

    [Fact]
    public void Bound_of_rows_that_fill_the_width_is_what_they_take()
    {
        // 61 in between selvedges hold six pieces of 10 in; 20 rows of 12 in are 240 in, which is seven steps of 36 in.
        var order = OrderOf(Line("A", 9, 11, 120) with { Surface = Surface.Loose });
        Assert.Equal(7 * 3100, BoundOf(order with { Cloths = [Linen with { Warp = Grain.Height }] }).Minor);
    }

    [Fact]
    public void Bound_counts_whole_rolls_only()
    {
        var roll = new ClothSupply { Id = "r", Width = Inches(54), Sale = new SaleByRoll(Inches(216), new Money(9600), null) };
        Assert.Equal(9600, BoundOf(OrderOf(Line("A", 9, 11, 1) with { Surface = Surface.Loose }) with { Cloths = [roll] }).Minor);
    }

    [Fact]
    public void Bound_takes_off_what_a_free_remnant_holds()
    {
        // The remnant holds six of 9 x 11 in at no cost; the seventh takes one step.
        var linen = Linen with { Remnants = [new Remnant("r7", Inches(30), Inches(22), 1, Money.Zero)] };
        var order = OrderOf(Line("A", 8, 10, 6) with { Surface = Surface.Loose }) with { Cloths = [linen] };
        Assert.Equal(0, BoundOf(order).Minor);
        Assert.Equal(3100, BoundOf(order with { Panels = [order.Panels[0] with { Quantity = 7 }] }).Minor);
    }

    private static Money BoundOf(Order order) => ClothBound.Of(
        order, new CutRequest([.. order.Panels.Select(line => line.Wanted)], CutSizes.Nominal(order), Ready: []), _nothingKnown);

    private static Order OrderOfRandom(
        (int Width, int Height, int Count, bool Linen)[] lines,
        (int Width, int Step, int Price, bool ByRoll)[] cloths,
        (int Width, int Length, int Quantity, int Value)[] remnants) =>
        OrderOf([.. lines.Select((l, i) => Line($"L{i}", l.Width, l.Height, l.Count) with { Surface = Surface.Loose, Cloth = l.Linen ? "linen" : null })]) with
        {
            Cloths =
            [
                .. cloths.Select((c, i) => new ClothSupply
                {
                    Id = $"c{i}",
                    Kind = i == 0 ? "linen" : null,
                    Width = Inches(c.Width),
                    Selvedge = Inches(0.5m),
                    Sale = c.ByRoll ? new SaleByRoll(Inches(c.Step * 4), new Money(c.Price * 2), null) : new SaleByLength(Inches(c.Step), new Money(c.Price), null),
                    Remnants = i > 0 ? [] : [.. remnants.Select((r, k) => new Remnant($"r{k}", Inches(r.Width), Inches(r.Length), r.Quantity, new Money(r.Value)))],
                }),
            ],
        };
}
