using PanelService.Benchmarks.Running;
using PanelService.Benchmarks.Suites;
using PanelService.Checking.Bounds;

namespace PanelService.Cutting.Tests.Search;

/// <summary>Odd sizes whose area would go on a sheet fewer than any plan needs: coarse grids tell, and the checker comes to the same.</summary>
public sealed class CoarseBoundTests
{
    [Theory]
    [InlineData(8, "odd-0", 14)]
    [InlineData(3, "odd-7", 18)]
    public void A_sheet_more_than_the_area_asks_for_is_proven(int draw, string name, int sheets)
    {
        var problem = OddFormats.All(draw).Single(one => one.Name == name).Problem;
        var stock = problem.Stocks[0];
        double area = problem.Pieces.Sum(piece => (double)(piece.Width + problem.Kerf) * (piece.Height + problem.Kerf) * piece.Demand)
            / ((double)(stock.Width + problem.Kerf) * (stock.Height + problem.Kerf));
        Assert.InRange(area, sheets - 1.1, sheets - 1.01);

        var result = CuttingPlanner.Plan(problem, Effort.Steady);

        Assert.Equal((sheets * stock.Price, sheets * stock.Price), (result.Spent, result.LeastPossible));
        Assert.Equal(BoundFinding.Right, BoundAudit.Check(problem, result).Finding);
    }
}
