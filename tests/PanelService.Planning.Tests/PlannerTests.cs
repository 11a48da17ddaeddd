using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests;

public sealed class PlannerTests
{
    [Fact]
    public void Plan_of_ten_8_by_10_takes_one_sheet_of_24_by_48()
    {
        // Exact guillotine yield of a 24 x 48 in sheet with a 1/8 in kerf, by dynamic programme: 10.
        var plan = Planned(OrderOf(Line("A", 8, 10, 10)));
        Assert.Equal(1, plan.Sheets.Sum(sheet => sheet.Copies));
        Assert.Equal(new Proof(new Money(610), new Money(610)), plan.BoardProof);
    }

    [Fact]
    public void Plan_of_eleven_8_by_10_takes_a_second_sheet() =>
        Assert.Equal(2, Planned(OrderOf(Line("A", 8, 10, 11))).Sheets.Sum(sheet => sheet.Copies));

    [Fact]
    public void Plan_with_undersize_cuts_fourteen_out_of_a_sheet_and_no_smaller_than_that_takes()
    {
        // Exact guillotine yield of the same sheet for 7 7/8 x 9 7/8: 14.
        var order = OrderOf(Line("A", 8, 10, 14));
        var plan = Planned(order with { Saw = order.Saw with { Undersize = Inches(0.125m) } });
        Assert.Equal(1, plan.Sheets.Sum(sheet => sheet.Copies));
        Assert.True(plan.BoardProof.Proven);
        Assert.True(plan.Panels[0].CutWidth >= Inches(7.875m) && plan.Panels[0].CutHeight >= Inches(9.875m));
        Assert.True(plan.Panels[0].CutWidth < Inches(8) || plan.Panels[0].CutHeight < Inches(10));
    }

    [Fact]
    public void Plan_with_undersize_that_saves_nothing_cuts_nominal()
    {
        var order = OrderOf(Line("A", 8, 10, 10));
        var panel = Planned(order with { Saw = order.Saw with { Undersize = Inches(0.125m) } }).Panels[0];
        Assert.Equal((Inches(8), Inches(10)), (panel.CutWidth, panel.CutHeight));
    }

    [Fact]
    public void Plan_with_undersize_keeps_lines_nominal_that_need_not_be_smaller()
    {
        // Nominal, no sheet holds the three A and B together with any A: three sheets. With A at 11 x 4 1/2 two do, and B may stay 5 x 17.
        var order = OrderOf(Line("A", 11, 5, 3), Line("B", 5, 17, 1)) with
        {
            Boards = [Hardboard with { Width = Inches(22), Height = Inches(9), Price = new Money(500) }],
        };

        var plan = Planned(order with { Saw = order.Saw with { Kerf = Length.Zero, Undersize = Inches(0.5m) } });

        Assert.Equal(new Proof(new Money(1000), new Money(1000)), plan.Proof);
        Assert.Equal((Inches(5), Inches(17)), (plan.Panels[1].CutWidth, plan.Panels[1].CutHeight));
    }

    [Fact]
    public void Plan_with_undersize_makes_no_panel_smaller_for_a_larger_leftover()
    {
        // Two A side by side, and B over C beside them, hold B as it hangs; A, B and C in one sheet leave more of the other, at 9 7/16.
        var order = OrderOf(Line("A", 6, 18, 2), Line("B", 9.5m, 7.5m, 1) with { MayTurn = false }, Line("C", 6.5m, 8, 1)) with
        {
            Boards = [Hardboard with { Width = Inches(15.375m), Height = Inches(17.9375m), Price = new Money(303) }],
        };

        var plan = Planned(order with { Saw = order.Saw with { Kerf = Length.Zero, Undersize = Inches(0.0625m) } });

        Assert.Equal(new Proof(new Money(606), new Money(606)), plan.Proof);
        Assert.Equal((Inches(9.5m), Inches(7.5m)), (plan.Panels[1].CutWidth, plan.Panels[1].CutHeight));
    }

    [Fact]
    public void Plan_with_undersize_keeps_lines_of_cloth_nominal_that_need_not_be_smaller()
    {
        // The same in cloth alone: remnants of 22 x 9 in, pieces without margins.
        var order = OrderOf(Line("A", 11, 5, 3) with { Surface = Surface.Loose }, Line("B", 5, 17, 1) with { Surface = Surface.Loose }) with
        {
            Cloths = [Linen with { Sale = null, Remnants = [new Remnant("r", Inches(22), Inches(9), 2, new Money(500))] }],
            Bench = new BenchSettings { MarginSides = Length.Zero, MarginEnds = Length.Zero },
        };

        var plan = Planned(order with { Saw = order.Saw with { Undersize = Inches(0.5m) } });

        Assert.Equal(new Money(1000), plan.Proof.Spent);
        Assert.Equal((Inches(5), Inches(17)), (plan.Panels[1].CutWidth, plan.Panels[1].CutHeight));
    }

    [Fact]
    public void Plan_of_cloth_panels_buys_boards_cloth_and_glue()
    {
        var plan = Planned(OrderOf(Line("A", 8, 10, 12) with { Surface = Surface.Cloth }));
        Assert.Equal(["hb3", "lin", "glue"], plan.Buy.Select(purchase => purchase.Id));
        Assert.True(plan.Proof.Proven);
        Assert.Equal(plan.Cost.Cash, plan.Proof.Spent);
    }

    [Fact]
    public void Plan_that_nobody_wants_any_more_is_not_written_though_its_search_was_done()
    {
        var order = OrderOf(Line("A", 8, 10, 12), Line("B", 9, 12, 5));
        var unwanted = new CancellationToken(canceled: true);

        Assert.IsType<Planned>(Planner.Plan(order));
        Assert.Throws<OperationCanceledException>(() => Planner.Plan(order, unwanted: unwanted));
    }
}
