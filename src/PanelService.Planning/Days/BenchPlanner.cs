using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Days;

/// <summary>Plans the bench of a batch. Pure: the day it begins on is a setting.</summary>
public static class BenchPlanner
{
    // More jobs than this are more than a year's work of a studio.
    private const int MostJobs = 6000;
    private const decimal MinutesPerJob = 120;

    /// <summary>Plans the bench of a plan again, for other days or hands.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="schedule">When and by how many.</param>
    /// <param name="cancellation">Ends the search for a sooner end.</param>
    public static BenchPlan Again(Plan plan, ScheduleSettings schedule, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan with { Order = plan.Order with { Schedule = schedule } }, cancellation);
    }

    /// <summary>Plans the mounting of what was left for later.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="schedule">When and by how many.</param>
    /// <param name="cancellation">Ends the search for a sooner end.</param>
    public static BenchPlan Later(Plan plan, ScheduleSettings schedule, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var order = plan.Order with { Schedule = schedule };
        ImmutableArray<PanelResult> panels =
        [
            .. plan.Panels.Where(panel => panel.Line is { Surface: Surface.Cloth, MountLater: true } && panel.Made > 0)
                .Select(panel => panel with { Line = panel.Line with { MountLater = false } }),
        ];
        if (StackMaker.Count(order, panels) > MostJobs / 3)
        {
            return new BenchPlan { TooLong = true, Schedule = schedule };
        }

        var stacks = StackMaker.Of(order, panels, plan.Liquids);
        var jobs = new JobMaker(order, plan.Liquids).Mounting(panels, stacks);
        return Laid(order, new BenchPlan { Stacks = stacks }, jobs, cancellation);
    }

    /// <summary>Plans the bench of a plan.</summary>
    /// <param name="plan">The plan, all but its bench.</param>
    /// <param name="cancellation">Ends the search for a sooner end.</param>
    internal static BenchPlan Of(Plan plan, CancellationToken cancellation)
    {
        var order = plan.Order;
        ImmutableArray<PanelResult> mounted = [.. plan.Panels.Where(panel => panel.Line.MountsNow)];
        var bench = new BenchPlan
        {
            Recipes = [.. plan.Panels.Where(panel => panel.Made > 0).Select(panel => new BenchRecipe(panel.Line.Mark, BenchMinutes.Steps(order, panel.Line, plan.Liquids)))],
            Schedule = order.Schedule,
            MountLater = [.. plan.Panels.Where(panel => panel.Line is { Surface: Surface.Cloth, MountLater: true } && panel.Made > 0).Select(panel => panel.Line.Mark)],
        };
        bench = bench with { HandsOn = [.. bench.Recipes.Select(recipe => HandsOn(recipe, plan.Panels))] };
        decimal goes = (bench.HandsOn.Sum(line => line.Minutes) / MinutesPerJob) + (3 * StackMaker.Count(order, mounted));
        if (goes > MostJobs)
        {
            return bench with { TooLong = true };
        }

        var stacks = StackMaker.Of(order, mounted, plan.Liquids);
        var jobs = new JobMaker(order, plan.Liquids).Of(plan.Panels, stacks, !plan.Buy.IsEmpty);
        return Laid(order, bench with { Stacks = stacks }, jobs, cancellation);
    }

    private static BenchPlan Laid(Order order, BenchPlan bench, ImmutableArray<BenchJob> jobs, CancellationToken cancellation)
    {
        var problem = new BenchProblem(jobs, new WorkCalendar(order.Schedule), order.Schedule.Hands, order.Bench.PressSpaces);
        var (starts, least) = Scheduler.Find(problem, order.Effort, cancellation);
        return starts is null
            ? bench with { TooLong = true, Schedule = order.Schedule }
            : bench with
            {
                Jobs = [.. jobs.Zip(starts, (job, start) => new ScheduledJob(job, start)).OrderBy(job => job.Start).ThenBy(job => job.Job.Number)],
                Finish = problem.FinishOf(starts),
                LeastFinish = least,
                Schedule = order.Schedule,
            };
    }

    private static MarkMinutes HandsOn(BenchRecipe recipe, ImmutableArray<PanelResult> panels) => new(
        recipe.Mark,
        recipe.Steps.Sum(step => step.Minutes) * panels.First(panel => panel.Line.Mark == recipe.Mark).Made);
}
