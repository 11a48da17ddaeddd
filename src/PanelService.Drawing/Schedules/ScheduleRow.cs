using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Days;

namespace PanelService.Drawing.Schedules;

/// <summary>A row of the chart: a job, or, where there are a great many, all jobs of a sort.</summary>
/// <param name="Label">What is done.</param>
/// <param name="Jobs">The jobs.</param>
internal sealed record ScheduleRow(string Label, ImmutableArray<ScheduledJob> Jobs)
{
    private const int MostRows = 60;

    public static ImmutableArray<ScheduleRow> Of(BenchPlan bench) => bench.Jobs.Length <= MostRows
        ? [.. bench.Jobs.Select(job => new ScheduleRow(Words(job.Job), [job]))]
        : [.. bench.Jobs.GroupBy(job => job.Job.Task).Select(jobs => new ScheduleRow(All(jobs.Key, jobs.Sum(job => job.Job.Count)), [.. jobs]))];

    public static string Words(BenchJob job) => job.Task switch
    {
        BenchTask.Errand => "buy",
        BenchTask.Saw => $"saw, {Panels(job)}",
        BenchTask.CutCloth => $"cut cloth, {Panels(job)}",
        BenchTask.Prepare => $"ease and dust, {Panels(job)}",
        BenchTask.Seal => $"seal, {Panels(job)}",
        BenchTask.Glue => string.Create(CultureInfo.InvariantCulture, $"glue stack {job.Stack}, {Panels(job)}"),
        BenchTask.Trim => string.Create(CultureInfo.InvariantCulture, $"trim stack {job.Stack}, {Panels(job)}"),
        BenchTask.Brace => $"cradles, {Panels(job)}",
        BenchTask.Coat => string.Create(CultureInfo.InvariantCulture, $"coat {job.Coat}, {Panels(job)}"),
        _ => $"finish and label, {Panels(job)}",
    };

    private static string All(BenchTask task, long count) => task switch
    {
        BenchTask.Glue => string.Create(CultureInfo.InvariantCulture, $"glue and press, {count} panels"),
        BenchTask.Trim => string.Create(CultureInfo.InvariantCulture, $"trim, {count} panels"),
        BenchTask.Coat => string.Create(CultureInfo.InvariantCulture, $"coats, {count} in all"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Words(new BenchJob { Number = 0, Task = task, Steps = [], Hands = 1 }).Split(',')[0]}, {count} panels"),
    };

    private static string Panels(BenchJob job) => string.Create(
        CultureInfo.InvariantCulture, $"{job.Count} × {string.Join(" ", job.Panels.Select(part => part.Mark).Distinct())}");
}
