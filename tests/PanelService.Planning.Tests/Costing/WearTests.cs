using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Costing;

public sealed class WearTests
{
    [Fact]
    public void Sheet_ripped_once_wears_the_blade_by_its_four_feet()
    {
        // One rip of 48 in; a blade of 24.00 for 1200 feet is 2 cents a foot.
        var order = OrderOf(Line("A", 12, 48, 1) with { Thickness = Inches(0.125m) }) with { Consumables = [Worn(WornBy.SawFoot, 2400, 1200)] };

        var cost = Planned(order).Cost;

        Assert.Equal((4m, new Money(8)), (cost.Consumables[0].Amount, cost.Lines[0].Consumables));
    }

    [Fact]
    public void Cloth_the_size_of_its_remnant_is_only_trimmed()
    {
        // Twice 8 and twice 10 in round the panel: 3 feet at 5 cents.
        var order = OrderOf(Line("A", 8, 10, 1) with { Surface = Surface.Cloth }) with
        {
            Cloths = [Linen with { Remnants = [new Remnant("r1", Inches(9), Inches(11), 1, Money.Zero)] }],
            Consumables = [Worn(WornBy.ClothFoot, 500, 100)],
        };

        var cost = Planned(order).Cost;

        Assert.Equal((3m, new Money(15)), (cost.Consumables[0].Amount, cost.Lines[0].Consumables));
    }

    [Fact]
    public void Cloth_cut_out_of_a_corner_is_parted_by_its_cuts_too()
    {
        // Out of 20 x 20 in: one cut across (20 in), one beside the piece (9 or 11 in); loose cloth is not trimmed.
        var order = OrderOf(Line("A", 8, 10, 1) with { Surface = Surface.Loose }) with
        {
            Cloths = [Linen with { Remnants = [new Remnant("r1", Inches(20), Inches(20), 1, Money.Zero)] }],
            Consumables = [Worn(WornBy.ClothFoot, 500, 100)],
        };

        decimal inches = Planned(order).Cost.Consumables[0].Amount * 12;

        Assert.Contains(Math.Round(inches, 9), new[] { 29m, 31m });
    }

    [Fact]
    public void Tool_is_spread_over_its_panels_and_then_paid_for()
    {
        var order = OrderOf(Line("A", 8, 10, 3), Line("B", 5, 7, 9)) with
        {
            Tools = [new Tool("saw", new Money(30000), 300), new Tool("square", new Money(900), 5)],
        };

        var cost = Planned(order).Cost;

        Assert.Equal([new Money(1200), new Money(900)], cost.Tools.Select(use => use.Cost));
        Assert.Equal([new Money(525), new Money(1575)], cost.Lines.Select(line => line.Tools));
    }

    [Fact]
    public void Spares_and_wishes_wear_as_panels_do()
    {
        var order = OrderOf(Line("A", 8, 10, 3) with { Spares = 1 }) with
        {
            Wishes = [new Wish { Mark = "W", Width = Inches(5), Height = Inches(7), AtMost = 2 }],
            Consumables = [Worn(WornBy.Panel, 100, 4)],
        };

        Assert.Equal((6m, new Money(150)), (Planned(order).Cost.Consumables[0].Amount, Planned(order).Cost.Consumables[0].Cost));
    }

    private static Consumable Worn(WornBy per, long price, decimal lasts) => new("worn", per, new Money(price), lasts);
}
