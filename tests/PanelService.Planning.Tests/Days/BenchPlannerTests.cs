using CsCheck;
using PanelService.Planning.Costing;
using PanelService.Planning.Days;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Tests.Days;

/// <summary>What is done at the bench: stacks, weights, steps, what comes first, what comes later.</summary>
public sealed class BenchPlannerTests
{
    // 20 kg on 12 × 16 in is 1.58 kPa; 1 psi there wants 87 kg (worked: 0.12387 m², 9.80665 m/s²).
    [Theory]
    [InlineData(1.58, 20)]
    [InlineData(6.894757, 87)]
    public void Weight_on_the_12_by_16_stack_is_as_worked(double kilopascals, double kilograms)
    {
        var plan = Demo.Planned(Demo.OrderOf(Cloth("A", 12, 16, 3)) with { Bench = new BenchSettings { Pressure = (decimal)kilopascals } });
        Assert.Equal(kilograms, Math.Round((double)Assert.Single(plan.Bench.Stacks).Weight.Grams / 1000), 0);
    }

    [Fact]
    public void Panels_of_one_size_share_stacks_turned_or_not()
    {
        var plan = Demo.Planned(Demo.OrderOf(Cloth("A", 8, 10, 7), Cloth("B", 10, 8, 6), Cloth("C", 5, 7, 2)) with { Bench = new BenchSettings { StackHeight = 5 } });
        Assert.Equal([5L, 5L, 3L, 2L], plan.Bench.Stacks.Select(stack => stack.Count).OrderDescending());
        Assert.Equal(13, plan.Bench.Stacks.Where(stack => stack.Long == Demo.Inches(10)).Sum(stack => stack.Count));
        Assert.All(plan.Bench.Stacks, stack => Assert.Equal(stack.Count, stack.Separators));
    }

    // Open time 10 min at 4 min a panel: two are laid, then the weight goes on.
    [Fact]
    public void Open_time_limits_how_many_are_laid_in_a_round()
    {
        var stack = Assert.Single(Demo.Planned(Demo.OrderOf(Cloth("A", 8, 10, 5))).Bench.Stacks);
        Assert.Equal((2, 3L), (stack.PerRound, stack.Rounds));
        var quick = Demo.OrderOf(Cloth("A", 8, 10, 5)) with { Adhesives = [Demo.Glue with { OpenMinutes = 3 }] };
        Assert.Equal(5, Assert.Single(Demo.Planned(quick).Bench.Stacks).Rounds);
    }

    [Fact]
    public void Rush_lines_go_into_the_press_first_and_their_stack_is_filled_with_others_of_the_size()
    {
        var order = Demo.OrderOf(Cloth("A", 8, 10, 12), Cloth("B", 8, 10, 3) with { First = true }, Cloth("C", 5, 7, 4) with { First = true }) with
        {
            Bench = new BenchSettings { StackHeight = 5, PressSpaces = 2 },
        };
        var bench = Demo.Planned(order).Bench;
        Assert.Equal([true, true, false, false], bench.Stacks.Select(stack => stack.First));
        Assert.Equal([new MarkCount("B", 3), new MarkCount("A", 2)], bench.Stacks.First(stack => stack.Panels.Any(part => part.Mark == "B")).Panels.AsEnumerable());
        var glued = bench.Jobs.Where(job => job.Job.Task == BenchTask.Glue).ToList();
        int lastFirst = glued.Where(job => bench.Stacks[job.Job.Stack - 1].First).Max(job => job.HandsUntil);
        Assert.All(glued.Where(job => !bench.Stacks[job.Job.Stack - 1].First), job => Assert.True(job.Start >= lastFirst));
    }

