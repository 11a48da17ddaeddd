using System.Globalization;
using PanelService.Cutting.Leftovers;
using Xunit;

namespace PanelService.Cutting.Tests.Leftovers;

public sealed class LeftoverPlannerTests
{
    private static readonly (long Width, long Height) SmallestKept = (4, 6);

    /// <summary>Seven strips of 24 × 8 on sheets of 24 × 48, no kerf: six fill one sheet, and one leaves 24 × 40 of the other, by hand.</summary>
    [Fact]
    public void Strips_leave_one_large_piece()
    {
        var problem = new CuttingProblem(
            [new Stock(24, 48, 610, null)], [new Piece(24, 8, 7, [Turning.Upright])], Kerf: 0);
        var spread = new CuttingResult([Strips(4), Strips(3)], 1220, 1220, [0], StoppedEarly: false);

        var gathered = LeftoverPlanner.Gather(problem, spread, FramesOf(problem, SmallestKept));

        Assert.Equal(1220, PriceOf(problem, gathered));
        Assert.Equal([1, 6], gathered.Patterns.Select(use => CountOf(use.Block)).Order());
    }

    [Fact]
    public void A_leftover_too_small_to_keep_is_no_reason_to_change()
    {
        var problem = new CuttingProblem(
            [new Stock(24, 48, 610, null)], [new Piece(24, 44, 2, [Turning.Upright])], Kerf: 0);
        var result = CuttingPlanner.Plan(problem, Effort.Quick);

        Assert.Same(result, LeftoverPlanner.Gather(problem, result, FramesOf(problem, SmallestKept)));
    }

    /// <summary>Whatever is gathered costs the same, holds the same pieces, and keeps no less in its dearest piece.</summary>
    [Fact]
    public void Random_orders_keep_price_and_pieces()
    {
        int larger = 0;
        for (int seed = 1; seed <= 40; seed++)
        {
            var random = new Random(seed);
            Piece[] pieces =
            [
                .. Enumerable.Range(0, random.Next(2, 6)).Select(_ =>
                    new Piece(random.Next(5, 20), random.Next(5, 20), random.Next(1, 9), [Turning.Either, Turning.Either])),
            ];
            var problem = new CuttingProblem([new Stock(24, 48, 610, null), new Stock(48, 48, 1090, null)], [.. pieces], Kerf: 1);
            var result = CuttingPlanner.Plan(problem, Effort.Quick);

            var gathered = LeftoverPlanner.Gather(problem, result, FramesOf(problem, SmallestKept));

            Assert.Equal(result.Spent, PriceOf(problem, gathered));
            Assert.Equal(pieces.Select(p => p.Demand), PatternCounts.Of(gathered.Patterns, pieces.Length));
            Assert.All(gathered.Patterns, use => Assert.True(Fits(problem, use)));
            double before = DearestOf(problem, result, SmallestKept);
            double after = DearestOf(problem, gathered, SmallestKept);
            Assert.True(after >= before, $"seed {seed}: {before} became {after}");
            larger += after > before ? 1 : 0;
        }

        Assert.True(larger > 0, "No leftover became larger.");
    }

    /// <summary>What costs nothing is worth nothing, and is kept all the same: fewer sizes are no reason to keep a smaller piece.</summary>
    [Fact]
    public void Sheets_that_cost_nothing_keep_no_smaller_piece()
    {
        var smaller = new List<string>();
        for (int seed = 1; seed <= 40; seed++)
        {
            var random = new Random(seed);
            Piece[] pieces =
            [
                .. Enumerable.Range(0, random.Next(2, 5)).Select(_ =>
                    new Piece(random.Next(8, 30), random.Next(8, 30), random.Next(1, 4), [Turning.Either])),
            ];
            var problem = new CuttingProblem([new Stock(48, 96, 0, 4)], [.. pieces], Kerf: 1);
            var result = CuttingPlanner.Plan(problem, Effort.Quick);

            var gathered = LeftoverPlanner.Gather(problem, result, FramesOf(problem, SmallestKept));

            long before = LargestOf(problem, result, FramesOf(problem, SmallestKept));
            long after = LargestOf(problem, gathered, FramesOf(problem, SmallestKept));
            smaller.AddRange(after < before ? [$"seed {seed}: {before} became {after}"] : []);
        }

        Assert.Empty(smaller);
    }

    /// <summary>
    /// Four pieces under one another, 28 + 19 + 19 + 18 and three kerfs, lie in 17 × 96 of a sheet of 48 × 96: a fence that reaches
    /// 30 leaves 30 × 96, by hand. The largest leftover of all is wider, and cannot be cut off in one piece.
    /// </summary>
    [Fact]
    public void Strip_is_kept_where_the_fence_does_not_reach_a_larger_leftover()
    {
        var problem = new CuttingProblem(
            [new Stock(48, 96, 610, null)],
            [
                new Piece(16, 28, 1, [Turning.Either]),
                new Piece(18, 8, 1, [Turning.Either]),
                new Piece(19, 17, 2, [Turning.Either]),
            ],
            Kerf: 1);
        SheetFrame FrameOf(int stock) => FramesOf(problem, SmallestKept)(stock) with { Fence = new FenceSides(Reach: 30, LeastAtFence: 1) };

        var gathered = LeftoverPlanner.Gather(problem, CuttingPlanner.Plan(problem, Effort.Quick), FrameOf);

        Assert.Equal(30 * 96, LargestOf(problem, gathered, FrameOf));
    }

