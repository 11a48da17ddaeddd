using PanelService.Cutting.Leftovers;
using Xunit;

namespace PanelService.Cutting.Tests.Leftovers;

/// <summary>Of what costs nothing the large pieces stay whole.</summary>
public sealed class SparedStocksTests
{
    private static readonly (long Width, long Height) SmallestKept = (4, 6);

    /// <summary>One panel of 8 × 10 and two offcuts for nothing: by hand, the one of 12 × 14 does, whichever stands first.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Small_offcut_is_used_where_it_does(bool largeFirst)
    {
        Stock[] stocks = [new(24, 40, 0, 1), new(12, 14, 0, 1), new(24, 48, 610, null)];
        var problem = ProblemOf(largeFirst ? stocks : [stocks[1], stocks[0], stocks[2]], new Piece(8, 10, 1, [Turning.Either, Turning.Either, Turning.Either]));

        var gathered = GatherPlanned(problem);

        Assert.Equal(12, problem.Stocks[Assert.Single(gathered.Patterns).Stock].Width);
    }

    /// <summary>Twelve panels of 8 × 10, a sheet of 24 × 48 that holds ten of them, and offcuts that hold one each: all at no cost.</summary>
    [Fact]
    public void Offcuts_are_used_up_before_a_whole_sheet_is_cut_into()
    {
        var problem = ProblemOf(
            [new(24, 48, 0, 2), new(12, 14, 0, 5), new(9, 11, 0, 8)], new Piece(8, 10, 12, [Turning.Either, Turning.Either, Turning.Either]));

        Assert.DoesNotContain(GatherPlanned(problem).Patterns, use => use.Stock == 0);
    }

    /// <summary>
    /// Both panels lie on the sheet that is bought, and an offcut for nothing would hold the small one: cut from that, the sheet
    /// keeps 24 × 17, by hand.
    /// </summary>
    [Fact]
    public void Offcut_for_nothing_takes_a_panel_off_a_sheet_that_then_keeps_more()
    {
        var problem = ProblemOf(
            [new(24, 48, 610, null), new(12, 12, 0, 1)],
            new Piece(24, 30, 1, [Turning.Upright, Turning.None]),
            new Piece(10, 10, 1, [Turning.Either, Turning.Either]));
        var both = new StackBlock(Axis.Y, [new PieceBlock(0, Turned: false), new PieceBlock(1, Turned: false)]);
        var planned = new CuttingResult([new PatternUse(0, both, 1)], 610, 610, [0, 0], StoppedEarly: false);

        var gathered = LeftoverPlanner.Gather(problem, planned, FrameOf(problem));

        Assert.Equal([0, 1], gathered.Patterns.Select(use => use.Stock).Order());
        Assert.Equal(610, gathered.Spent);
    }

    /// <summary>
    /// Whatever is spared, price and pieces stay, no stock is used more often than there is, and what lies on the rack afterwards, the
    /// largest piece first, is no less than before. The planner by itself cuts into more in some of these orders.
    /// </summary>
    [Fact]
    public void Random_racks_keep_no_smaller_pieces()
    {
        int larger = 0;
        for (int seed = 1; seed <= 60; seed++)
        {
            var random = new Random(seed);
            Stock[] stocks = [.. Enumerable.Range(0, random.Next(2, 6)).Select(_ => new Stock(random.Next(10, 40), random.Next(10, 40), 0, random.Next(1, 3))), new(24, 48, 610, null)];
            Piece[] pieces =
            [
                .. Enumerable.Range(0, random.Next(1, 4)).Select(_ =>
                    new Piece(random.Next(5, 20), random.Next(5, 20), random.Next(1, 4), [.. stocks.Select(_ => Turning.Either)])),
            ];
            var problem = ProblemOf(stocks, pieces);
            var planned = CuttingPlanner.Plan(problem, Effort.Quick);

            var gathered = LeftoverPlanner.Gather(problem, planned, FrameOf(problem));

            Assert.Equal(planned.Spent, gathered.Patterns.Sum(use => use.Copies * stocks[use.Stock].Price));
            Assert.Equal(pieces.Select(piece => piece.Demand), PatternCounts.Of(gathered.Patterns, pieces.Length));
            Assert.All(Enumerable.Range(0, stocks.Length), s => Assert.True(UsedOf(gathered, s) <= (stocks[s].Limit ?? int.MaxValue), $"seed {seed}: stock {s}"));
            int more = Compare(OnRack(problem, gathered), OnRack(problem, planned));
            Assert.True(more >= 0 || planned.Spent > 0, $"seed {seed}: a smaller piece is kept");
            larger += more > 0 ? 1 : 0;
        }

        Assert.True(larger > 0, "Nothing was spared.");
    }

    private static int UsedOf(CuttingResult plan, int stock) => plan.Patterns.Where(use => use.Stock == stock).Sum(use => use.Copies);

    /// <summary>The areas of what costs nothing and is not cut into, and of the largest leftover of every sheet, the largest first.</summary>
    private static List<long> OnRack(CuttingProblem problem, CuttingResult plan)
    {
        var whole = Enumerable.Range(0, problem.Stocks.Length)
            .Where(s => problem.Stocks[s].Limit is not null)
            .SelectMany(s => Enumerable.Repeat(problem.Stocks[s].Width * problem.Stocks[s].Height, problem.Stocks[s].Limit!.Value - UsedOf(plan, s)));
        var left = plan.Patterns.SelectMany(use => Enumerable.Repeat(
            SheetCutter.Cut(use.Block, FrameOf(problem)(use.Stock) with { ForLeftover = use.ForLeftover }, [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))]).Leftovers
                .Where(one => Math.Min(one.At.Width, one.At.Height) >= SmallestKept.Width && Math.Max(one.At.Width, one.At.Height) >= SmallestKept.Height)
                .Select(one => one.At.Width * one.At.Height)
                .DefaultIfEmpty()
                .Max(),
            use.Copies));
        return [.. whole.Concat(left).OrderDescending()];
    }

    private static int Compare(List<long> one, List<long> other) =>
        one.Zip(other, (a, b) => a.CompareTo(b)).FirstOrDefault(more => more != 0, one.Count.CompareTo(other.Count));

    private static CuttingProblem ProblemOf(Stock[] stocks, params Piece[] pieces) => new([.. stocks], [.. pieces], Kerf: 1);

    private static CuttingResult GatherPlanned(CuttingProblem problem) =>
        LeftoverPlanner.Gather(problem, CuttingPlanner.Plan(problem, Effort.Quick), FrameOf(problem));

    private static Func<int, SheetFrame> FrameOf(CuttingProblem problem) =>
        stock => new SheetFrame(problem.Stocks[stock].Width, problem.Stocks[stock].Height, 0, problem.Kerf) { SmallestKept = SmallestKept };
}
