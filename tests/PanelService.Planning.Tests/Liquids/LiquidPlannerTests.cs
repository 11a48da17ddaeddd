using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Tests.Liquids;

public sealed class LiquidPlannerTests
{
    private static readonly LiquidSupply _dear = Glue("dear", bottlePrice: 900);
    private static readonly LiquidSupply _cheap = Glue("cheap", bottlePrice: 500);

    [Fact]
    public void Plan_of_one_8_by_10_takes_five_percent_of_an_8_ounce_bottle()
    {
        // Common practice: 0.4 US fl oz covers an 8 x 10 in panel generously; that is 229 mL a square metre.
        var use = Assert.Single(LiquidPlanner.Plan(OrderOf([_cheap], Line("A")), [1]).Uses);
        Assert.Equal(0.05m, Math.Round(use.Needed.Millilitres / use.BoughtVolume.Millilitres, 9));
        Assert.Equal(229m, Math.Round(use.Needed.Millilitres / Line("A").Area.SquareMetres));
    }

    [Fact]
    public void Plan_takes_the_cheapest_adhesive() =>
        Assert.Equal("cheap", Assert.Single(LiquidPlanner.Plan(OrderOf([_dear, _cheap], Line("A")), [20]).Uses).Liquid.Id);

    [Fact]
    public void Plan_of_a_line_that_names_its_adhesive_lets_the_other_lines_share_its_bottle()
    {
        // The dear bottle is bought anyway and half of it would be left: a cheap one beside it would cost more.
        var plan = LiquidPlanner.Plan(OrderOf([_cheap, _dear], Line("A") with { Adhesive = "dear" }, Line("B")), [10, 10]);
        Assert.Equal("dear", Assert.Single(plan.Uses).Liquid.Id);
        Assert.Equal(900, plan.Spent.Minor);
    }

    [Fact]
    public void Plan_uses_what_is_on_hand_first_and_counts_its_share_of_the_value()
    {
        var glue = _cheap with { OnHand = Volume.From(16, LengthUnit.Inch), Value = new Money(1000) };
        var plan = LiquidPlanner.Plan(OrderOf([glue], Line("A")), [20]);
        Assert.Empty(plan.Uses[0].Bought);
        Assert.Equal(500, plan.Spent.Minor);
        Assert.Equal(8m, Math.Round(plan.Uses[0].Left.In(LengthUnit.Inch), 9));
    }

    [Fact]
    public void Plan_without_adhesives_warns_and_costs_nothing()
    {
        var plan = LiquidPlanner.Plan(OrderOf([], Line("A")), [1]);
        Assert.Equal("adhesive-missing", Assert.Single(plan.Warnings).Id);
        Assert.Equal(0, plan.Spent.Minor);
    }

    [Fact]
    public void Plan_of_primed_panels_counts_every_coat()
    {
        var ground = new LiquidSupply
        {
            Id = "ground",
            Coats = 3,
            CoverageArea = Length.FromInches(20) * Length.FromInches(20),
            CoverageVolume = Volume.From(1, LengthUnit.Inch),
            Containers = [new Container(Volume.From(8, LengthUnit.Inch), new Money(1000))],
        };
        var order = OrderOf([], Line("A") with { Surface = Surface.Primed }) with { Primers = [ground] };
        var use = Assert.Single(LiquidPlanner.Plan(order, [10]).Uses);
        Assert.Equal(10 * 80 * 3 / 400m, Math.Round(use.Needed.In(LengthUnit.Inch), 9));
    }

    private static LiquidSupply Glue(string id, long bottlePrice) => new()
    {
        Id = id,
        CoverageArea = Length.FromInches(8) * Length.FromInches(10),
        CoverageVolume = Volume.From(0.4m, LengthUnit.Inch),
        Containers = [new Container(Volume.From(8, LengthUnit.Inch), new Money(bottlePrice))],
    };

    private static PanelLine Line(string mark) => new()
    {
        Mark = mark,
        Width = Length.FromInches(8),
        Height = Length.FromInches(10),
        Quantity = 1,
        Surface = Surface.Cloth,
    };

    private static Order OrderOf(LiquidSupply[] adhesives, params PanelLine[] lines) => new()
    {
        Units = LengthUnit.Inch,
        Currency = new Currency("EUR", 2),
        Panels = [.. lines],
        Adhesives = [.. adhesives],
    };
}
