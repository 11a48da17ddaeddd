using System.Collections.Immutable;
using CsCheck;
using PanelService.Cutting;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Cloth;

public sealed class ShelfPlannerTests
{
    private static readonly ClothSupply _roll = new()
    {
        Id = "cotton",
        Width = Inches(54),
        Sale = new SaleByRoll(Inches(216), new Money(9600), ForSale: null),
    };

    [Fact]
    public void Plans_hold_every_piece_once_within_the_cloth() => Gen
        .Select(Gen.Int[2, 70], Gen.Int[2, 70], Gen.Int[1, 90]).Array[1, 8].Sample(sizes =>
        {
            ClothPieces[] pieces = [.. sizes.Select((size, i) => Pieces(i, size.Item1, size.Item2, size.Item3))];
            foreach (var plan in Plans([Linen, _roll], pieces))
            {
                var held = plan.SelectMany(pattern => PiecesOf(pattern.Block).Select(piece => (piece.Piece, pattern.Copies)))
                    .GroupBy(piece => piece.Piece).ToDictionary(group => group.Key, group => group.Sum(piece => piece.Copies));
                Assert.Equal(pieces.Select(piece => piece.Count), pieces.Select((_, i) => held[i]));
                Assert.All(plan, pattern =>
                {
                    var size = SheetCutter.SizeOf(pattern.Block, [.. pieces.Select(piece => (piece.Width, piece.Height))], kerf: 0);
                    Assert.True(size.Width <= pattern.Stock.UsableWidth.Steps && size.Height <= pattern.Stock.Length.Steps);
                });
            }
        });

    [Fact]
    public void Plan_of_a_million_equal_pieces_is_one_pattern_and_the_rest()
    {
        // 54 in x 6 yd gives 18 pieces of 27 x 23 in, 2 across and 9 along: 55 555 rolls and one with ten.
        var plan = Plans([_roll], Pieces(0, 27, 23, 1_000_000)).MinBy(plan => plan.Sum(pattern => pattern.Copies));
        Assert.Equal([55_555, 1], plan.Select(pattern => pattern.Copies));
    }

    [Fact]
    public void Plan_takes_the_end_from_another_cloth_where_that_costs_less()
    {
        // 19 pieces: a roll of 96.00, and for the last one a step of 31.00 instead of another roll.
        long least = Plans([_roll, Linen], Pieces(0, 27, 23, 19)).Min(plan => plan.Sum(pattern => pattern.Stock.Price.Minor * pattern.Copies));
        Assert.Equal(12_700, least);
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    public void Plans_keep_to_what_is_for_sale(int rolls, int plans)
    {
        var few = _roll with { Sale = new SaleByRoll(Inches(216), new Money(9600), rolls) };
        Assert.Equal(plans, Plans([few], Pieces(0, 27, 23, 19)).Select(plan => plan.Sum(pattern => pattern.Copies)).Distinct().Count());
    }

    [Fact]
    public void Cloth_of_many_odd_sizes_and_cloths_costs_little_more_than_its_bound()
    {
        // Found by the trial of hard orders: 300 loose formats over 40 cloths spent fifteen times their bound.
        var random = new Random(1);
        PanelLine[] lines = [.. Enumerable.Range(0, 60).Select(i =>
            Line($"L{i}", random.Next(20, 350) / 10m, random.Next(20, 350) / 10m, random.Next(1, 40)) with { Surface = Surface.Loose })];
        ClothSupply[] cloths = [.. Enumerable.Range(0, 20).Select(i => new ClothSupply
        {
            Id = $"c{i}",
            Width = Inches(random.Next(400, 1200) / 10m),
            Sale = i % 2 == 0
                ? new SaleByLength(Inches(random.Next(4, 400) / 10m), new Money(500), AtMost: null)
                : new SaleByRoll(Inches(random.Next(1200, 11000) / 10m), new Money(5000), ForSale: null),
        })];

        var proof = Planned(OrderOf(lines) with { Boards = [], Cloths = [.. cloths] }).ClothProof;

        Assert.InRange(proof.Spent.Minor, proof.LeastPossible.Minor, proof.LeastPossible.Minor * 5 / 4);
    }

    private static ClothPieces Pieces(int number, decimal width, decimal height, int count) =>
        new(number, Line($"L{number}", width, height, count), Inches(width).Steps, Inches(height).Steps, count);

    private static IEnumerable<ImmutableArray<ClothPattern>> Plans(ClothSupply[] cloths, params ClothPieces[] pieces) =>
        ShelfPlanner.Plans(OrderOf() with { Cloths = [.. cloths] }, [.. pieces]);

    private static IEnumerable<PieceBlock> PiecesOf(Block block) =>
        block is StackBlock stack ? stack.Parts.SelectMany(PiecesOf) : [(PieceBlock)block];
}