    /// <summary>Two orders whose cheapest two parts of the one sheet cost less than the part that holds everything; sizes in 3.125 µm.</summary>
    [Theory]
    [InlineData("693x837 317x100x2 150x291x1 307x200x1", 320, 1016, 693 * 530.0)]
    [InlineData("420x540 163.9x260x2 160x150x3", 320, 480, 103.1 * 540)]
    public void Leftover_is_as_large_where_two_parts_of_a_sheet_would_cost_less_than_one(string order, int stepsPerMillimetre, int kerf, double least)
    {
        double[][] sizes = [.. order.Split(' ').Select(text => text.Split('x').Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray())];
        var problem = new CuttingProblem(
            [new Stock(Steps(sizes[0][0]), Steps(sizes[0][1]), 1400, null)],
            [.. sizes.Skip(1).Select(one => new Piece(Steps(one[0]), Steps(one[1]), (int)one[2], [Turning.Either]))],
            kerf);

        var gathered = LeftoverPlanner.Gather(problem, CuttingPlanner.Plan(problem, Effort.Quick), FramesOf(problem, (32512, 48768)));

        Assert.True(DearestOf(problem, gathered, (32512, 48768)) >= WorthOf(problem.Stocks[0], least * stepsPerMillimetre * stepsPerMillimetre));

        long Steps(double millimetres) => (long)Math.Round(millimetres * stepsPerMillimetre);
    }

    private static Func<int, SheetFrame> FramesOf(CuttingProblem problem, (long Width, long Height) smallest) =>
        stock => new SheetFrame(problem.Stocks[stock].Width, problem.Stocks[stock].Height, 0, problem.Kerf) { SmallestKept = smallest };

    private static PatternUse Strips(int count) =>
        new(0, new StackBlock(Axis.Y, [.. Enumerable.Repeat(new PieceBlock(0, false), count)]), 1);

    private static long PriceOf(CuttingProblem problem, CuttingResult result) =>
        result.Patterns.Sum(use => problem.Stocks[use.Stock].Price * use.Copies);

    private static int CountOf(Block block) => block is StackBlock stack ? stack.Parts.Sum(CountOf) : 1;

    private static bool Fits(CuttingProblem problem, PatternUse use)
    {
        var (width, height) = SizeOf(problem, use.Block);
        return width <= problem.Stocks[use.Stock].Width && height <= problem.Stocks[use.Stock].Height;
    }

    /// <summary>The area of the largest leftover kept, as the plan is laid out.</summary>
    private static long LargestOf(CuttingProblem problem, CuttingResult result, Func<int, SheetFrame> frameOf) => result.Patterns
        .SelectMany(use => SheetCutter.Cut(
            use.Block, frameOf(use.Stock) with { ForLeftover = use.ForLeftover }, [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))]).Leftovers)
        .Where(one => Math.Min(one.At.Width, one.At.Height) >= SmallestKept.Width && Math.Max(one.At.Width, one.At.Height) >= SmallestKept.Height)
        .Select(one => one.At.Width * one.At.Height)
        .DefaultIfEmpty()
        .Max();

    /// <summary>What the dearest leftover kept is worth, as the plan is laid out.</summary>
    private static double DearestOf(CuttingProblem problem, CuttingResult result, (long Width, long Height) smallest) => result.Patterns
        .SelectMany(use =>
        {
            var stock = problem.Stocks[use.Stock];
            return SheetCutter.Cut(use.Block, FramesOf(problem, smallest)(use.Stock) with { ForLeftover = use.ForLeftover }, [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))]).Leftovers
                .Where(one => (one.At.Width >= smallest.Width && one.At.Height >= smallest.Height) || (one.At.Width >= smallest.Height && one.At.Height >= smallest.Width))
                .Select(one => WorthOf(stock, (double)one.At.Width * one.At.Height));
        })
        .DefaultIfEmpty()
        .Max();

    private static double WorthOf(Stock stock, double area) => stock.Price * area / ((double)stock.Width * stock.Height);

    private static (long Width, long Height) SizeOf(CuttingProblem problem, Block block)
    {
        if (block is PieceBlock { Piece: var index, Turned: var turned })
        {
            var piece = problem.Pieces[index];
            return turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
        }

        var stack = (StackBlock)block;
        var sizes = stack.Parts.Select(part => SizeOf(problem, part)).ToArray();
        long gaps = (sizes.Length - 1) * problem.Kerf;
        return stack.Axis == Axis.X
            ? (sizes.Sum(s => s.Width) + gaps, sizes.Max(s => s.Height))
            : (sizes.Max(s => s.Width), sizes.Sum(s => s.Height) + gaps);
    }
}
