using CsCheck;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Wishes;

public sealed class WishPlannerTests
{
    private static readonly Wish _small = new() { Mark = "W", Width = Inches(5), Height = Inches(7), AtMost = 3, Worth = new Money(200) };

    [Fact]
    public void Plan_fills_spare_board_up_to_what_is_asked_for()
    {
        var plan = Planned(OrderOf(Line("A", 8, 10, 4)) with { Wishes = [_small] });
        Assert.Equal((true, 3), (plan.Panels[1].IsWish, plan.Panels[1].Made));
        Assert.Equal(610, plan.Proof.Spent.Minor);
        Assert.Equal(3, plan.Sheets.Sum(sheet => sheet.Copies * sheet.Pieces.Count(piece => piece.Mark == "W")));
    }

    [Fact]
    public void Plan_fills_what_the_layout_for_the_saw_leaves_in_one_piece()
    {
        // Four of 13 x 9 in leave two strips in the first layout; the saw's joins what is left to one that holds a third.
        var order = OrderOf(Line("A", 13, 9, 4)) with
        {
            Boards = [Hardboard with { Width = Inches(22), Height = Inches(31), Price = new Money(500) }],
            Wishes = [_small with { Width = Inches(4), Height = Inches(6) }],
        };

        var plan = Planned(order);

        Assert.Equal(3, plan.Panels[1].Made);
        Assert.Equal(3, plan.Sheets.Sum(sheet => sheet.Copies * sheet.Pieces.Count(piece => piece.Mark == "W")));
        Assert.Equal(500, plan.Proof.Spent.Minor);
    }

    [Fact]
    public void Plan_prefers_the_wish_worth_more()
    {
        var full = _small with { AtMost = 100 };
        var dear = full with { Mark = "V", Worth = new Money(300) };
        var plan = Planned(OrderOf(Line("A", 8, 10, 4)) with { Wishes = [full, dear] });
        Assert.True(plan.Panels.Single(panel => panel.Line.Mark == "V").Made > 0);
        Assert.DoesNotContain(plan.Panels, panel => panel.Line.Mark == "W");
    }

    [Fact]
    public void Plan_lays_panels_so_that_the_wishes_have_room()
    {
        // Two of 18 × 15 in stacked to 30 1/8 in leave 24 × 17 3/4: two of 9 × 9 side by side, and 13 × 8 over them. Beside two stacked to 36 1/8 in only one fits.
        var square = _small with { Mark = "S", Width = Inches(9), Height = Inches(9), AtMost = 2 };
        var tall = _small with { Mark = "T", Width = Inches(8), Height = Inches(13), AtMost = 1 };
        var order = OrderOf(Line("A", 18, 15, 2)) with { Wishes = [tall, square], Boards = [Hardboard with { Thickness = Inches(0.1875m) }] };

        var plan = Planned(order);

        Assert.Equal([1, 2], plan.Panels.Where(panel => panel.Line.Mark != "A").Select(panel => panel.Made));
        Assert.Equal(1, plan.Sheets.Sum(sheet => sheet.Copies));
    }

    [Fact]
    public void Plan_never_buys_a_sheet_cloth_or_glue_for_a_wish()
    {
        var cloth = _small with { Mark = "C", Surface = Surface.Cloth, AtMost = 50 };
        var plan = Planned(OrderOf(Line("A", 8, 10, 4)) with { Wishes = [cloth] });
        Assert.Equal("hb3", Assert.Single(plan.Buy).Id);
        Assert.Single(plan.Panels);
    }

    [Fact]
    public void Plan_cuts_the_cloth_of_a_wish_from_what_is_left_over()
    {
        // Four panels leave most of a step of cloth, most of a bottle and half a sheet.
        var cloth = _small with { Mark = "C", Surface = Surface.Cloth, AtMost = 4 };
        var order = OrderOf(Line("A", 8, 10, 4) with { Surface = Surface.Cloth });
        var with = Planned(order with { Wishes = [cloth] });
        Assert.Equal(4, with.Panels[1].Made);
        Assert.Equal(4, with.Cloth.Sum(c => c.Copies * c.Pieces.Count(piece => piece.Mark == "C")));
        Assert.Equal(Planned(order).Proof, with.Proof);
    }

    [Fact]
    public void Plan_takes_for_a_wish_of_the_ground_that_the_lines_share()
    {
        // Four of 8 × 10 in take 1.6 fl oz of the first 2, at 0.4 for 80 in²; what is left does for two of 5 × 7 in, and the other ground for five.
        var first = Glue with { Id = "first", OnHand = Volume.From(2, LengthUnit.Inch) };
        var other = first with { Id = "other", OnHand = Volume.From(1, LengthUnit.Inch) };
        var plan = Planned(OrderOf(Line("A", 8, 10, 4) with { Surface = Surface.Primed }) with { Primers = [first, other], Wishes = [_small with { Surface = Surface.Primed }] });
        Assert.Equal(2, plan.Panels[1].Made);
        Assert.Equal(["first"], plan.Liquids.Where(use => !use.IsAdhesive).Select(use => use.Liquid.Id));
    }

    [Fact]
    public void Plan_with_wishes_costs_what_it_costs_without() => Gen
        .Select(Gen.Int[3, 14], Gen.Int[3, 18], Gen.Int[1, 30], Gen.Int[0, 300]).Array[1, 3].Sample(
        wishes =>
        {
            var order = OrderOf(Line("A", 9, 12, 7), Line("B", 11, 14, 9));
            var with = Planned(order with
            {
                Wishes = [.. wishes.Select((w, i) => new Wish { Mark = $"W{i}", Width = Inches(w.Item1), Height = Inches(w.Item2), AtMost = w.Item3, Worth = new Money(w.Item4) })],
            });
            Assert.Equal(Planned(order).Proof, with.Proof);
            Assert.All(with.Panels.Where(panel => panel.IsWish), panel =>
                Assert.True(panel.Made <= wishes[int.Parse(panel.Line.Mark[1..], System.Globalization.CultureInfo.InvariantCulture)].Item3));
            Assert.All(with.Sheets, sheet => Assert.Equal(
                sheet.Area,
                sheet.Pieces.Aggregate(sheet.Waste.All, (sum, piece) => sum + (piece.Width * piece.Height))
                    + sheet.Offcuts.Where(offcut => offcut.Kept).Aggregate(Area.Zero, (sum, offcut) => sum + offcut.Area)));
        },
        iter: 20);
}
