using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Yields;

namespace PanelService.Planning.Tests.Yields;

public sealed class YieldPlannerTests
{
    private static readonly BoardSupply _sheet = new()
    {
        Id = "hb3",
        Thickness = Length.FromInches(0.125m),
        Width = Length.FromInches(24),
        Height = Length.FromInches(48),
    };

    // Common practice and exact guillotine yields of a 24 × 48 in sheet with a 1/8 in kerf, by dynamic programme.
    // 7 11/12 is no whole number of steps and would be rounded up past a third of the sheet; 7.9166 is the step below.
    [Theory]
    [InlineData("8", "10", 10)]
    [InlineData("7 15/16", "9 15/16", 10)]
    [InlineData("7.9166", "10", 13)]
    [InlineData("7 7/8", "9 7/8", 14)]
    public void Answer_two_by_four_sheet_yields_what_the_trade_counts(string width, string height, int count)
    {
        BoardYield yield = Ask(Panel(width, height), _sheet);

        Assert.Equal(count, yield.Count);
        Assert.Equal(count, yield.Sheet!.Pieces.Length);
    }

    [Fact]
    public void Answer_area_alone_promises_more_than_comes_out() =>
        Assert.Equal(14.4m, Ask(Panel("8", "10"), _sheet).ByArea); // 1152 in² ÷ 80 in², common practice

    [Theory]
    [InlineData(0, Source.OnHand)]
    [InlineData(null, Source.Bought)]
    public void Answer_board_that_cannot_be_bought_comes_from_the_rack(int? forSale, Source source) =>
        Assert.Equal(source, Ask(Panel("8", "10"), _sheet with { ForSale = forSale, OnHand = 1 }).Sheet!.Source);

    [Fact]
    public void Answer_undersize_is_used_only_where_it_brings_more()
    {
        var saw = new SawSettings { Undersize = Length.FromInches(0.125m) };

        BoardYield more = Ask(Panel("8", "10"), _sheet, saw);
        BoardYield same = Ask(Panel("24", "48"), _sheet, saw);

        // 14 need 7 7/8 x 9 7/8 at the least; what the sheet leaves over then grows them to 7 29/32 x 9 57/64 on the tape.
        Assert.Equal((14, Length.FromInches(7.90625m), Length.FromInches(9.890625m)), (more.Count, more.CutWidth, more.CutHeight));
        Assert.Equal((1, Length.FromInches(24), Length.FromInches(48)), (same.Count, same.CutWidth, same.CutHeight));
    }

    [Fact]
    public void Answer_panel_that_may_not_turn_or_stands_on_grain_lies_upright()
    {
        PanelLine tall = Panel("10", "24");

        Assert.Equal(4, Ask(tall, _sheet).Count);
        Assert.Equal(2, Ask(tall with { MayTurn = false }, _sheet).Count);
        Assert.Equal(2, Ask(tall, _sheet with { Grain = Grain.Height }).Count);
    }

    [Theory]
    [InlineData("25", "49")]
    [InlineData("49", "1")]
    public void Answer_panel_larger_than_the_sheet_yields_none_and_is_not_drawn(string width, string height)
    {
        BoardYield yield = Ask(Panel(width, height), _sheet);

        Assert.Equal((0, null), (yield.Count, yield.Sheet));
    }

    [Fact]
    public void Answer_kind_or_thickness_that_is_asked_for_must_be_met()
    {
        BoardSupply hardboard = _sheet with { Kind = "hardboard" };

        Assert.Equal(10, Ask(Panel("8", "10") with { Board = "hardboard", Thickness = Length.FromInches(0.125m) }, hardboard).Count);
        Assert.Equal(0, Ask(Panel("8", "10") with { Board = "plywood" }, hardboard).Count);
        Assert.Equal(0, Ask(Panel("8", "10") with { Thickness = Length.FromInches(0.1875m) }, hardboard).Count);
        Assert.Equal(2, Ask(Panel("20", "23"), hardboard).Count); // the thickness rule asks for 3/16 in a plan
    }

    [Fact]
    public void Answer_sheets_on_hand_and_for_sale_are_added_up()
    {
        BoardYield yield = Ask(Panel("8", "10"), _sheet with { OnHand = 3, ForSale = 2 });

        Assert.Equal((30L, 50L), (yield.FromHand, yield.FromAll));
        Assert.Null(Ask(Panel("8", "10"), _sheet).FromAll);
    }

    [Fact]
    public void Answer_panel_too_small_to_be_counted_exactly_is_said_not_guessed()
    {
        Yield yield = YieldPlanner.Answer(new YieldQuestion { Units = LengthUnit.Inch, Panel = Panel("0.1", "0.11"), Boards = [_sheet] });

        Assert.Equal(_sheet, Assert.Single(yield.TooFine));
        Assert.Empty(yield.Boards);
    }

    [Fact]
    public void Answer_more_boards_than_can_be_counted_at_once_ends_with_those_that_were()
    {
        // Some 1500 sums of the two sides along 48 in: a board of which two fifths of the work allowed for one remain.
        var question = new YieldQuestion { Units = LengthUnit.Inch, Panel = Panel("0.75", "0.7"), Boards = [.. Enumerable.Repeat(_sheet, 200)] };

        Yield yield = YieldPlanner.Answer(question);

        Assert.True(yield.IsCutShort);
        Assert.InRange(yield.Boards.Length, 5, 50);
        Assert.All(yield.Boards, board => Assert.Equal(yield.Boards[0].Count, board.Count));
    }

    private static BoardYield Ask(PanelLine panel, BoardSupply board, SawSettings? saw = null) => Assert.Single(
        YieldPlanner.Answer(new YieldQuestion { Units = LengthUnit.Inch, Panel = panel, Boards = [board], Saw = saw ?? new() }).Boards);

    private static PanelLine Panel(string width, string height) => new()
    {
        Mark = "A",
        Width = Read(width),
        Height = Read(height),
        Quantity = 1,
    };

    private static Length Read(string text) => ((LengthRead)LengthText.Parse(text, LengthUnit.Inch)).Length;
}
