using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Tests.Exact;

/// <summary>A rest of ten sheets that patterns used in halves would cover.</summary>
public sealed class RandomRoundingTests
{
    // Nine pieces of three types fill a sheet, worth one each.
    private static readonly int[][] Patterns = [[9, 0, 0], [0, 9, 0], [0, 0, 9], [5, 4, 0], [0, 5, 4], [4, 0, 5], [3, 3, 3], [7, 1, 1]];

    [Fact]
    public void What_is_taken_by_chance_and_by_search_covers_the_rest_from_the_stocks_left()
    {
        int[] open = [37, 31, 22];

        var cover = Cover(open, sheets: 10);

        Assert.True(cover is not null, "no cover found");
        Assert.InRange(cover.Sum(use => use.Copies), 1, 10);
        int[] held = [.. open.Select((_, t) => cover.Sum(use => use.Copies * use.Column.Counts[t]))];
        Assert.All(open.Zip(held), pair => Assert.True(pair.Second >= pair.First, $"{string.Join(' ', held)} for {string.Join(' ', open)}"));
    }

    [Theory]
    [InlineData(37, 31, 23)] // one piece more than ten sheets hold
    [InlineData(87, 2, 1)] // a pattern of 7, 1 and 1 leaves one of the second, and none holds it with eight of the first
    public void What_no_patterns_cover_is_not_covered(params int[] open) => Assert.Null(Cover(open, sheets: 10));

    [Fact]
    public void A_thousand_panels_are_cut_for_what_the_bound_says()
    {
        // 52 sheets with an eighth of a sheet to waste in all: chosen for all at once, no plan was found within the work given.
        (int Width, int Height, int Demand)[] formats =
        [
            (5, 7, 20), (11, 14, 80), (6, 8, 160), (5, 5, 160), (8, 10, 180), (12, 12, 100), (20, 24, 60), (22, 28, 140), (9, 12, 40), (24, 36, 60),
        ];

        var result = CuttingPlanner.Plan(FiveBoards.Order(formats), Effort.Steady);

        Assert.Equal(154_060, result.Spent);
        Assert.Equal(result.Spent, result.LeastPossible);
    }

    private static List<ColumnUse>? Cover(int[] open, int sheets)
    {
        var work = new WorkMeter(10_000_000, CancellationToken.None);
        Column[] columns = [.. Patterns.Select(counts => new Column(0, counts, new PieceBlock(0, false)))];
        var vector = new DualVector([1, 1, 1], 0, [9]);
        (Column, double)[] uses = [.. columns.Select(column => (column, (double)sheets / columns.Length))];
        return new RandomRounding(columns, vector, work).Cover(new WholePart([], open, [sheets]), uses);
    }
}
