using PanelService.Cutting.Leftovers;
using Xunit;

namespace PanelService.Cutting.Tests.Leftovers;

/// <summary>The largest kept leftovers of small orders, against a search that tries every guillotine cut at every place where one can matter.</summary>
public sealed class LargestLeftoverTests
{
    private const long Kerf = 2;

    private static readonly (long Width, long Height) Smallest = (5, 7);

    [Fact]
    public void No_other_plan_out_of_the_same_sheets_keeps_a_dearer_piece()
    {
        var wrong = new List<string>();
        int held = 0;
        int beyondStrips = 0;
        for (int seed = 1; seed <= 70; seed++)
        {
            var (problem, result) = Drawn(seed);
            if (result.Patterns.Sum(use => use.Copies) > 2)
            {
                continue;
            }

            var gathered = LeftoverPlanner.Gather(problem, result, stock => FrameOf(problem, stock));
            int[] stocks = [.. result.Patterns.SelectMany(use => Enumerable.Repeat(use.Stock, use.Copies)).Order()];
            Assert.Equal(stocks, gathered.Patterns.SelectMany(use => Enumerable.Repeat(use.Stock, use.Copies)).Order());
            Assert.Equal(problem.Pieces.Select(piece => piece.Demand), CountsOf(problem, gathered));

            var (found, isStrip) = DearestOf(problem, gathered);
            double best = new EveryCut(problem, Smallest).Dearest(stocks, [.. problem.Pieces.Select(piece => piece.Demand)]);
            wrong.AddRange(Math.Abs(found - best) > 1e-6 ? [$"seed {seed}: {found} for {best}"] : []);
            held++;
            beyondStrips += isStrip ? 0 : 1;
        }

        Assert.Empty(wrong);
        Assert.True(held >= 50 && beyondStrips >= 10, $"{held} orders held, {beyondStrips} of them with a leftover that is no strip across");
    }

    private static (CuttingProblem Problem, CuttingResult Result) Drawn(int seed)
    {
        var random = new Random(seed);
        Piece[] pieces = [.. Enumerable.Range(0, random.Next(2, 5)).Select(_ => new Piece(
            random.Next(6, 22), random.Next(6, 22), random.Next(1, 3), random.Next(3) == 0 ? [Turning.Upright, Turning.Upright] : [Turning.Either, Turning.Either]))];
        var problem = new CuttingProblem([new Stock(26, 38, 700, null), new Stock(20, 28, 420, null)], [.. pieces], Kerf);
        return (problem, CuttingPlanner.Plan(problem, Effort.Quick));
    }

    private static int[] CountsOf(CuttingProblem problem, CuttingResult result)
    {
        int[] counts = new int[problem.Pieces.Length];
        foreach (var piece in result.Patterns.SelectMany(use => Enumerable.Repeat(CutsOf(problem, use).Pieces, use.Copies)).SelectMany(pieces => pieces))
        {
            counts[piece.Piece]++;
        }

        return counts;
    }

    private static SheetCuts CutsOf(CuttingProblem problem, PatternUse use) => SheetCutter.Cut(
        use.Block, FrameOf(problem, use.Stock) with { ForLeftover = use.ForLeftover }, [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))]);

    private static SheetFrame FrameOf(CuttingProblem problem, int stock) =>
        new(problem.Stocks[stock].Width, problem.Stocks[stock].Height, EdgeTrim: 0, problem.Kerf) { SmallestKept = Smallest };

    private static (double Worth, bool IsStrip) DearestOf(CuttingProblem problem, CuttingResult result) => result.Patterns
        .SelectMany(use => CutsOf(problem, use).Leftovers
            .Where(one => EveryCut.IsKept(Smallest, one.At.Width, one.At.Height))
            .Select(one => (
                EveryCut.Worth(problem.Stocks[use.Stock], one.At.Width * one.At.Height),
                one.At.Width == problem.Stocks[use.Stock].Width || one.At.Height == problem.Stocks[use.Stock].Height)))
        .DefaultIfEmpty((0, true))
        .Max();
}
