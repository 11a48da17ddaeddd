using System.Collections.Immutable;
using PanelService.Cutting.Leftovers;
using Xunit;

namespace PanelService.Cutting.Tests.Leftovers;

public sealed class WishChoiceTests
{
    /// <summary>The worth of the wishes of small orders, against trying every choice of them and every cut; nothing is found above that.</summary>
    [Fact]
    public void Wishes_are_worth_as_much_as_the_same_sheets_can_hold()
    {
        var wrong = new List<string>();
        int held = 0;
        int made = 0;
        for (int seed = 1; seed <= 60; seed++)
        {
            var (problem, wishes) = Drawn(seed);
            var result = CuttingPlanner.Plan(problem, Effort.Quick);
            int[] stocks = [.. result.Patterns.SelectMany(use => Enumerable.Repeat(use.Stock, use.Copies)).Order()];
            if (stocks.Length > 2)
            {
                continue;
            }

            long best = MostWorth(problem, wishes, stocks);
            var patterns = WishChoice.Of(problem, result, wishes, best - 1);
            int[] counts = PatternCounts.Of(patterns, problem.Pieces.Length + wishes.Length);
            long found = best == 0 ? 0 : wishes.Select((wish, w) => wish.Worth * counts[problem.Pieces.Length + w]).Sum();
            wrong.AddRange(found != best ? [$"seed {seed}: {found} for {best}"] : []);
            if (!patterns.IsEmpty)
            {
                Assert.Equal(problem.Pieces.Select(piece => piece.Demand), counts.Take(problem.Pieces.Length));
                Assert.All(wishes.Select((wish, w) => (wish.Piece.Demand, Made: counts[problem.Pieces.Length + w])), one => Assert.True(one.Made <= one.Demand));
                Assert.Equal(stocks, patterns.SelectMany(use => Enumerable.Repeat(use.Stock, use.Copies)).Order());
            }

            Assert.Empty(WishChoice.Of(problem, result, wishes, best));
            held++;
            made += best > 0 ? 1 : 0;
        }

        Assert.Empty(wrong);
        Assert.True(held >= 40 && made >= 25, $"{held} orders held, {made} of them with room for a wish");
    }

    private static (CuttingProblem Problem, ImmutableArray<WishedPiece> Wishes) Drawn(int seed)
    {
        var random = new Random(seed);
        Piece[] pieces = [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => new Piece(random.Next(4, 13), random.Next(4, 13), random.Next(1, 3), [Turning.Either, Turning.Either]))];
        WishedPiece[] wishes =
        [
            .. Enumerable.Range(0, 2).Select(_ => new WishedPiece(
                new Piece(random.Next(3, 8), random.Next(3, 8), random.Next(1, 3), [Turning.Upright, random.Next(2) == 0 ? Turning.Either : Turning.None]),
                random.Next(1, 9))),

            // As large as a panel: the engine takes the two for one.
            new WishedPiece(pieces[0] with { Demand = 1 }, random.Next(5, 20)),
        ];
        var problem = new CuttingProblem([new Stock(17, 22, 700, null), new Stock(13, 18, 420, null)], [.. pieces], Kerf: 1);
        return (problem, [.. wishes.OrderByDescending(wish => wish.Worth)]);
    }

    private static long MostWorth(CuttingProblem problem, ImmutableArray<WishedPiece> wishes, int[] stocks)
    {
        var cuts = new EveryCut(problem with { Pieces = [.. problem.Pieces, .. wishes.Select(wish => wish.Piece)] }, smallest: (1, 1));
        return EveryCut.Below([.. wishes.Select(wish => wish.Piece.Demand)])
            .Where(made => cuts.Fits(stocks, [.. problem.Pieces.Select(piece => piece.Demand), .. made]))
            .Max(made => made.Zip(wishes, (count, wish) => count * wish.Worth).Sum());
    }
}
