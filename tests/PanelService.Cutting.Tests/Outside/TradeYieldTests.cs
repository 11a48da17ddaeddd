namespace PanelService.Cutting.Tests.Outside;

/// <summary>
/// What sheets and cloth of the trade really give. The area figures and the cloth count are common practice; the
/// exact yields are those of a guillotine programme, worked for the trade's own notes.
/// </summary>
public sealed class TradeYieldTests
{
    // All lengths in 1/48 in, of which 1/8, 1/16 and 1/12 in are whole multiples.
    private const int Inch = 48;

    [Fact]
    public void Area_of_a_sheet_of_24_by_48_is_that_of_14_4_panels_of_8_by_10() =>
        Assert.Equal(14.4m, 24m * 48 / (8 * 10));

    [Theory]
    [InlineData(8 * Inch, 10 * Inch, 10)]
    [InlineData((8 * Inch) - 3, (10 * Inch) - 3, 10)] // 1/16 in under each way
    [InlineData((8 * Inch) - 4, 10 * Inch, 13)] // 1/12 in under in width alone
    [InlineData((8 * Inch) - 6, (10 * Inch) - 6, 14)] // 1/8 in under each way
    public void Panels_of_about_8_by_10_out_of_24_by_48_with_a_kerf_of_an_eighth(int width, int height, int yield) =>
        Assert.Equal(yield, Yield(24 * Inch, 48 * Inch, width, height, Inch / 8));

    // Common practice: 54 in by 6 yd gives 18 pieces of 27 x 23 in, two across and nine along.
    [Fact]
    public void Six_yards_of_54_inch_cloth_give_18_pieces_of_27_by_23() =>
        Assert.Equal(18, Yield(54 * Inch, 6 * 36 * Inch, 27 * Inch, 23 * Inch, 0));

    [Theory]
    [InlineData(8 * Inch, 10 * Inch, 10)]
    [InlineData((8 * Inch) - 6, (10 * Inch) - 6, 14)]
    public void Planner_needs_a_second_sheet_for_one_panel_more_than_the_yield(int width, int height, int yield)
    {
        long Sheets(int demand) => CuttingPlanner.Plan(
            new CuttingProblem([new Stock(24 * Inch, 48 * Inch, 1, null)], [new Piece(width, height, demand, [Turning.Either])], Inch / 8),
            Effort.Quick).Spent;

        Assert.Equal((1, 2), (Sheets(yield), Sheets(yield + 1)));
    }

    private static long Yield(int sheetWidth, int sheetHeight, int width, int height, int kerf) => BestPattern.Unlimited(
        sheetWidth, sheetHeight, [new Piece(width, height, int.MaxValue, [Turning.Either])], [1], kerf).Value;
}
