using PanelService.Cutting.Many;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Tests.Many;

/// <summary>Ruin and recreate within given counts of stocks.</summary>
public sealed class CountsPackingTests
{
    private const long Price = 700;

    [Theory]
    [InlineData(61, 2)]
    [InlineData(62, 3)]
    public void Counts_that_were_cut_up_are_filled_again(int seed, int sheets)
    {
        var problem = ManyPieces.CutUp(seed, sheets, 7);
        var model = new Model(problem);
        var work = new WorkMeter(400_000, CancellationToken.None);

        var plan = CountsPacking.Of(model, new ColumnPool(), [sheets], sheets * Price)!.Advance(200_000, work);

        Assert.Equal(sheets, plan!.Sum(use => use.Copies));
        Assert.All(plan!, use => Assert.True(model.CanCut(use.Column.Block)));
        Assert.Equal(model.Demand, Held(model, plan!));
    }

    [Fact]
    public void What_it_packs_into_too_few_sheets_are_patterns_within_the_demand()
    {
        var model = new Model(ManyPieces.CutUp(63, 4, 7));
        var pool = new ColumnPool();
        var packing = CountsPacking.Of(model, pool, [3], 3 * Price)!;

        Assert.Null(packing.Advance(20_000, new WorkMeter(40_000, CancellationToken.None)));

        Assert.True(pool.Columns.Count > 20, $"{pool.Columns.Count} patterns");
        Assert.All(pool.Columns, column => Assert.True(model.CanCut(column.Block)));
        Assert.All(pool.Columns, column => Assert.All(column.Counts.Zip(model.Demand), pair => Assert.True(pair.First <= pair.Second)));
        Assert.Contains(pool.Columns, column => Filled(model, column) > 0.95);
    }

    [Fact]
    public void It_goes_on_where_it_stands_the_same_way_each_time()
    {
        Assert.Equal(InSteps(), InSteps());

        static string InSteps()
        {
            var model = new Model(ManyPieces.CutUp(64, 3, 9));
            var pool = new ColumnPool();
            var work = new WorkMeter(1_000_000, CancellationToken.None);
            var packing = CountsPacking.Of(model, pool, [3], 3 * Price)!;
            var steps = Enumerable.Range(0, 5).Select(_ => packing.Advance(5_000, work) is null);
            return $"{string.Join(' ', steps)}: {string.Join(' ', pool.Columns.Select(column => string.Join(',', column.Counts)))}";
        }
    }

    [Fact]
    public void Of_more_sheets_than_ten_there_is_none()
    {
        var model = new Model(ManyPieces.CutUp(65, 2, 6));

        Assert.NotNull(CountsPacking.Of(model, new ColumnPool(), [10], 10 * Price));
        Assert.Null(CountsPacking.Of(model, new ColumnPool(), [11], 11 * Price));
    }

    // Five sheets within which a plan comes into sight only after dearer ones were looked at; without that it cost 12,530.
    [Fact]
    public void A_hundred_panels_are_cut_for_what_the_bound_says()
    {
        var order = FiveBoards.Order(
            (6, 8, 5), (8, 10, 14), (8, 8, 1), (12, 16, 16), (16, 16, 5), (16, 20, 12), (20, 20, 12), (14, 18, 5), (9, 12, 14), (6, 12, 12));

        var result = CuttingPlanner.Plan(order, Effort.Steady);

        Assert.Equal((12_200, 12_200), (result.Spent, result.LeastPossible));
    }

    private static int[] Held(Model model, IReadOnlyList<ColumnUse> plan) =>
        [.. Enumerable.Range(0, model.Types.Length).Select(t => plan.Sum(use => use.Copies * use.Column.Counts[t]))];

    private static double Filled(Model model, Column column) =>
        column.Counts.Select((count, t) => count * model.PieceArea(t)).Sum() / model.StockArea(column.Stock);
}
