using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Yield;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Yield;

public sealed class YieldPlannerTests
{
    /// <summary>
    /// Exact guillotine yields of a 24 × 48 in sheet with a 1/8 in kerf, by dynamic programme. Three of 7 11/12 and two
    /// kerfs are 24 in to a hair; a length is whole steps, so a third of a step less is taken for it.
    /// </summary>
    [Theory]
    [InlineData(8, 10, 10)]
    [InlineData(7.9375, 9.9375, 10)]
    [InlineData(7.9166, 10, 13)]
    [InlineData(7.875, 9.875, 14)]
    public void Answer_for_a_2_by_4_foot_sheet_is_the_exact_yield(double width, double height, int yield) =>
        Assert.Equal(yield, Of(Line("A", (decimal)width, (decimal)height, 1)).PerSheet);

    [Fact]
    public void Answer_by_area_is_the_pencil_figure() =>
        Assert.Equal(14.4m, Of(Line("A", 8, 10, 1)).ByArea);

    [Fact]
    public void Answer_with_undersize_takes_the_smaller_size_only_as_far_as_it_must()
    {
        var answer = Of(Line("A", 8, 10, 1), new SawSettings { Undersize = Inches(0.125m) });
        Assert.Equal(14, answer.PerSheet);
        Assert.Equal(14, answer.Layout!.Pieces.Length);
        Assert.True(answer.CutWidth >= Inches(7.875m) && answer.CutHeight >= Inches(9.875m));
        Assert.All(answer.Layout.Pieces, piece => Assert.True(piece.X + piece.Width <= Inches(24) && piece.Y + piece.Height <= Inches(48)));
    }

    [Fact]
    public void Answer_for_a_board_with_grain_never_turns()
    {
        // 24 wide holds three of 7 in side by side, 48 high three of 15 in; lying turned, one 15 and one 7 high rows would give more.
        var board = Hardboard with { Grain = Grain.Height };
        var answer = YieldPlanner.Answer(new YieldQuestion { Units = LengthUnit.Inch, Panel = Line("A", 7, 15, 1), Boards = [board] });
        Assert.Equal(9, answer.Boards[0].PerSheet);
        Assert.All(answer.Boards[0].Layout!.Pieces, piece => Assert.False(piece.Turned));
    }

    [Fact]
    public void Answer_for_a_panel_larger_than_the_board_is_none()
    {
        var answer = Of(Line("A", 25, 49, 1));
        Assert.Equal(0, answer.PerSheet);
        Assert.Null(answer.Layout);
    }

    [Fact]
    public void Answer_counts_what_is_on_hand_only_where_the_board_serves()
    {
        // 16 x 20 asks for 3/16: the 1/8 boards on hand do not serve it.
        var question = new YieldQuestion
        {
            Units = LengthUnit.Inch,
            Panel = Line("A", 16, 20, 1),
            Boards = [Hardboard with { OnHand = 3 }, Hardboard with { Id = "hb5", Thickness = Inches(0.1875m), OnHand = 2 }],
        };
        var answer = YieldPlanner.Answer(question);
        Assert.False(answer.Boards[0].Serves);
        Assert.Equal(2L * answer.Boards[1].PerSheet, answer.FromHand);
    }

    private static BoardYield Of(PanelLine panel, SawSettings? saw = null) => YieldPlanner.Answer(new YieldQuestion
    {
        Units = LengthUnit.Inch,
        Panel = panel,
        Boards = [Hardboard],
        Saw = saw ?? new SawSettings(),
    }).Boards[0];
}
