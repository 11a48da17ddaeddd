using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;
using PanelService.Cutting.Tests.Outside;

namespace PanelService.Cutting.Tests.Exact;

/// <summary>Counts of stocks with next to nothing to spare, against brute force.</summary>
public sealed class TightCoverTests
{
    [Fact]
    public void Tight_counts_are_decided_as_brute_force_decides_them()
    {
        int plans = 0, impossible = 0;
        for (int seed = 0; seed < 600; seed++)
        {
            var random = new Random(seed);
            var problem = Draw(random);
            var model = new Model(problem);
            if (model.Demand.Sum() < problem.Pieces.Sum(piece => piece.Demand))
            {
                continue;
            }

            var answer = TightCover.Solve(model, [.. model.Stocks.Select(s => problem.Stocks[s].Limit!.Value)], [], Work());
            bool possible = new CheapestByForce(problem).Price() is not null;

            Assert.True(answer.Plan is null || possible, $"seed {seed}: a plan where there is none");
            Assert.True(!answer.Impossible || !possible, $"seed {seed}: called impossible, and is not");
            Assert.True(answer.Plan is null || IsWhole(answer.Plan, model), $"seed {seed}: the plan does not hold what is wanted");
            plans += answer.Plan is null ? 0 : 1;
            impossible += answer.Impossible ? 1 : 0;
        }

        Assert.InRange(plans, 20, 600);
        Assert.InRange(impossible, 100, 600);
    }

    /// <summary>Two sheets of 174 x 173 ripped into three columns each, every column crosscut once, kerf 1: no two pieces alike.</summary>
    [Fact]
    public void Sheets_cut_up_without_waste_are_put_together_again()
    {
        var pieces = new List<Piece>();
        foreach (int[] columns in (int[][])[[31, 67, 77], [53, 59, 63]])
        {
            foreach (int width in columns)
            {
                int first = width + 6, second = 173 - 1 - first;
                pieces.Add(new Piece(width - 1, first, 1, [Turning.Either]));
                pieces.Add(new Piece(width - 1, second, 1, [Turning.Either]));
            }
        }

        var problem = new CuttingProblem([new Stock(174, 173, 5, null)], [.. pieces], 1);
        var model = new Model(problem);

        var answer = TightCover.Solve(model, [2], [], Work());

        Assert.NotNull(answer.Plan);
        Assert.True(IsWhole(answer.Plan, model));
        Assert.True(TightCover.Solve(model, [1], [], Work()).Impossible);
    }

    [Fact]
    public void Plans_are_found_among_the_patterns_that_waste_least_where_all_are_too_many()
    {
        int few = 0, many = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            var random = new Random(seed);
            Piece[] pieces = [.. CutUp(60, 90, random).Concat(CutUp(40, 40, random)).GroupBy(size => size)
                .Select(same => new Piece(same.Key.Width, same.Key.Height, same.Count(), [Turning.Either, Turning.Either]))];
            var model = new Model(new CuttingProblem([new Stock(60, 90, 3, 1), new Stock(40, 40, 1, 1)], [.. pieces], Kerf: 0));
            int[] areas = [.. model.Sizes.Select(size => (int)(size.Width * size.Height))];

            var some = TightCover.Solve(model, [1, 1], areas, new TightEffort(600, 1_000_000), Work());
            var all = TightCover.Solve(model, [1, 1], areas, new TightEffort(100_000, 10_000_000), Work());

            Assert.False(some.Impossible || all.Impossible, $"seed {seed}: called impossible, and was cut up just so");
            Assert.True(some.Plan is null || IsWhole(some.Plan, model), $"seed {seed}");
            Assert.True(all.Plan is null || IsWhole(all.Plan, model), $"seed {seed}");
            few += some.Plan is null ? 0 : 1;
            many += all.Plan is null ? 0 : 1;
        }

        Assert.Equal(60, many);
        Assert.InRange(few, 6, 54);
    }

    /// <summary>More sheets than a search one after another can choose for: the integer programme that takes its place may hold too much.</summary>
    [Fact]
    public void Plans_of_many_sheets_hold_just_what_is_wanted()
    {
        int plans = 0;
        for (int seed = 0; seed < 6; seed++)
        {
            var random = new Random(seed);
            Piece[] pieces = [.. Enumerable.Range(0, 16).SelectMany(_ => CutUp(50, 70, random)).Skip(3).GroupBy(size => size)
                .Select(same => new Piece(same.Key.Width, same.Key.Height, same.Count(), [Turning.Either]))];
            var model = new Model(new CuttingProblem([new Stock(50, 70, 3, 16)], [.. pieces], Kerf: 0));
            int[] areas = [.. model.Sizes.Select(size => (int)(size.Width * size.Height))];

            var answer = TightCover.Solve(model, [16], areas, new TightEffort(20_000, 1_000_000), Work());

            Assert.False(answer.Impossible, $"seed {seed}");
            Assert.True(answer.Plan is null || IsWhole(answer.Plan, model), $"seed {seed}: the plan does not hold what is wanted");
            plans += answer.Plan is null ? 0 : 1;
        }

        Assert.InRange(plans, 1, 6);
    }

    /// <summary>A sheet cut through at random, in steps of ten, until every part is small.</summary>
    private static IEnumerable<(int Width, int Height)> CutUp(int width, int height, Random random)
    {
        if (Math.Max(width, height) <= 30 && (random.Next(3) > 0 || width * height <= 200))
        {
            return [(Math.Min(width, height), Math.Max(width, height))];
        }

        if (width < height)
        {
            return CutUp(height, width, random);
        }

        int first = 10 * random.Next(1, width / 10);
        return CutUp(first, height, random).Concat(CutUp(width - first, height, random));
    }

    private static WorkMeter Work() => new(100_000_000, CancellationToken.None);

    private static bool IsWhole(IReadOnlyList<ColumnUse> plan, Model model) =>
        model.Demand.Select((demand, type) => plan.Sum(use => use.Column.Counts[type] * use.Copies) == demand).All(same => same)
        && plan.All(use => Fits(use.Column, model));

    private static bool Fits(Column column, Model model)
    {
        var (width, height) = SheetCutter.SizeOf(column.Block, model.Sizes, model.Kerf);
        return width <= model.Stock(column.Stock).Width && height <= model.Stock(column.Stock).Height;
    }

    private static CuttingProblem Draw(Random random)
    {
        Stock[] stocks = [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => new Stock(
            random.Next(6, 12), random.Next(6, 12), random.Next(1, 12), random.Next(1, 3)))];
        int kerf = random.Next(0, 2);
        double left = stocks.Sum(stock => (double)stock.Width * stock.Height * stock.Limit!.Value) * (0.75 + (0.3 * random.NextDouble()));
        var pieces = new List<Piece>();
        while (pieces.Count < 6 && left > 0)
        {
            var piece = new Piece(
                random.Next(2, 9), random.Next(2, 9), random.Next(1, 4), [.. stocks.Select(_ => random.Next(3) == 0 ? Turning.Upright : Turning.Either)]);
            pieces.Add(piece);
            left -= (double)(piece.Width + kerf) * (piece.Height + kerf) * piece.Demand;
        }

        return new CuttingProblem([.. stocks], [.. pieces], kerf);
    }
}
