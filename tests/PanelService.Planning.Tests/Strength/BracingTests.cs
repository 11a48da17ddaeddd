using CsCheck;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Tests.Strength;

/// <summary>The order's own switch: whatever sags too much gets the strips that brace it.</summary>
public sealed class BracingTests
{
    private static readonly StripSupply _strip = new() { Id = "8ft", Length = Demo.Inches(96), Price = new Money(420) };

    // 20 × 24 in of 1/8 in hardboard sag too much under a hand, 5 × 7 in do not (plate theory, see PlateTheoryTests).
    [Fact]
    public void Brace_puts_cradles_to_what_sags_too_much_and_to_nothing_else()
    {
        var order = Order(brace: true, Thin("A", 20, 24), Thin("B", 5, 7));
        var plan = Demo.Planned(order);
        var byHand = Demo.Planned(order with { Strength = new StrengthSettings(), Panels = [order.Panels[0] with { Cradle = true }, order.Panels[1]] });

        Assert.Equal([true, false], plan.Strength.Select(one => one.Cradled));
        Assert.Equal(byHand.StripProof, plan.StripProof);
        Assert.Equal(byHand.Buy.Select(line => (line.Id, line.Quantity)), plan.Buy.Select(line => (line.Id, line.Quantity)));
        Assert.Contains(plan.Buy, line => line.SaleUnit == SaleUnit.Strip);
        Assert.True(plan.StripProof.Proven);
        Assert.DoesNotContain(plan.Warnings, warning => warning.Id == "brace-or-thicker");
    }

    [Fact]
    public void Line_that_says_it_has_none_is_left_alone_and_told_of()
    {
        var plan = Demo.Planned(Order(brace: true, Thin("A", 20, 24) with { MayBrace = false }));
        Assert.Empty(plan.Strips);
        Assert.Contains(plan.Warnings, warning => warning.Id == "brace-or-thicker");
    }

    // Rails of 24 in less 1/4 in at both ends, bars of 20 in less that and two strips of 3/4 in.
    [Fact]
    public void Plan_without_the_switch_proposes_the_strips_by_number_and_length()
    {
        var plan = Demo.Planned(Order(brace: false, Thin("A", 20, 24)));
        var pieces = plan.Stiffening!.Pieces;
        Assert.Equal([Demo.Inches(23.5m), Demo.Inches(18)], pieces.Select(piece => piece.Length));
        Assert.Equal((2, 4L), (pieces[0].Each, pieces[0].Count));
        Assert.Equal(pieces[1].Each * 2L, pieces[1].Count);
        Assert.Contains(plan.Warnings, warning => warning.Text.Contains($"Brace it: on each of A 2 strips of 23 1/2 in and {pieces[1].Each} of 18 in.", StringComparison.Ordinal));
    }

    // 1/8 in under would do, and nothing is saved by it: the panels are cut at 20 × 24 in, and it is these that are braced.
    [Fact]
    public void Strips_proposed_fit_the_panels_as_they_are_cut()
    {
        var order = Order(brace: false, Thin("A", 20, 24));
        var plan = Demo.Planned(order with { Saw = order.Saw with { Undersize = Demo.Inches(0.125m) } });

        Assert.Equal((Demo.Inches(20), Demo.Inches(24)), (plan.Panels[0].CutWidth, plan.Panels[0].CutHeight));
        Assert.Equal([Demo.Inches(23.5m), Demo.Inches(18)], plan.Stiffening!.Pieces.Select(piece => piece.Length));
        Assert.Equal(Assert.Single(plan.Strength).Cradle!.Strips.Select(strip => (strip.Length, strip.Count)), plan.Stiffening.Pieces.Select(piece => (piece.Length, piece.Each)));
    }

    // Without strips or thicker boards in the order there is no price to tell; what would brace it is told all the same.
    [Fact]
    public void Strips_are_proposed_where_the_order_has_none()
    {
        var plan = Demo.Planned(Order(brace: false, Thin("A", 20, 24)) with { Strips = [] });
        Assert.Contains(plan.Warnings, warning => warning.Id == "brace-or-thicker" && warning.Text.Contains("Brace it: on each of A 2 strips", StringComparison.Ordinal));
    }

    // Whatever boards the plan takes, cloth and glue on them included: nothing is left that sags too much without a cradle.
    [Fact]
    public void Nothing_that_is_braced_throughout_sags_too_much_without_a_cradle() =>
        Gen.Select(Gen.Int[6, 24], Gen.Int[6, 30], Gen.Int[1, 4], Gen.Enum<Surface>(), Gen.Int[150, 900]).Sample(
            (width, height, count, surface, limit) =>
            {
                var line = Demo.Line("A", width, height, count) with { Surface = surface };
                var thick = Demo.Hardboard with { Id = "hb5", Thickness = Demo.Inches(0.1875m), Price = new Money(880) };
                var order = Demo.OrderOf(line) with
                {
                    Boards = [Demo.Hardboard with { OnHand = 1 }, thick],
                    Strips = [_strip],
                    Strength = new StrengthSettings { Brace = true, Limit = limit },
                    Cloths = [Demo.Linen with { Weight = 500 }],
                };
                var plan = Demo.Planned(order);
                Assert.DoesNotContain(plan.Strength, one => one.SagUnderHand > one.Allowed && !one.Cradled && one.Cradle is not null);
            },
            iter: 80,
            seed: "0000000000001");

    private static PanelLine Thin(string mark, int width, int height) => Demo.Line(mark, width, height, 2) with { Thickness = Demo.Inches(0.125m) };

    private static Order Order(bool brace, params PanelLine[] lines) =>
        Demo.OrderOf(lines) with { Strips = [_strip], Strength = new StrengthSettings { Brace = brace } };
}
