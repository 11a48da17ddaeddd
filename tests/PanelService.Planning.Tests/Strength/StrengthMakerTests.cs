using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;
using PanelService.Planning.Strength;

namespace PanelService.Planning.Tests.Strength;

/// <summary>What a plan says about its panels' weight and stiffness.</summary>
public sealed class StrengthMakerTests
{
    private static readonly BoardSupply _metric = Demo.Hardboard with
    {
        Thickness = Length.FromMillimetres(3.2m),
        Width = Length.FromMillimetres(1220),
        Height = Length.FromMillimetres(2440),
    };

    // 3.2 mm at 1000 kg/m³ is 3.20 kg/m²; a sheet of 1220 × 2440 weighs 9.53 kg (worked from the board data).
    [Fact]
    public void Weight_of_a_whole_sheet_is_as_worked()
    {
        var one = Only(Demo.Line("A", 1, 1, 1) with { Width = _metric.Width, Height = _metric.Height, Thickness = _metric.Thickness }, order => order with { Boards = [_metric] });
        Assert.Equal(9.53m, Math.Round(one.BoardWeight.Grams / 1000, 2));
    }

    // E 4.5 GPa, 1000 kg/m³, 3.2 mm, own weight: 16 × 20 in sags 0.382 mm (Timoshenko's table).
    [Fact]
    public void Bare_panel_sags_as_worked()
    {
        var one = Only(Demo.Line("A", 16, 20, 1) with { Thickness = Length.FromMillimetres(3.2m) }, order => order with { Boards = [_metric] });
        Assert.InRange(one.Sag, 0.382 * 0.99, 0.382 * 1.01);
        Assert.Equal(Length.FromInches(0.1875m), one.ThumbThickness);
    }

    [Fact]
    public void Board_of_the_painters_own_figures_is_computed_with_those()
    {
        var stiff = new BoardMaterial(500, 9000, 0.3m, 0.1m, SourceMark.CommonPractice, "mine");
        var table = Only(Demo.Line("A", 8, 10, 1), order => order);
        var own = Only(Demo.Line("A", 8, 10, 1), order => order with { Boards = [Demo.Hardboard with { Material = stiff }] });

        // Half the weight on twice the stiffness.
        Assert.Equal(table.Sag / 4, own.Sag, 9);
        Assert.Equal(table.BoardWeight.Grams / 2, own.BoardWeight.Grams);
    }

    [Fact]
    public void Cloth_and_glue_weigh()
    {
        var bare = Only(Demo.Line("A", 8, 10, 1), order => order);
        var cloth = Only(
            Demo.Line("A", 8, 10, 1) with { Surface = Surface.Cloth },
            order => order with { Cloths = [Demo.Linen with { Weight = 300 }] });

        // 80 sq in of linen at 300 g/m², and 0.4 fl oz of glue of which 0.6 g a millilitre stay (common practice).
        decimal expected = bare.Weight.Grams + (0.05161280m * 300) + (0.4m * 29.5735295625m * 0.6m);
        Assert.Equal(expected, cloth.Weight.Grams, 6);
        Assert.True(cloth.Sag > bare.Sag);
    }

    [Fact]
    public void Panel_within_its_share_wants_no_brace_and_one_past_it_does()
    {
        var small = Only(Demo.Line("A", 8, 10, 1), order => order);
        var large = Only(Demo.Line("A", 20, 24, 1) with { Thickness = Demo.Inches(0.125m) }, order => order);
        Assert.True(small.SagUnderHand <= small.Allowed);
        Assert.Null(small.Cradle);
        Assert.True(large.SagUnderHand > large.Allowed);
        Assert.True((double)large.Thickness.Millimetres < large.LeastThickness);

        // Two rails of 24 in less 1/4 in at each end; bars of 20 in less that and two strips of 3/4 in.
        Assert.Equal(Demo.Inches(23.5m), large.Cradle!.RailLength);
        Assert.Equal(Demo.Inches(18), large.Cradle.BarLength);
        Assert.True(large.Cradle.Bars >= 2);
    }

    // Every bay of a cradle, taken as a plate by itself, keeps within the share; with one bar less some would not.
    [Fact]
    public void Cradle_has_as_many_bars_as_its_bays_need()
    {
        var one = Only(Demo.Line("A", 24, 47, 1) with { Thickness = Demo.Inches(0.125m) }, order => order);
        int bars = one.Cradle!.Bars;
        Assert.True(BaySag(bars) <= BayAllowed(bars));
        Assert.True(BaySag(bars - 1) > BayAllowed(bars - 1));

        double BayLength(int count) => ((46.5 - (0.75 * count)) / (count - 1)) * 0.0254;
        LoadedPlate Bay(int count) => new(
            Math.Min(BayLength(count), 22 * 0.0254), Math.Max(BayLength(count), 22 * 0.0254), BoardMaterials.Hardboard, 0, 1);
        double BaySag(int count) => Bay(count).SagUnderHand(0.003175);
        double BayAllowed(int count) => Bay(count).Short / 300;
    }

