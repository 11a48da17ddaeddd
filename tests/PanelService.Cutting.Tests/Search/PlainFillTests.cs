using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Tests.Search;

/// <summary>Plans made at once, for orders of any size.</summary>
public sealed class PlainFillTests
{
    private const long Kerf = 4;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Types_share_sheets_that_fit_and_hold_everything(int seed)
    {
        var random = new Random(seed);
        Piece[] pieces = [.. Enumerable.Range(0, 40).Select(i => new Piece(
            random.Next(50, 400), random.Next(50, 400), random.Next(1, 60), [i % 4 == 0 ? Turning.Upright : Turning.Either, Turning.Either]))];
        var model = new Model(new CuttingProblem([new Stock(1000, 1200, 500, null), new Stock(700, 900, 260, 2)], [.. pieces], Kerf));

        var uses = PlainFill.Run(model, model.Demand, StockBox.Of(model).Most);

        int[] held = new int[model.Types.Length];
        foreach (var (column, copies) in uses)
        {
            var (width, height) = BlockMath.Size(column.Block, model.Sizes, Kerf);
            Assert.InRange(width, 1, model.Stock(column.Stock).Width);
            Assert.InRange(height, 1, model.Stock(column.Stock).Height);
            Assert.Equal(column.Counts, BlockMath.Counts(column.Block, held.Length));
            for (int t = 0; t < held.Length; t++)
            {
                held[t] += copies * column.Counts[t];
            }
        }

        Assert.All(held.Zip(model.Demand), pair => Assert.InRange(pair.First, pair.Second, int.MaxValue));
        Assert.InRange(uses.Where(use => use.Column.Stock == 1).Sum(use => use.Copies), 0, 2);

        // Rows of one type a sheet would take 38 sheets and more, twice to three times the area.
        double area = Enumerable.Range(0, held.Length).Sum(t => model.PieceArea(t) * model.Demand[t]);
        Assert.InRange(uses.Sum(use => use.Copies * model.StockArea(use.Column.Stock)), area, area * 1.5);
    }

    [Fact]
    public void Rows_stay_where_they_are_cheaper()
    {
        // Six of one type fill a sheet in rows, two a row; shelves hold no more.
        var model = new Model(new CuttingProblem(
            [new Stock(100, 120, 10, null)], [new Piece(50 - Kerf, 40 - Kerf, 12, [Turning.Upright])], Kerf));

        var uses = PlainFill.Run(model, model.Demand, StockBox.Of(model).Most);

        Assert.Equal(2, uses.Sum(use => use.Copies));
    }

    [Fact]
    public void What_no_stock_is_left_for_is_missing_and_the_rest_is_placed()
    {
        var model = new Model(new CuttingProblem(
            [new Stock(100, 100, 10, 1), new Stock(60, 60, 5, null)],
            [new Piece(90, 90, 3, [Turning.Either, Turning.None]), new Piece(50, 50, 2, [Turning.Either, Turning.Either])],
            Kerf));

        var uses = PlainFill.Run(model, model.Demand, StockBox.Of(model).Most);

        int large = Array.FindIndex(model.Sizes.ToArray(), size => size.Width == 90);
        Assert.Equal(1, uses.Sum(use => use.Copies * use.Column.Counts[large]));
        Assert.Equal(2, uses.Sum(use => use.Copies * use.Column.Counts[1 - large]));
    }

    [Fact]
    public void Pieces_without_number_that_one_sheet_holds_are_cut_from_one()
    {
        // 12 mm squares and a 10 m board, in steps of 3.125 µm, kerf 1/8 in: more than a byte counts, and than a capped pattern holds.
        var problem = new CuttingProblem(
            [new Stock(3_200_000, 3_200_000, 1000, null)], [new Piece(3840, 3840, 20_000, [Turning.Either])], Kerf: 1016);

        var result = CuttingPlanner.Plan(problem, Effort.Quick);

        Assert.Equal((1000, 1000), (result.Spent, result.LeastPossible));
    }
}
