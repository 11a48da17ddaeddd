using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using Xunit.Abstractions;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Boards;

public sealed class LimitedBoardsTests(ITestOutputHelper told)
{
    private const int Orders = 40;

    /// <summary>Small orders, forty at a time.</summary>
    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 3).Select(i => i * Orders)];

    [Theory]
    [MemberData(nameof(Starts))]
    public void Plan_under_limits_stands_between_its_bound_and_what_trying_every_cut_finds(int start)
    {
        int met = 0, proven = 0;
        for (int seed = start; seed < start + Orders; seed++)
        {
            var small = Small.Of(seed);
            int? least = new LimitedByForce(small.Panels, small.Limits).Least(small.Sheets);
            var outcome = Planner.Plan(small.ToOrder());

            Assert.True(least is null == outcome is CannotBeMade, $"seed {seed}: by force {least}, {outcome}");
            if (outcome is Planned { Plan: var plan })
            {
                Assert.True(plan.BoardProof.LeastPossible.Minor <= least, $"seed {seed}: at least {plan.BoardProof.LeastPossible} is said, {least} by force");
                Assert.True(plan.BoardProof.Spent.Minor >= least, $"seed {seed}: spent {plan.BoardProof.Spent}, {least} by force");
                met += plan.BoardProof.Spent.Minor == least ? 1 : 0;
                proven += plan.BoardProof.Spent == plan.BoardProof.LeastPossible ? 1 : 0;
            }
            else
            {
                met++;
                proven++;
            }
        }

        told.WriteLine($"{met} of {Orders} at the least price, {proven} proven");
        Assert.True(met >= Orders * 4 / 5, $"{met} of {Orders} at the least price, {proven} proven");
    }

    [Fact]
    public void Sheet_larger_than_the_car_is_first_cut_by_the_supplier_and_every_part_fits()
    {
        var plan = Planned(OrderOf(Line("A", 8, 10, 30)) with
        {
            Boards = [Hardboard with { Width = Inches(48), Height = Inches(96) }],
            Saw = new SawSettings { Carry = new SizeLimit(Inches(30), Inches(50)), SupplierKerf = Inches(0.1875m) },
        });

        var sheet = Assert.Single(plan.Sheets);
        var first = sheet.Cuts.Where(cut => cut.BySupplier).ToList();
        Assert.Equal(3, first.Count);
        Assert.Equal([1, 2, 3], first.Select(cut => cut.Number));
        Assert.All(first, cut => Assert.Equal(Inches(0.1875m), cut.SupplierKerf));
        Assert.All(sheet.Cuts.Skip(3), cut => Assert.True(
            Length.Min(cut.Width, cut.Height) <= Inches(30) && Length.Max(cut.Width, cut.Height) <= Inches(50)));
        Assert.DoesNotContain(plan.SawRun.SelectMany(step => step.Passes), pass => pass.Cut <= 3);
        Assert.Contains(plan.Warnings, warning => warning.Id == "supplier-cuts");
    }

    [Fact]
    public void Sheet_too_heavy_for_one_is_first_cut_by_the_supplier()
    {
        // 3.175 mm at 1000 kg/m³ (AS/NZS 1859 board data): 9.44 kg for 48 × 96 in; half of it is 4.72.
        var order = OrderOf(Line("A", 8, 10, 30)) with { Boards = [Hardboard with { Width = Inches(48), Height = Inches(96) }] };

        var light = Planned(order with { Saw = new SawSettings { HeaviestGrams = 9500 } });
        var heavy = Planned(order with { Saw = new SawSettings { HeaviestGrams = 4800 } });

        Assert.DoesNotContain(light.Sheets.SelectMany(sheet => sheet.Cuts), cut => cut.BySupplier);
        Assert.Single(Assert.Single(heavy.Sheets).Cuts, cut => cut.BySupplier);
        Assert.Equal(light.BoardProof, heavy.BoardProof);
    }

    [Fact]
    public void Board_in_the_studio_needs_no_car_but_hands()
    {
        var onHand = Hardboard with { OnHand = 2, ForSale = 0 };
        var order = OrderOf(Line("A", 8, 10, 4)) with { Boards = [onHand] };

        var plan = Planned(order with { Saw = new SawSettings { Carry = new SizeLimit(Inches(12), Inches(12)) } });
        var refused = Assert.IsType<CannotBeMade>(Planner.Plan(order with { Saw = new SawSettings { Largest = new SizeLimit(Inches(12), Inches(12)) } }));

        Assert.DoesNotContain(plan.Sheets.SelectMany(sheet => sheet.Cuts), cut => cut.BySupplier);
        Assert.Equal(CannotReason.NoBoardFits, refused.Reason);
    }

    [Fact]
    public void Waste_too_large_both_ways_is_parted_in_few_cuts()
    {
        // Ten parts of 24 × 40 in have the sheet's area: nine cuts at least. Four strips of four take fifteen.
        var plan = Planned(OrderOf(Line("A", 12, 11, 1)) with
        {
            Boards = [Hardboard with { Width = Inches(120), Height = Inches(80) }],
            Saw = new SawSettings { Carry = new SizeLimit(Inches(24), Inches(40)), SupplierKerf = Inches(0.1875m) },
        });

        Assert.InRange(Assert.Single(plan.Sheets).Cuts.Count(cut => cut.BySupplier), 9, 15);
    }

    [Fact]
    public void Sheet_that_the_fence_cannot_trim_whole_is_first_cut_both_ways()
    {
        // As it lies both ways a factory edge of 48 in would have to be trimmed by a fence that reaches 40: a cut each way, and one for
        // what is then still longer than the car.
        var plan = Planned(OrderOf(Line("A", 24, 30, 1)) with
        {
            Boards = [Hardboard with { Thickness = Inches(0.25m), Width = Inches(48), Height = Inches(96), EdgeTrim = Inches(0.0625m) }],
            Saw = new SawSettings { Carry = new SizeLimit(Inches(48), Inches(48)), FenceReach = Inches(40), SupplierKerf = Inches(0.09375m) },
        });

        Assert.Equal(3, Assert.Single(plan.Sheets).Cuts.Count(cut => cut.BySupplier));
    }

    [Theory]
    [InlineData("carry", "saw.carry, 6 × 12 in: it must hold 8 × 10 in")]
    [InlineData("heaviest", "saw.heaviest, 0.2 lb: the panel weighs 0.4 lb")]
    [InlineData("fence", "saw.fenceReach, 4 in: a fence that reaches 10 in would do")]
    public void Panel_no_limit_leaves_a_way_for_is_refused_with_what_would_be_right(string limit, string said)
    {
        var saw = limit switch
        {
            "carry" => new SawSettings { Carry = new SizeLimit(Inches(6), Inches(12)) },
            "heaviest" => new SawSettings { HeaviestGrams = 100 },
            _ => new SawSettings { FenceReach = Inches(4) },
        };
        var board = limit == "fence" ? Hardboard with { Width = Inches(8.25m), Height = Inches(10.25m) } : Hardboard;

        var refused = Assert.IsType<CannotBeMade>(Planner.Plan(OrderOf(Line("A", 8, 10, 4)) with { Boards = [board], Saw = saw }));

        Assert.Equal(CannotReason.NoBoardFits, refused.Reason);
        Assert.Contains(said, refused.Marks[0].Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void Fence_that_no_cut_meets_changes_nothing()
    {
        var order = OrderOf(Line("A", 8, 10, 12), Line("B", 5, 7, 20), Line("C", 11, 14, 6));

        var with = Planned(order with { Saw = new SawSettings { FenceReach = Inches(48) } });

        Assert.Equal(PlanText(Planned(order)), PlanText(with));
    }

    private static string PlanText(Plan plan) => string.Join(
        "\n",
        plan.Sheets.SelectMany(sheet => sheet.Cuts.Select(cut => cut.ToString()).Concat(sheet.Pieces.Select(piece => piece.ToString())))
            .Concat(plan.SawRun.Select(step => $"{step.Tool} {step.Fence} {string.Join(", ", step.Passes)}")));

    /// <summary>A small order, in half inches.</summary>
    private sealed record Small(
        IReadOnlyList<(int Width, int Height, int Count)> Panels,
        IReadOnlyList<(int Width, int Height, int Price)> Sheets,
        LimitedByForce.Limits Limits)
    {
        public static Small Of(int seed)
        {
            var random = new Random(seed);
            int kerf = random.Next(1, 3);
            (int Width, int Height, int Price)[] sheets =
                [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => (random.Next(10, 19), random.Next(14, 25), random.Next(100, 400)))];
            (int, int, int)[] panels = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => (random.Next(3, 11), random.Next(4, 12), random.Next(1, 4)))];
            return new Small(panels, sheets, new LimitedByForce.Limits(
                kerf,
                random.Next(1, 4),
                random.Next(3) == 0 ? int.MaxValue : random.Next(5, 14),
                random.Next(4) == 0 ? (int.MaxValue, int.MaxValue) : (random.Next(8, 13), random.Next(10, 20))));
        }

        public Order ToOrder() => OrderOf([.. Panels.Select((panel, i) => Line($"P{i}", panel.Width / 2m, panel.Height / 2m, panel.Count))]) with
        {
            Boards =
            [
                .. Sheets.Select((sheet, i) => Hardboard with
                {
                    Id = $"b{i}", Width = Inches(sheet.Width / 2m), Height = Inches(sheet.Height / 2m), Price = new Money(sheet.Price), OnHand = 0, ForSale = null,
                }),
            ],
            Saw = new SawSettings
            {
                Kerf = Inches(Limits.Kerf / 2m),
                SupplierKerf = Inches(Limits.SupplierKerf / 2m),
                FenceReach = Limits.FenceReach == int.MaxValue ? null : Inches(Limits.FenceReach / 2m),
                Carry = Limits.Handled.A == int.MaxValue ? null : new SizeLimit(Inches(Limits.Handled.A / 2m), Inches(Limits.Handled.B / 2m)),
            },
        };
    }
}
