using System.Collections.Immutable;
using PanelService.Cutting.Tests.Outside;
using Xunit;

namespace PanelService.Cutting.Tests;

public sealed class SameStocksPlannerTests
{
    private static readonly ImmutableArray<Turning> _either = [Turning.Either];

    // Two strips side by side on one sheet, the two others one above the other: the first does not fit beside the tall ones.
    [Fact]
    public void Pieces_that_must_be_shared_out_in_another_way_are()
    {
        var problem = new CuttingProblem(
            [new Stock(15375, 17938, 303, null)],
            [new Piece(5938, 17938, 2, _either), new Piece(9500, 7500, 1, [Turning.Upright]), new Piece(6500, 8000, 1, _either)],
            Kerf: 0);

        Assert.Equal(2, SameStocksPlanner.Plan(problem, [2]).Sum(use => use.Copies));
        Assert.Empty(SameStocksPlanner.Plan(problem, [1]));
    }

    [Fact]
    public void Stocks_that_are_not_used_stay_out_of_it()
    {
        var problem = new CuttingProblem(
            [new Stock(10, 10, 1, null), new Stock(20, 10, 5, 1)], [new Piece(10, 10, 2, [Turning.Upright, Turning.Upright])], Kerf: 0);

        Assert.Equal([1], SameStocksPlanner.Plan(problem, [0, 1]).Select(use => use.Stock));
        Assert.Empty(SameStocksPlanner.Plan(problem, [1, 0]));
    }
}