    [Fact]
    public void Line_to_be_mounted_later_is_cut_but_neither_glued_nor_pressed_until_it_is_wanted()
    {
        var plan = Demo.Planned(Demo.OrderOf(Cloth("A", 8, 10, 4), Cloth("K", 8, 10, 6) with { MountLater = true }));
        Assert.Equal(6, plan.Sheets.Sum(sheet => sheet.Copies * sheet.Pieces.Count(piece => piece.Mark == "K")));
        Assert.Equal(6, plan.Cloth.Sum(cloth => cloth.Copies * cloth.Pieces.Count(piece => piece.Mark == "K")));
        Assert.DoesNotContain(plan.Liquids.SelectMany(use => use.Shares), share => share.Mark == "K");
        Assert.DoesNotContain(plan.Bench.Stacks.SelectMany(stack => stack.Panels), part => part.Mark == "K");
        Assert.Equal("K", Assert.Single(plan.Bench.MountLater));

        var later = BenchPlanner.Later(plan, new ScheduleSettings());
        Assert.Equal(new MarkCount("K", 6), Assert.Single(Assert.Single(later.Stacks).Panels));
        Assert.Equal([BenchTask.Glue, BenchTask.Trim], later.Jobs.Select(job => job.Job.Task));
    }

    [Fact]
    public void Steps_of_each_surface_are_those_a_painter_counts()
    {
        var ground = new LiquidSupply { Id = "ground", Coats = 2, CoverageArea = Demo.Glue.CoverageArea, CoverageVolume = Demo.Glue.CoverageVolume, Containers = Demo.Glue.Containers };
        var order = Demo.OrderOf(
            Cloth("A", 8, 10, 1),
            Demo.Line("B", 8, 10, 1) with { Surface = Surface.Primed },
            Demo.Line("C", 8, 10, 1),
            Demo.Line("D", 8, 10, 1) with { Surface = Surface.Loose }) with
        {
            Primers = [ground],
            Adhesives = [Demo.Glue with { Faces = 2 }],
        };
        var steps = Demo.Planned(order).Bench.Recipes.ToDictionary(recipe => recipe.Mark, recipe => recipe.Steps.Select(step => step.Step));
        Assert.Equal(
            [BenchStep.Cut, BenchStep.CutCloth, BenchStep.Ease, BenchStep.Dust, BenchStep.Seal, BenchStep.Glue, BenchStep.Press, BenchStep.Trim, BenchStep.Edges, BenchStep.Label, BenchStep.Rest],
            steps["A"]);
        Assert.Equal(
            [BenchStep.Cut, BenchStep.Ease, BenchStep.Dust, BenchStep.Coat, BenchStep.Sand, BenchStep.Coat, BenchStep.Sand, BenchStep.Label, BenchStep.Rest],
            steps["B"]);
        Assert.Equal([BenchStep.Cut, BenchStep.Ease, BenchStep.Dust, BenchStep.Label], steps["C"]);
        Assert.Equal([BenchStep.CutCloth], steps["D"]);
    }

    // What the bench says is hands-on is what labour is counted by: the parts of the practice minutes add up.
    [Fact]
    public void Hands_on_minutes_are_those_labour_is_counted_by()
    {
        Assert.Equal(WorkMinutes.Board, WorkMinutes.Cut + WorkMinutes.Ease + WorkMinutes.Dust + WorkMinutes.Label);
        Assert.Equal(WorkMinutes.Mount, WorkMinutes.Lay + WorkMinutes.Trim + WorkMinutes.Edges);
        Assert.Equal(WorkMinutes.Coat, WorkMinutes.Brush + WorkMinutes.Sand);

        var ground = new LiquidSupply { Id = "ground", Coats = 3, Faces = 2, CoverageArea = Demo.Glue.CoverageArea, CoverageVolume = Demo.Glue.CoverageVolume, Containers = Demo.Glue.Containers };
        var plan = Demo.Planned(Demo.OrderOf(Cloth("A", 8, 10, 7), Demo.Line("B", 8, 10, 5) with { Surface = Surface.Primed, Cradle = true }) with { Primers = [ground] });
        var goods = new Goods(plan.Order, plan.Panels, plan.Sheets, plan.Cloth, plan.Liquids, plan.Strips);
        Assert.Equal(
            Labour.MinutesByLine(goods),
            plan.Bench.HandsOn.Select(line => (line.Mark, line.Minutes)));
    }

