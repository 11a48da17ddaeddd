using PanelService.Cutting.Lengths;
using PanelService.Cutting.Search;
using PanelService.Cutting.Tests.Outside;

namespace PanelService.Cutting.Tests.Lengths;

/// <summary>Values under which rectangles hold as little more as can be than all pieces are worth.</summary>
public sealed class TightValuesTests
{
    /// <summary>Of 25 x 25 four squares of 10 remain in one piece or another, so that two of them are half of what it holds.</summary>
    [Fact]
    public void One_piece_that_a_rectangle_holds_twice_as_often_leaves_as_much_again()
    {
        var model = new Model(new CuttingProblem([new Stock(25, 25, 1, 1)], [new Piece(10, 10, 2, [Turning.Upright])], Kerf: 0));

        Assert.Equal(1, TightValues.Find(model, [1], [1], Work()).Share(model.Demand, [1]), 9);
    }

    [Fact]
    public void No_values_drawn_at_random_are_tighter_and_those_of_a_plan_leave_something()
    {
        int tight = 0;
        for (int seed = 0; seed < 120; seed++)
        {
            var problem = TinyProblem.Of(seed);
            var model = new Model(problem);
            if (model.Demand.Length == 0 || model.Demand.Sum() < problem.Pieces.Sum(piece => piece.Demand))
            {
                continue;
            }

            var random = new Random(seed);
            int[] counts = [.. model.Stocks.Select(s => problem.Stocks[s].Limit ?? 1)];
            double[] areas = [.. model.Demand.Select((_, t) => model.PieceArea(t))];
            double found = TightValues.Find(model, counts, areas, Work()).Share(model.Demand, counts);
            var pricing = new Pricing(model, Work());

            // Below 0 there is no plan, and nothing tighter is looked for.
            for (int i = 0; i < 200 && found >= 0; i++)
            {
                double[] values = [.. areas.Select(area => area * random.NextDouble())];
                Assert.True(found <= pricing.Evaluate(values).Share(model.Demand, counts) + 2e-5, $"seed {seed}: values of {found} are not the tightest");
            }

            var limited = problem with { Stocks = [.. model.Stocks.Select((s, i) => problem.Stocks[s] with { Limit = counts[i] })] };
            bool possible = model.Stocks.Length == problem.Stocks.Length && new CheapestByForce(limited).Price() is not null;
            Assert.True(found >= 0 || !possible, $"seed {seed}: a plan exists, and {found} is left to waste");
            tight += found < 0 ? 1 : 0;
        }

        Assert.InRange(tight, 5, 115);
    }

    private static WorkMeter Work() => new(100_000_000, default);
}
