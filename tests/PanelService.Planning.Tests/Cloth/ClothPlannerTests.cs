using System.Collections.Immutable;
using CsCheck;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Cloth;

public sealed class ClothPlannerTests
{
    private static readonly ClothSupply _roll = new()
    {
        Id = "cotton",
        Width = Inches(54),
        Sale = new SaleByRoll(Inches(216), new Money(9600), ForSale: null),
    };

    [Theory]
    [InlineData(18, 1)]
    [InlineData(19, 2)]
    public void Plan_of_27_by_23_pieces_takes_18_from_a_54_inch_roll_of_6_yards(int pieces, int rolls)
    {
        // Field figure: 54 in x 6 yd gives 18 pieces of 27 x 23 in, 2 across and 9 along. 26 x 22 with 1/2 in over on every side.
        var order = OrderOf(Line("A", 26, 22, pieces) with { Surface = Surface.Loose });
        Assert.Equal(rolls, Planned(order with { Cloths = [_roll] }).Cloth.Sum(cloth => cloth.Copies));
    }

    [Fact]
    public void Plan_asks_for_the_least_cost_where_a_roll_beats_the_length()
    {
        // Two rows of six 9 x 11 pieces want 22 in: one step of 36 in for 31.00, or a narrow roll for 30.00.
        var cheap = _roll with { Id = "cheap", Sale = new SaleByRoll(Inches(216), new Money(3000), ForSale: null) };
        var plan = Planned(OrderOf(Line("A", 8, 10, 12) with { Surface = Surface.Loose }) with { Cloths = [Linen, cheap] });
        Assert.Equal("cheap", Assert.Single(plan.Buy).Id);
    }

    [Fact]
    public void Plan_uses_a_free_remnant_before_it_buys()
    {
        var linen = Linen with { Remnants = [new Remnant("r7", Inches(30), Inches(22), 1, Money.Zero)] };
        var plan = Planned(OrderOf(Line("A", 8, 10, 6) with { Surface = Surface.Loose }) with { Cloths = [linen] });
        Assert.Equal("r7", Assert.Single(plan.Cloth).Remnant!.Id);
        Assert.Equal(new Proof(Money.Zero, Money.Zero), plan.ClothProof);
    }

    [Theory]
    [InlineData(3, 28)]
    [InlineData(150, 11)]
    public void Plan_out_of_more_remnants_than_are_searched_takes_large_ones_and_all_where_all_are_needed(int count, int side)
    {
        ImmutableArray<Remnant> remnants = [.. Enumerable.Range(0, 203).Select(i => i % 70 == 9
            ? new Remnant($"r{i}", Inches(30), Inches(30), 1, Money.Zero)
            : new Remnant($"r{i}", Inches(13), Inches(13), 1, Money.Zero))];

        var plan = Planned(OrderOf(Line("A", side, side, count) with { Surface = Surface.Loose }) with { Cloths = [Linen with { Remnants = remnants }] });

        Assert.Equal(count, plan.Cloth.Sum(layout => layout.Copies * layout.Pieces.Length));
        Assert.All(plan.Cloth, layout => Assert.NotNull(layout.Remnant));
        Assert.Equal(new Proof(Money.Zero, Money.Zero), plan.ClothProof);
    }

    [Fact]
    public void Plan_joins_lengths_so_that_only_their_sum_is_whole_steps()
    {
        // 62 in less selvedges holds six of 10 in across; 20 rows of 12 in are 240 in: seven steps of 36 in, not twenty.
        var plan = Planned(OrderOf(Line("A", 9, 11, 120) with { Surface = Surface.Loose }));
        Assert.Equal(7, Assert.Single(plan.Buy).Quantity);
        Assert.True(plan.ClothProof.Proven);
    }

    [Fact]
    public void Plan_keeps_within_the_steps_there_are()
    {
        // Seven steps would do by themselves, but there are only three: the rest comes from the dearer roll.
        var few = Linen with { Sale = new SaleByLength(Inches(36), new Money(3100), AtMost: 3) };
        var dear = _roll with { Id = "dear", Sale = new SaleByRoll(Inches(216), new Money(90000), ForSale: null) };
        var plan = Planned(OrderOf(Line("A", 9, 11, 120) with { Surface = Surface.Loose }) with { Cloths = [few, dear] });
        Assert.True(plan.Buy.Single(purchase => purchase.Id == "lin").Quantity <= 3);
        Assert.Equal(120, plan.Cloth.Sum(cloth => cloth.Copies * cloth.Pieces.Length));
    }

    [Fact]
    public void Plan_lays_pieces_inside_the_selvedges_and_never_turns_them_on_a_warp() => Gen
        .Select(Gen.Int[4, 20], Gen.Int[4, 30], Gen.Int[1, 12]).Array[1, 4].Sample(
        sizes =>
        {
            var lines = sizes.Select((s, i) => Line($"L{i}", s.Item1, s.Item2, s.Item3) with { Surface = Surface.Loose });
            var plan = Planned(OrderOf([.. lines]) with { Cloths = [Linen with { Warp = Grain.Height }] });
            Assert.All(plan.Cloth.SelectMany(cloth => cloth.Pieces), piece =>
            {
                Assert.False(piece.Turned);
                Assert.True(piece.X >= Inches(0.5m) && piece.X + piece.Width <= Inches(61.5m));
            });
            Assert.True(plan.ClothProof.LeastPossible <= plan.ClothProof.Spent);
        },
        iter: 20);
}