    // 0.16 % of 40 in is 1.6 mm: more than 1/32 in of play; of 5 in it is 0.2 mm: less.
    [Fact]
    public void Large_format_in_a_tight_frame_is_told_and_a_small_one_is_not()
    {
        Assert.True(Only(Demo.Line("A", 20, 40, 1), order => order with { Boards = [Demo.Hardboard with { Thickness = Demo.Inches(0.25m) }] }).TightInFrame);
        Assert.False(Only(Demo.Line("A", 4, 5, 1), order => order).TightInFrame);
        Assert.False(Only(
            Demo.Line("A", 20, 40, 1),
            order => order with
            {
                Boards = [Demo.Hardboard with { Thickness = Demo.Inches(0.25m) }],
                Strength = new StrengthSettings { DriestHumidity = 50, DampestHumidity = 52 },
            }).TightInFrame);
    }

    [Fact]
    public void Batch_and_pack_weigh_what_their_panels_do()
    {
        var order = Demo.OrderOf(Demo.Line("A", 8, 10, 4) with { Pack = 3 }, Demo.Line("B", 5, 7, 6) with { Pack = 1 });
        var plan = Demo.Planned(order);
        decimal a = plan.Strength.Single(one => one.Mark == "A").Weight.Grams;
        decimal b = plan.Strength.Single(one => one.Mark == "B").Weight.Grams;
        Assert.Equal((4 * a) + (6 * b), plan.Weights.Batch.Grams);
        Assert.Equal((3 * a) + b, plan.Weights.Pack.Grams);
    }

    // 20 × 24 in 1/8 in hardboard sag too much. Strips for two cradles: 2 × (2 × 23 1/2 + bars × 18) in out of 8 ft at 4.20; or
    // both out of a sheet of 1/4 in at 9.00 instead of one of 1/8 in at 6.10.
    [Fact]
    public void Strips_and_a_thicker_board_are_weighed_against_each_other()
    {
        var thick = Demo.Hardboard with { Id = "hb6", Thickness = Demo.Inches(0.25m), Price = new Money(900) };
        var strip = new StripSupply { Id = "8ft", Length = Demo.Inches(96), Price = new Money(420) };
        var order = Demo.OrderOf(Demo.Line("A", 20, 23, 2) with { Thickness = Demo.Inches(0.125m) }) with { Boards = [Demo.Hardboard, thick], Strips = [strip] };

        var plan = Demo.Planned(order);
        var braced = Demo.Planned(order with { Panels = [order.Panels[0] with { Cradle = true }] });

        Assert.Equal("A", Assert.Single(plan.Stiffening!.Marks));
        Assert.Equal(braced.StripProof.Spent, plan.Stiffening.Strips);
        Assert.Equal(new Money(290), plan.Stiffening.Thicker);
        Assert.True(plan.Stiffening.ThickerIsCheaper);
        Assert.Contains(plan.Warnings, warning => warning.Id == "brace-or-thicker" && warning.Text.Contains("add 2.90 EUR", StringComparison.Ordinal));
        Assert.Equal(new Money(610), plan.Proof.Spent);
        Assert.Null(braced.Stiffening);
    }

    // 24 × 30 in of 3/16 in hold a hand where they are bare, and not under twelve coats: then they are no way to stiffen themselves.
    [Fact]
    public void Board_that_is_stiff_enough_only_while_bare_is_no_thicker_board()
    {
        var board = Demo.Hardboard with { Thickness = Demo.Inches(0.1875m), Width = Demo.Inches(48), Height = Demo.Inches(96) };
        var ground = new LiquidSupply { Id = "ground", Coats = 12, CoverageArea = Demo.Glue.CoverageArea, CoverageVolume = Demo.Glue.CoverageVolume, Containers = Demo.Glue.Containers };
        var bare = Demo.OrderOf(Demo.Line("A", 24, 30, 1)) with { Boards = [board] };
        var primed = Demo.OrderOf(Demo.Line("A", 24, 30, 1) with { Surface = Surface.Primed }) with { Boards = [board], Primers = [ground] };

        Assert.Null(Demo.Planned(bare).Stiffening);
        Assert.Null(Demo.Planned(primed).Stiffening!.Thicker);
    }

    [Fact]
    public void Panel_held_at_its_corners_sags_more_than_on_its_edges()
    {
        var one = Only(Demo.Line("A", 12, 12, 1), order => order);

        // Square: 0.0255 against 0.00406 of the same load and board (Timoshenko and Woinowsky-Krieger; the first from memory).
        Assert.InRange(one.CornerSag / one.Sag, 0.99 * 0.0255 / 0.00406, 1.01 * 0.0255 / 0.00406);
        Assert.True(one.CornerSagUnderHand > one.SagUnderHand);
    }

    private static PanelStrength Only(PanelLine line, Func<Order, Order> change) =>
        Assert.Single(Demo.Planned(change(Demo.OrderOf(line))).Strength);
}
