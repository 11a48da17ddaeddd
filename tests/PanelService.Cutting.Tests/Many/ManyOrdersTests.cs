using PanelService.Cutting.Many;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Tests.Many;

/// <summary>Plans for many different pieces by ruin and recreate.</summary>
public sealed class ManyOrdersTests
{
    private static readonly Stock[] _mixed =
        [new(100, 100, 1000, null), new(150, 120, 1700, null), new(70, 60, 0, 2), new(61, 61, 350, 3)];

    [Theory]
    [InlineData(1, 20)]
    [InlineData(2, 40)]
    [InlineData(3, 80)]
    [InlineData(4, 25)]
    public void Plan_of_many_pieces_on_mixed_stocks_is_a_valid_layout(int seed, int pieces)
    {
        var problem = ManyPieces.Draw(seed, pieces, _mixed);

        var (plan, spent) = Search(problem, units: 20_000, seed: 1).Last();

        Assert.Empty(ManyPieces.Faults(problem, plan, spent));
    }

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void Every_plan_is_cheaper_than_the_one_before_and_the_first_fill_is_among_them(int seed)
    {
        var problem = ManyPieces.Draw(seed, 50, _mixed);

        long[] all = [.. Search(problem, units: 30_000, seed: 1).Select(found => found.Spent)];
        long first = Search(problem, units: 0, seed: 1).Single().Spent;

        Assert.Equal(first, all[0]);
        Assert.Equal(all.OrderDescending().Distinct(), all);
        Assert.True(all[^1] < first, $"{all[^1]} after all work, {first} at once");
    }

    [Fact]
    public void Same_seed_and_work_give_the_same_plans()
    {
        var problem = ManyPieces.Draw(21, 60, _mixed);

        var once = Search(problem, units: 15_000, seed: 5);
        var again = Search(problem, units: 15_000, seed: 5);

        Assert.Equal(once.Count, again.Count);
        Assert.Equal(once[^1].Plan, again[^1].Plan);
    }

    [Theory]
    [InlineData(31, 2)]
    [InlineData(32, 3)]
    public void Sheets_cut_up_into_eight_pieces_each_are_put_together_again(int seed, int sheets)
    {
        var problem = ManyPieces.CutUp(seed, sheets, 8);

        var result = CuttingPlanner.Plan(problem, Effort.Steady);

        Assert.Empty(ManyPieces.Faults(problem, result.Patterns, result.Spent));
        Assert.Equal((sheets * 700L, sheets * 700L), (result.Spent, result.LeastPossible));
    }

    [Fact]
    public void Dual_feasible_bound_never_exceeds_the_sheets_that_were_cut_up()
    {
        for (int seed = 0; seed < 300; seed++)
        {
            int sheets = 1 + (seed % 4);
            var table = new PieceTable(new Model(ManyPieces.CutUp(seed, sheets, 6 + (seed % 9))));

            Assert.InRange(DualFeasibleBound.Sheets(table, out _), 1, sheets);
        }
    }

    [Theory]
    [InlineData(51, 51, Turning.Upright, 7)]
    [InlineData(51, 51, Turning.Either, 7)]
    [InlineData(34, 51, Turning.Upright, 4)]
    [InlineData(34, 34, Turning.Either, 2)]
    public void Dual_feasible_bound_sees_what_area_does_not(int width, int height, Turning turning, int sheets)
    {
        // On 100 × 100 only so many lie side by side: one of 51, two of 34.
        var problem = new CuttingProblem([new Stock(100, 100, 1, null)], [new Piece(width, height, 7, [turning])], 0);

        Assert.Equal(sheets, DualFeasibleBound.Sheets(new PieceTable(new Model(problem)), out _));
    }

    [Fact]
    public void Stop_ends_the_search_with_the_plan_at_hand()
    {
        var problem = ManyPieces.Draw(41, 60, _mixed);
        using var source = new CancellationTokenSource();
        source.Cancel();

        var result = CuttingPlanner.Plan(problem, Effort.Thorough, null, source.Token);

        Assert.True(result.StoppedEarly);
        Assert.Empty(ManyPieces.Faults(problem, result.Patterns, result.Spent));
    }

    // What is kept of a plan may cost as much as the whole of it, or more than its bound, where some sheets are free.
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(-300, -300, 0)]
    [InlineData(long.MaxValue, -300, 1)]
    public void Free_stocks_are_filled_once_and_nothing_is_looked_for_below_nothing(long below, long bound, int plans)
    {
        var model = new Model(ManyPieces.Draw(51, 12, [new(100, 100, 0, 40)]));
        int found = 0;

        ManyOrders.Improve(
            model, new ManyRequest(below, bound, 20_000, 1), new WorkMeter(long.MaxValue, CancellationToken.None), _ => found++);

        Assert.Equal(plans, found);
    }

    private static List<(PatternUse[] Plan, long Spent)> Search(CuttingProblem problem, long units, ulong seed)
    {
        var model = new Model(problem);
        var plans = new List<(PatternUse[] Plan, long Spent)>();
        ManyOrders.Improve(
            model, new ManyRequest(long.MaxValue, 0, units, seed), new WorkMeter(long.MaxValue, CancellationToken.None), uses =>
            {
                var (patterns, missing) = model.Translate(uses.Select(u => new PatternUse(u.Column.Stock, u.Column.Block, u.Copies)));
                Assert.Equal(0, missing.Sum());
                plans.Add(([.. patterns], uses.Sum(u => model.Stock(u.Column.Stock).Price * u.Copies)));
            });
        return plans;
    }
}