    // Whatever the batch, every minute that labour pays is a minute of a job, to the quarter.
    [Fact]
    public void Labour_is_what_the_schedules_jobs_take() => Gen.Select(
            Gen.Select(Gen.Int[4, 16], Gen.Int[5, 20], Gen.Int[1, 30], Gen.Enum<Surface>(), Gen.Bool, Gen.Bool).Array[1, 3],
            Gen.Int[0, 6000],
            Gen.Int[1, 3],
            Gen.Int[1, 2])
        .Sample(
            (lines, hour, coats, faces) =>
            {
                var ground = new LiquidSupply { Id = "ground", Coats = coats, Faces = faces, CoverageArea = Demo.Glue.CoverageArea, CoverageVolume = Demo.Glue.CoverageVolume, Containers = Demo.Glue.Containers };
                var plan = Demo.Planned(Demo.OrderOf([.. lines.Select((l, i) => Demo.Line($"L{i}", l.Item1, l.Item2, l.Item3) with
                {
                    Surface = l.Item4,
                    Cradle = l.Item5 && l.Item4 != Surface.Loose,
                    MountLater = l.Item6 && l.Item4 == Surface.Cloth,
                })]) with
                {
                    Boards = [Demo.Hardboard with { Thickness = Demo.Inches(0.1875m) }],
                    Primers = [ground],
                    Adhesives = [Demo.Glue with { Faces = faces }],
                    LabourPerHour = new Money(hour),
                });
                decimal minutes = plan.Bench.Jobs.Sum(job => job.Job.Minutes);
                Assert.Equal(plan.Bench.HandsOn.Sum(line => line.Minutes), minutes);
                Assert.Equal((long)Math.Round(hour * minutes / 60, MidpointRounding.AwayFromZero), plan.Cost.Lines.Sum(line => line.Labour.Minor));
                Assert.All(plan.Bench.Jobs.Where(job => job.Job.Panels.Length > 0), job => Assert.Equal(Math.Max(1, Math.Ceiling(job.Job.Minutes)), job.Job.Hands));
            },
            iter: 25,
            seed: "0001000000003");

    [Fact]
    public void Jobs_do_everything_once()
    {
        var plan = Demo.Planned(Demo.OrderOf(Cloth("A", 8, 10, 47), Cloth("B", 12, 16, 3), Demo.Line("C", 5, 7, 90)));
        foreach (var recipe in plan.Bench.Recipes)
        {
            long made = plan.Panels.Single(panel => panel.Line.Mark == recipe.Mark).Made;
            foreach (var step in recipe.Steps.Where(step => step.Minutes > 0))
            {
                Assert.Equal(made, plan.Bench.Jobs
                    .Where(job => job.Job.Steps.Contains(step.Step))
                    .SelectMany(job => job.Job.Panels).Where(part => part.Mark == recipe.Mark).Sum(part => part.Count));
            }
        }
    }

    [Fact]
    public void Batch_of_more_than_a_year_gets_no_schedule()
    {
        var plan = Demo.Planned(Demo.OrderOf(Cloth("A", 4, 5, 450)) with { Bench = new BenchSettings { PressSpaces = 1, StackHeight = 1 } });
        Assert.True(plan.Bench.TooLong);
        Assert.Empty(plan.Bench.Jobs);
    }

    [Fact]
    public void Ordinary_batch_is_scheduled_to_the_soonest_end()
    {
        var plan = Demo.Planned(Demo.OrderOf(Cloth("A", 8, 10, 12), Cloth("B", 9, 12, 8), Cloth("C", 5, 7, 4)) with { Effort = PanelService.Cutting.Effort.Steady });
        Assert.Equal(plan.Bench.LeastFinish, plan.Bench.Finish);
    }

    private static PanelLine Cloth(string mark, decimal width, decimal height, int quantity) =>
        Demo.Line(mark, width, height, quantity) with { Surface = Surface.Cloth };
}
