using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;
using PanelService.Planning.SawRun;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.SawRun;

public sealed class FewestSettingsTests
{
    private static readonly decimal[] _sides = [4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18];

    // Of more settings there are too many orders to try all of them.
    private const int MostOrdered = 4;

    /// <summary>Small batches, forty at a time; some are left out, 200 and more are compared.</summary>
    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 7).Select(i => i * 40)];

    [Theory]
    [MemberData(nameof(Starts))]
    public void Plan_of_a_small_batch_has_no_more_settings_and_changes_than_trying_every_run_finds(int start)
    {
        int compared = 0, proven = 0;
        for (int seed = start; seed < start + 40; seed++)
        {
            var order = Small(seed);
            var plan = Planned(order);
            var force = new FewestByForce(plan.Sheets, order.Saw.Kerf.Steps, order.Saw.LeastFenceLength.Steps, SawPractice.LeastAtFence.Steps);

            Assert.True(plan.SawProof.Proven, $"seed {seed}: {plan.SawProof}");
            int? least = plan.SawProof.Settings > 6 ? null : force.Least();
            compared += least is null ? 0 : 1;
            Assert.True(least is null || least == plan.SawProof.Settings, $"seed {seed}: {plan.SawProof}, by force {least}");
            int steps = least is { } settings and <= MostOrdered ? force.LeastSteps(settings, plan.SawProof.Steps) : plan.SawProof.Steps;
            Assert.InRange(steps, plan.SawProof.LeastSteps, plan.SawProof.Steps);
            proven += least is not null && plan.SawProof.ChangesProven ? 1 : 0;
        }

        Assert.True(compared >= 20, $"{compared} compared");
        Assert.True(proven >= compared * 3 / 4, $"the changes of {proven} of {compared} are proven");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(120)]
    [InlineData(250)]
    [InlineData(500)]
    [InlineData(1000)]
    public void Run_of_a_batch_too_large_for_the_whole_graph_still_cuts_every_sheet(long graphWork)
    {
        var order = OrderOf(Line("A", 8, 10, 12), Line("B", 5, 7, 20), Line("C", 11, 14, 6), Line("D", 6, 9, 9), Line("E", 4, 12, 7));
        var sheets = Planned(order).Sheets;

        var run = new SettingsRun(order.Saw, sheets, all: true, SawEffort.Ordinary with { Settings = 20_000 }, graphWork, default).Plan();

        Assert.NotNull(run);
        Assert.Equal(run.Sheets.Sum(sheet => sheet.Cuts.Length), run.Run.Sum(step => step.Passes.Length));
        Assert.InRange(run.Proof.LeastPossible, 1, run.Proof.Settings);
    }

    [Fact]
    public void Plan_counts_settings_as_the_run_has_them()
    {
        var plan = Planned(OrderOf(Line("A", 8, 10, 12), Line("B", 5, 7, 20), Line("C", 11, 14, 6)));

        Assert.Equal(plan.SawRun.Select(step => (step.Tool, step.Fence)).Distinct().Count(), plan.SawProof.Settings);
        Assert.Equal(plan.SawRun.Length, plan.SawProof.Steps);
        Assert.InRange(plan.SawProof.LeastPossible, 1, plan.SawProof.Settings);
    }

    [Fact]
    public void Plan_trims_all_four_edges_of_a_sheet_first_and_keeps_the_board_at_the_fence()
    {
        var plan = Planned(OrderOf(Line("A", 8, 10, 6)) with { Saw = new SawSettings { EdgeTrim = Inches(0.25m) } });

        Assert.All(plan.Sheets, sheet => Assert.Equal([true, true, true, true], sheet.Cuts.Take(4).Select(cut => cut.IsTrim)));
        Assert.All(plan.Sheets, sheet => Assert.DoesNotContain(sheet.Cuts.Skip(4), cut => cut.IsTrim));
        var trims = plan.SawRun.SelectMany(step => step.Passes.Select(pass => (step.Fence, pass)))
            .Where(one => plan.Sheets[one.pass.Sheet - 1].Cuts[one.pass.Cut - 1].IsTrim).ToList();
        Assert.All(trims, trim => Assert.True(trim.Fence > Inches(20)));
        Assert.Contains(trims, trim => trim.pass.EdgeBy == EdgeMaker.Factory);
        Assert.Contains(trims, trim => trim.pass.EdgeBy == EdgeMaker.Cut);
    }

    [Fact]
    public void Plan_cuts_panels_of_one_size_between_fence_and_blade_where_that_takes_no_more_settings()
    {
        // Out of 24 in at a kerf of 3/32 in the fence at 11 29/32 leaves 12 beyond the blade: two settings as well, and no panel matches another.
        var order = OrderOf(Line("A", 12, 14, 2)) with { Saw = new SawSettings { Kerf = Inches(0.09375m) } };

        var plan = Planned(order);

        Assert.Equal([Inches(12), Inches(14)], plan.SawRun.Select(step => step.Fence).Order());
        Assert.Empty(plan.Unmatched);
    }

    [Fact]
    public void Plan_says_which_panels_are_not_all_cut_to_size_at_one_setting()
    {
        // Two rows of one panel each fill the sheet but for one kerf: one of the two is what the only cut leaves over.
        var plan = Planned(OrderOf(Line("A", 24, 23.9375m, 2)) with { Boards = [Hardboard with { Thickness = Inches(0.1875m) }] });

        var one = Assert.Single(plan.Unmatched);
        var tolerance = Assert.Single(plan.Tolerances);
        Assert.Equal((Length.Zero, Inches(0.015625m), false, true), (tolerance.Width, tolerance.Height, tolerance.Fits, tolerance.HidesGap));
        Assert.Equal(Inches(0.048m), tolerance.OutOfSquare);
        Assert.Equal(("A", PanelSide.Height, Inches(23.9375m), 1, 1), (one.Mark, one.Side, one.Size, one.AtOneSetting, one.Otherwise));
    }

    [Theory]
    [InlineData(0, false, true)]
    [InlineData(0.0625, true, true)]
    [InlineData(0.24, true, false)]
    public void Tolerance_is_held_against_the_frame(double undersize, bool fits, bool hidesGap)
    {
        // Common practice: a panel 1/16 to 1/8 in under nominal sits in a standard frame; the lip is 1/4 in and more.
        var sized = new[] { PanelSide.Width, PanelSide.Height }.Select(side => new PanelService.Planning.SawRun.SizedPanel(
            "A", side, Inches(10 - (decimal)undersize), new PanelService.Planning.SawRun.SizedBy(1, AtFence: true, 1), 1));

        var one = Assert.Single(PanelService.Planning.SawRun.Tolerances.Of(OrderOf(Line("A", 10, 10, 1)), sized));

        Assert.Equal((fits, hidesGap), (one.Fits, one.HidesGap));
    }

    [Fact]
    public void Least_fence_length_decides_what_goes_on_the_sled()
    {
        var order = OrderOf(Line("A", 8, 10, 12));
        var careful = Planned(order with { Saw = new SawSettings { LeastFenceLength = Inches(12) } });
        var none = Planned(order with { Saw = new SawSettings { LeastFenceLength = Length.Zero } });

        Assert.Contains(careful.SawRun, step => step.Tool == SawTool.Sled);
        Assert.DoesNotContain(none.SawRun, step => step.Tool == SawTool.Sled);
    }

    private static Order Small(int seed)
    {
        var random = new Random(seed);
        var lines = Enumerable.Range(0, random.Next(1, 4)).Select(i => Line(
            ((char)('A' + i)).ToString(), _sides[random.Next(_sides.Length)], _sides[random.Next(_sides.Length)], random.Next(1, 4)));
        return OrderOf([.. lines]) with { Effort = Effort.Steady, Boards = [Hardboard with { Thickness = Inches(0.1875m) }] };
    }
}
