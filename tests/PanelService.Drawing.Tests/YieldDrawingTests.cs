using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Yields;

namespace PanelService.Drawing.Tests;

/// <summary>
/// Common practice: a 24 × 48 in sheet is 14.4 areas of 8 × 10 in, and yields 10 of them with a 1/8 in kerf.
/// </summary>
public sealed class YieldDrawingTests
{
    [Fact]
    public void Ten_8_by_10_are_drawn_beside_the_area_figure()
    {
        Yield yield = Ask(8, 10);

        string text = YieldDrawing.Render(yield, yield.Boards[0]);

        var svg = new Svg(text);
        Assert.Equal(10, svg.Classed("piece").Count());
        string strip = string.Concat(svg.Classed("strip").Single().Value);
        Assert.Contains("10 out of one sheet", strip, StringComparison.Ordinal);
        Assert.Contains("by area alone 14.4", strip, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_that_yields_nothing_has_no_drawing()
    {
        Yield yield = Ask(30, 50);

        Assert.Throws<ArgumentException>(() => YieldDrawing.Render(yield, yield.Boards[0]));
    }

    private static Yield Ask(decimal width, decimal height) => YieldPlanner.Answer(new YieldQuestion
    {
        Units = LengthUnit.Inch,
        Panel = new PanelLine { Mark = "A", Width = Samples.Inch(width), Height = Samples.Inch(height), Quantity = 1 },
        Boards = [Samples.SmallSheet],
    });
}
