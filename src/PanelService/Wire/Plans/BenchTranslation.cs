using System.Globalization;
using PanelService.Planning.Days;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Plans;

/// <summary>The bench as the wire shows it.</summary>
internal sealed class BenchTranslation(Order order, BenchPlan bench, string? drawing)
{
    private readonly WireNumbers _numbers = new(order);

    internal BenchPlanResponse Write() => new()
    {
        Steps = [.. bench.Recipes.Select(recipe => new RecipeResponse(
            recipe.Mark, [.. recipe.Steps.Select(step => new RecipeStepResponse(step.Step, step.Minutes, step.WaitHours))]))],
        Stacks = [.. bench.Stacks.Select(Stack)],
        Schedule = bench.TooLong ? null : Schedule(),
        ScheduleProof = bench.TooLong ? null : new(bench.Finish, bench.LeastFinish, bench.Finish == bench.LeastFinish),
        HandsOn = [.. bench.HandsOn.Select(line => new HandsOnResponse(line.Mark, line.Minutes))],
        MountLater = bench.MountLater,
    };

    private StackResponse Stack(PressStack stack) => new(
        stack.Number,
        _numbers.Of(stack.Short),
        _numbers.Of(stack.Long),
        [.. stack.Panels.Select(part => new MarkCountResponse(part.Mark, part.Count))],
        stack.First,
        stack.Separators,
        _numbers.Of(stack.Weight),
        stack.PerRound,
        stack.Rounds,
        Words(stack));

    private string Words(PressStack stack)
    {
        // To half a kilogram or a whole pound: nobody weighs books closer.
        string weight = order.Units == LengthUnit.Inch
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Max(1, Math.Round(stack.Weight.In(order.Units)))} lb")
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Max(0.5m, Math.Round(stack.Weight.Grams / 500) / 2):0.#} kg");
        return $"{weight} of books on the {LengthText.FormatFigure(stack.Short, order.Units)} × {LengthText.FormatFigure(stack.Long, order.Units)} stack";
    }

    private ScheduleResponse Schedule()
    {
        var clock = new BenchClock(bench.Schedule);
        return new()
        {
            Start = bench.Schedule.Start?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            From = Time(bench.Schedule.FromMinute),
            DayMinutes = bench.Schedule.DayMinutes,
            Hands = bench.Schedule.Hands,
            PressSpaces = order.Bench.PressSpaces,
            Finish = Moment(clock, bench.Finish),
            Drawing = drawing,
            Jobs = [.. bench.Jobs.Select(job => Job(clock, job))],
        };
    }

    private JobResponse Job(BenchClock clock, ScheduledJob job) => new()
    {
        Number = job.Job.Number,
        Task = job.Job.Task,
        Steps = job.Job.Steps,
        Panels = [.. job.Job.Panels.Select(part => new MarkCountResponse(part.Mark, part.Count))],
        Coat = job.Job.Coat > 0 ? job.Job.Coat : null,
        Stack = job.Job.Stack > 0 ? job.Job.Stack : null,
        Start = job.Start,
        Hands = job.Job.Hands,
        Minutes = job.Job.Minutes,
        Wait = job.Job.Wait,
        Press = job.Job.TakesSpace,
        After = job.Job.After,
        AfterHands = job.Job.AfterHands,
        Begins = Moment(clock, job.Start),
        HandsFree = Moment(clock, job.HandsUntil),
        Ready = Moment(clock, job.Until),
    };

    private MomentResponse Moment(BenchClock clock, int passed)
    {
        var (day, minute) = clock.Shows(passed);
        return new(day + 1, bench.Schedule.Start?.AddDays(day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Time(minute));
    }

    private static string Time(int minute) => string.Create(CultureInfo.InvariantCulture, $"{minute / 60:00}:{minute % 60:00}");
}
