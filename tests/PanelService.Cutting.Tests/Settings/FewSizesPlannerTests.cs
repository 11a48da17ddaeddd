using CsCheck;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Settings;

namespace PanelService.Cutting.Tests.Settings;

/// <summary>Whatever is swapped, the plan stays whole, of the same stocks, and every pattern can be cut.</summary>
public sealed class FewSizesPlannerTests
{
    private const double Work = 0.1;

    private static readonly Gen<CuttingProblem> Problems = Gen.Select(
        Gen.Select(Gen.Int[3, 14], Gen.Int[3, 18], Gen.Int[1, 15]).Array[2, 7], Gen.Int[0, 2], Gen.Bool)
        .Select((sizes, kerf, two) => new CuttingProblem(
            two ? [new Stock(24, 48, 610, null), new Stock(30, 20, 0, 2)] : [new Stock(24, 48, 610, null)],
            [.. sizes.Select(size => new Piece(size.Item1, size.Item2, size.Item3, two ? [Turning.Either, Turning.Upright] : [Turning.Either]))],
            kerf));

    [Fact]
    public void Find_keeps_price_stocks_and_every_piece() => Problems.Sample(
        problem =>
        {
            var plan = CuttingPlanner.Plan(problem, Effort.Quick);
            if (!plan.Complete)
            {
                return;
            }

            var sisters = FewSizesPlanner.Find(problem, plan, (4, 6), Work);

            Assert.All(sisters, sister => AssertWhole(problem, plan, sister));
            Assert.DoesNotContain(sisters, sister => sister.Patterns.SequenceEqual(plan.Patterns));
            Assert.All(sisters, sister => Assert.Single(sisters, other => other.Patterns.SequenceEqual(sister.Patterns)));
        },
        iter: 60);

    [Fact]
    public void Find_gives_the_same_every_time() => Problems.Sample(
        problem =>
        {
            var plan = CuttingPlanner.Plan(problem, Effort.Quick);
            Assert.Equal(
                FewSizesPlanner.Find(problem, plan, (4, 6), Work).SelectMany(sister => sister.Patterns),
                FewSizesPlanner.Find(problem, plan, (4, 6), Work).SelectMany(sister => sister.Patterns));
        },
        iter: 10);

    private static void AssertWhole(CuttingProblem problem, CuttingResult plan, CuttingResult sister)
    {
        Assert.Equal(Stocks(plan), Stocks(sister));
        int[] made = new int[problem.Pieces.Length];
        foreach (var use in sister.Patterns)
        {
            for (int copy = 0; copy < use.Copies; copy++)
            {
                BlockMath.Count(use.Block, made);
            }

            var (width, height) = BlockMath.Size(use.Block, [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))], problem.Kerf);
            Assert.True(width <= problem.Stocks[use.Stock].Width && height <= problem.Stocks[use.Stock].Height);
            Assert.True(LiesAsAllowed(problem, use.Block, use.Stock));
        }

        Assert.Equal(problem.Pieces.Select(piece => piece.Demand), made);
    }

    private static IEnumerable<(int Stock, int Copies)> Stocks(CuttingResult plan) =>
        plan.Patterns.GroupBy(use => use.Stock).Select(group => (group.Key, group.Sum(use => use.Copies))).Order();

    private static bool LiesAsAllowed(CuttingProblem problem, Block block, int stock) => block switch
    {
        PieceBlock piece => problem.Pieces[piece.Piece].On[stock].HasFlag(piece.Turned ? Turning.Turned : Turning.Upright),
        StackBlock stack => stack.Parts.All(part => LiesAsAllowed(problem, part, stock)),
        _ => false,
    };
}
