using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Spare;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Costing;

public sealed class SparePanelTests
{
    [Fact]
    public void Sheet_that_is_not_touched_gives_what_the_trade_knows_it_gives()
    {
        // A 24 x 48 in sheet with a 1/8 in kerf gives ten 8 x 10 in panels: exact guillotine yield, by dynamic programme.
        var order = OrderOf(Line("A", 8, 10, 1)) with { Boards = [Hardboard with { OnHand = 2, ForSale = 0, Width = Inches(8), Height = Inches(10) }, Hardboard with { Id = "more", OnHand = 1, ForSale = 0, Value = new Money(500) }] };

        var spare = Planned(order).CouldStillMake.First(panel => panel.Mark == "A");

        Assert.Equal(11, spare.Count);
    }

    [Fact]
    public void More_than_can_be_counted_are_not_named()
    {
        // Each of 30,000 sheets of 400 × 400 in leaves 150 × 400 in and more: some billions of half an inch square.
        var order = OrderOf(Line("A", 249, 249, 30_000), Line("B", 0.5m, 0.5m, 1)) with { Boards = [Hardboard with { Thickness = Inches(0.5m), Width = Inches(400), Height = Inches(400) }] };

        var marks = Planned(order).CouldStillMake.Select(panel => panel.Mark);

        Assert.DoesNotContain("B", marks);
    }

    [Theory]
    [InlineData("8", "10", 10)]
    [InlineData("7.9375", "9.9375", 10)]
    [InlineData("7.875", "9.875", 14)]
    public void Yields_of_a_sheet_are_those_of_the_table(string width, string height, int expected)
    {
        // Exact guillotine yields of a 24 x 48 in sheet with a 1/8 in kerf (by dynamic programme).
        long kerf = Inches(0.125m).Steps;
        long a = Inches(decimal.Parse(width, System.Globalization.CultureInfo.InvariantCulture)).Steps + kerf;
        long b = Inches(decimal.Parse(height, System.Globalization.CultureInfo.InvariantCulture)).Steps + kerf;

        Assert.Equal(expected, OneSizePacking.Count((Inches(24).Steps + kerf, Inches(48).Steps + kerf), [(a, b), (b, a)]));
    }

    [Fact]
    public void Cloth_panel_needs_board_cloth_and_adhesive_left()
    {
        var order = OrderOf(Line("A", 8, 10, 1) with { Surface = Surface.Cloth });

        var left = Planned(order);
        var dry = Planned(order with { Adhesives = [Glue with { Containers = [new Container(Volume.From(0.7m, LengthUnit.Inch), new Money(790))] }] });

        // Nine more out of the sheet; 7.6 fl oz of glue are 19 panels, 0.3 are none.
        Assert.Equal(9, left.CouldStillMake.First(panel => panel.Mark == "A").Count);
        Assert.DoesNotContain(dry.CouldStillMake, panel => panel.Surface == Surface.Cloth && panel.Mark == "A");
    }

    [Fact]
    public void What_could_be_made_can_be_made_for_nothing()
    {
        // The kept leftovers of one batch as the stock of the next: as many are made, and nothing is bought.
        var plan = Planned(OrderOf(Line("A", 11, 14, 3)));
        var boards = plan.Sheets.SelectMany(sheet => sheet.Offcuts.Where(offcut => offcut.Kept)
            .Select((offcut, i) => Hardboard with { Id = $"o{sheet.Number}-{i}", Width = offcut.Width, Height = offcut.Height, ForSale = 0, OnHand = sheet.Copies }));

        foreach (var spare in plan.CouldStillMake)
        {
            var line = Line("S", 1, 1, spare.Count) with { Width = spare.Width, Height = spare.Height };
            var again = Planner.Plan(OrderOf(line) with { Boards = [.. boards] });
            Assert.Equal(Money.Zero, Assert.IsType<Planned>(again).Plan.Cost.Cash);
            Assert.IsType<CannotBeMade>(Planner.Plan(OrderOf(line with { Quantity = spare.Count + 1 }) with { Boards = [.. boards] }));
        }

        Assert.NotEmpty(plan.CouldStillMake);
    }
}
