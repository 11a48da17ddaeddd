using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;
using PanelService.Cutting.Tests.Outside;

namespace PanelService.Cutting.Tests.Exact;

/// <summary>Orders of a few pieces against every cut at every whole position, and against hand-made facts.</summary>
public sealed class SmallOrderTests
{
    [Fact]
    public void Least_price_of_a_tiny_order_is_that_of_brute_force()
    {
        for (int seed = 0; seed < 400; seed++)
        {
            var problem = Draw(new Random(seed));
            var model = new Model(problem);
            if (model.Types.Sum(type => type.Demand) < problem.Pieces.Sum(piece => piece.Demand))
            {
                continue;
            }

            var plan = SmallOrder.Solve(model, long.MaxValue, Work());

            Assert.NotNull(plan);
            long? price = plan.Count == 0 ? null : plan.Sum(use => model.Stock(use.Column.Stock).Price * use.Copies);
            Assert.Equal((seed, new CheapestByForce(problem).Price()), (seed, price));
            Assert.All(model.Demand, (demand, type) => Assert.True(price is null || plan.Sum(use => use.Column.Counts[type]) >= demand));
        }
    }

    [Fact]
    public void Every_set_of_a_small_order_stands_on_its_stock_as_its_block_says()
    {
        for (int seed = 1000; seed < 1200; seed++)
        {
            var problem = Draw(new Random(seed));
            var model = new Model(problem);
            foreach (var (column, _) in SmallOrder.Solve(model, long.MaxValue, Work()) ?? [])
            {
                var (width, height) = SheetCutter.SizeOf(column.Block, model.Sizes, model.Kerf);
                var stock = model.Stock(column.Stock);
                Assert.True(width <= stock.Width && height <= stock.Height, $"seed {seed}: {width} x {height}");
                Assert.Equal(column.Counts, Count(column.Block, model.Types.Length));
            }
        }
    }

    [Fact]
    public void Nothing_cheaper_than_the_least_price_is_found()
    {
        for (int seed = 0; seed < 100; seed++)
        {
            var problem = Draw(new Random(seed));
            if (new CheapestByForce(problem).Price() is { } least)
            {
                Assert.Equal([], SmallOrder.Solve(new Model(problem), least, Work()) ?? throw new InvalidOperationException("Undecided."));
            }
        }
    }

    [Fact]
    public void An_order_of_too_many_different_pieces_is_left_to_the_search()
    {
        var problem = new CuttingProblem(
            [new Stock(100, 100, 1, null)],
            [.. Enumerable.Range(10, 20).Select(side => new Piece(side, side + 1, 1, [Turning.Either]))],
            1);

        Assert.Null(SmallOrder.Solve(new Model(problem), long.MaxValue, Work()));
    }

    /// <summary>A sheet a piece: as deep as a plan can get. The price is plain.</summary>
    [Fact]
    public void Four_hundred_pieces_of_one_kind_are_decided_and_one_more_is_left_to_the_search()
    {
        CuttingProblem Of(int demand) => new([new Stock(10, 10, 3, null), new Stock(10, 10, 1, 7)], [new Piece(6, 6, demand, [Turning.Either, Turning.Either])], 0);

        Assert.Equal((393 * 3) + 7, SmallOrder.Solve(new Model(Of(400)), long.MaxValue, Work())!.Sum(use => use.Column.Stock == 0 ? 3 : 1));
        Assert.Null(SmallOrder.Solve(new Model(Of(401)), long.MaxValue, Work()));
    }

    [Fact]
    public void A_stopped_search_decides_nothing()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Null(SmallOrder.Solve(new Model(Draw(new Random(1))), long.MaxValue, new WorkMeter(1_000_000, source.Token)));
    }

    private static WorkMeter Work() => new(100_000_000, CancellationToken.None);

    private static int[] Count(Block block, int types)
    {
        int[] counts = new int[types];
        void Add(Block part)
        {
            if (part is PieceBlock piece)
            {
                counts[piece.Piece]++;
                return;
            }

            foreach (var inner in ((StackBlock)part).Parts)
            {
                Add(inner);
            }
        }

        Add(block);
        return counts;
    }

    private static CuttingProblem Draw(Random random)
    {
        Stock[] stocks = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => new Stock(
            random.Next(4, 14), random.Next(4, 14), random.Next(0, 12), random.Next(3) == 0 ? random.Next(1, 3) : null))];
        Turning[] ways = [Turning.Upright, Turning.Turned, Turning.Either, Turning.Either, Turning.Either, Turning.None];
        Piece[] pieces = [.. Enumerable.Range(0, random.Next(1, 5)).Select(_ => new Piece(
            random.Next(1, 9), random.Next(1, 9), random.Next(1, 4), [.. stocks.Select(_ => ways[random.Next(ways.Length)])]))];
        return new CuttingProblem([.. stocks], [.. pieces], random.Next(0, 3));
    }
}
