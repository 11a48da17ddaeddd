using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

public sealed class ClothDrawingTests
{
    private static readonly Plan Plan = Samples.Plan("Tern Island study week", LengthUnit.Inch, Samples.Linen());

    [Fact]
    public void Every_piece_and_leftover_stands_at_its_place()
    {
        var svg = new Svg(ClothDrawing.Render(Plan, 1));

        Assert.Equal(
            Plan.Cloth[0].Pieces.Select(p => ((double)p.X.Millimetres, (double)p.Y.Millimetres, (double)p.Width.Millimetres, (double)p.Height.Millimetres)),
            svg.Classed("piece").Select(Svg.FirstBox));
        Assert.Equal(
            Plan.Cloth[0].Offcuts.Select(p => ((double)p.X.Millimetres, (double)p.Y.Millimetres, (double)p.Width.Millimetres, (double)p.Height.Millimetres)),
            svg.Classed("offcut").Select(Svg.FirstBox));
    }

    [Fact]
    public void The_panel_under_a_piece_lies_a_margin_inside()
    {
        var svg = new Svg(ClothDrawing.Render(Plan, 1));

        (double x, double y, double width, double height) = Svg.Box(svg.Classed("panel").First());

        Assert.Equal((25.4, 12.7, 8 * 25.4, 10 * 25.4), (Math.Round(x, 6), Math.Round(y, 6), Math.Round(width, 6), Math.Round(height, 6)));
    }

    [Fact]
    public void Both_selvedges_are_drawn() =>
        Assert.Equal(
            [(0, 0, 12.7, 914.4), (1562.1, 0, 12.7, 914.4)],
            new Svg(ClothDrawing.Render(Plan, 1)).Classed("band").Select(Svg.FirstBox)
                .Select(box => (box.X, box.Y, Math.Round(box.Width, 6), box.Height)));

    [Fact]
    public void A_remnant_is_named()
    {
        ClothLayout remnant = Samples.Linen() with { Source = Source.OnHand, Remnant = new("r7", Samples.Inch(62), Samples.Inch(36), 1, Money.Zero) };

        string text = ClothDrawing.Render(Samples.Plan("", LengthUnit.Inch, remnant), 1);

        Assert.Contains("remnant r7 from the rack", text, StringComparison.Ordinal);
    }

    // Across the whole cloth of 62 in a leftover has half an inch of selvedge at both sides: the label and the shelf say 61.
    [Fact]
    public void A_leftover_across_the_whole_width_is_told_without_its_selvedges()
    {
        ClothLayout cloth = Samples.Linen() with { Offcuts = [new Offcut(Length.Zero, Samples.Inch(12), Samples.Inch(62), Samples.Inch(24), Kept: true)] };

        string text = ClothDrawing.Render(Samples.Plan("", LengthUnit.Inch, cloth), 1);

        Assert.Contains("Back on the rack: 61 × 24", text, StringComparison.Ordinal);
        Assert.Contains(">keep 61 × 24<", text, StringComparison.Ordinal);
        Assert.DoesNotContain("62 × 24", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cloth_the_plan_lacks_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ClothDrawing.Render(Plan, 7));
}
