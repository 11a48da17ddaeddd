using System.Collections.Immutable;
using CsCheck;
using PanelService.Planning.Cloth;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Cloth;

/// <summary>Of plans that cost the same the cloth is cut by the one that keeps the largest remnants.</summary>
public sealed class ClothLeftoversTests
{
    private static readonly Gen<Order> _orders = Gen.Select(
        Gen.Select(Gen.Int[4, 24], Gen.Int[4, 24], Gen.Int[1, 6]).Array[1, 4],
        Gen.Select(Gen.Int[36, 62], Gen.Int[36, 108], Gen.Bool),
        Gen.Select(Gen.Int[10, 40], Gen.Int[10, 60], Gen.Int[1, 2], Gen.Int[0, 1]).Array[0, 3]).Select(OrderOfRandom);

    /// <summary>Four pieces of 26 × 10 fill 52 × 20 of a roll of 54 × 108: by hand, 54 × 88 stay in one piece, selvedges and all.</summary>
    [Fact]
    public void Roll_keeps_its_whole_width_for_as_long_as_can_be()
    {
        var roll = new ClothSupply { Id = "roll", Width = Inches(54), Selvedge = Inches(0.5m), Sale = new SaleByRoll(Inches(108), new Money(6800), ForSale: null) };
        var plan = Planned(OrderOf(Line("A", 25, 9, 4) with { Surface = Surface.Loose }) with { Cloths = [roll] });

        var largest = Assert.Single(plan.Cloth).Offcuts.Where(offcut => offcut.Kept).MaxBy(offcut => offcut.Area)!;
        Assert.Equal((Inches(54), Inches(88)), (largest.Width, largest.Height));
    }

    /// <summary>Both remnants cost nothing; one piece of 9 × 11 comes out of that of 14 × 16, whichever stands first.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Large_remnant_stays_whole_where_a_small_one_does(bool largeFirst)
    {
        Remnant[] remnants = [new("large", Inches(50), Inches(60), 1, Money.Zero), new("small", Inches(14), Inches(16), 1, Money.Zero)];
        var linen = Linen with { Remnants = [.. largeFirst ? remnants : remnants.Reverse()] };
        var plan = Planned(OrderOf(Line("A", 8, 10, 1) with { Surface = Surface.Loose }) with { Cloths = [linen] });

        Assert.Equal("small", Assert.Single(plan.Cloth).Remnant!.Id);
    }

    /// <summary>
    /// Of drawn orders: the same price, the same pieces, no remnant used more often than it is there, and what is kept of bought cloth is,
    /// the largest first, no less than the plan as it was found keeps. Of some it is more.
    /// </summary>
    [Fact]
    public void Bought_cloth_keeps_no_less_at_the_same_cost()
    {
        int larger = 0;
        _orders.Sample(
            order =>
            {
                ImmutableArray<int> counts = [.. order.Panels.Select(line => line.Wanted)];
                var sizes = CutSizes.Nominal(order);
                var found = ClothPlanner.Plan(order, counts, ready: [], new Search(null, default, default));
                if (!found.Outcome.Complete)
                {
                    return;
                }

                var gathered = ClothLeftovers.Gather(order, found, new CutRequest(counts, sizes, Ready: []), default);

                var (before, after) = (Layouts.Of(found, sizes, order.Bench), Layouts.Of(gathered, sizes, order.Bench));
                Assert.Equal(PriceOf(before), PriceOf(after));
                Assert.Equal(PiecesIn(before), PiecesIn(after));
                Assert.All(after.GroupBy(cloth => cloth.Stock), cloth => Assert.True(cloth.Sum(one => one.Copies) <= (cloth.Key.Limit ?? int.MaxValue)));
                int more = Compare(KeptOf(order, after), KeptOf(order, before));
                Assert.True(more >= 0);
                Interlocked.Add(ref larger, more);
            },
            iter: 100);

        Assert.True(larger > 0, "No remnant became larger.");
    }

    private static long PriceOf(ImmutableArray<LaidOut<ClothStock>> cloths) => cloths.Sum(cloth => cloth.Copies * cloth.Stock.Price.Minor);

    private static List<(int Line, int Count)> PiecesIn(ImmutableArray<LaidOut<ClothStock>> cloths) =>
    [
        .. cloths.SelectMany(cloth => cloth.Cuts.Pieces.Select(piece => (piece.Piece, cloth.Copies)))
            .GroupBy(one => one.Piece)
            .Select(group => (group.Key, group.Sum(one => one.Copies)))
            .Order(),
    ];

    /// <summary>What the largest piece kept of every bought cloth is worth: its area's share of the cloth's price, the dearest first.</summary>
    private static List<double> KeptOf(Order order, ImmutableArray<LaidOut<ClothStock>> cloths) =>
    [
        .. ClothLayoutMaker.Make(order, cloths, [.. order.Panels.Select(line => line.Mark)])
            .SelectMany(cloth => Enumerable.Repeat(
                cloth.CostEach.Minor * cloth.Offcuts.Where(offcut => offcut.Kept).Select(offcut => (double)offcut.Area.SquareSteps).DefaultIfEmpty().Max()
                    / (double)(cloth.Width * cloth.Length).SquareSteps,
                cloth.Copies))
            .OrderDescending(),
    ];

    private static int Compare(List<double> one, List<double> other) =>
        one.Zip(other, (a, b) => Math.Abs(a - b) < 1e-9 * b ? 0 : a.CompareTo(b)).FirstOrDefault(more => more != 0);

    private static Order OrderOfRandom(
        (int Width, int Height, int Count)[] lines, (int Width, int Length, bool ByRoll) cloth, (int Width, int Length, int Quantity, int Value)[] remnants) =>
        OrderOf([.. lines.Select((l, i) => Line($"L{i}", l.Width, l.Height, l.Count) with { Surface = Surface.Loose })]) with
        {
            Cloths =
            [
                Linen with
                {
                    Width = Inches(cloth.Width),
                    Sale = cloth.ByRoll ? new SaleByRoll(Inches(cloth.Length), new Money(6800), ForSale: null) : new SaleByLength(Inches(18), new Money(900), AtMost: null),
                    Remnants = [.. remnants.Select((r, k) => new Remnant($"r{k}", Inches(r.Width), Inches(r.Length), r.Quantity, new Money(200 * r.Value)))],
                },
            ],
        };
}
