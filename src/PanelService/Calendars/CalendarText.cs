using System.Globalization;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;
using PanelService.Planning.Days;
using PanelService.Planning.Plans;

namespace PanelService.Calendars;

/// <summary>
/// A batch's days as iCalendar (RFC 5545). Moments are written in UTC: every calendar shows them on its own clock, and
/// none has to know the zone's rules. The same plan, start and zone give the same identifiers, so that a calendar read in
/// again replaces the one before.
/// </summary>
internal sealed class CalendarText(string planId, Plan plan, Instant stamp)
{
    private const string Product = "-//Panel Service//Bench calendar//EN";

    internal string Write(BenchPlan bench, DateTimeZone zone)
    {
        var calendar = new Ical.Net.Calendar { ProductId = Product };
        foreach (ScheduledJob job in bench.Jobs)
        {
            calendar.Events.Add(Event(job, Sign(job.Job), Words(job.Job), (job.Start, job.HandsUntil)));
            if (job.Job.TakesSpace)
            {
                calendar.Events.Add(Event(job, "press", $"{Panels(job.Job)} in the press (stack {Number(job.Job.Stack)})", (job.HandsUntil, job.Until)));
            }
        }

        return new CalendarSerializer().SerializeToString(calendar)
            ?? throw new InvalidOperationException("The calendar came to no text.");

        CalendarEvent Event(ScheduledJob job, string sign, string words, (int From, int To) time) => new()
        {
            Uid = string.Create(CultureInfo.InvariantCulture, $"{planId}-{sign}-{job.Job.Number}@panel-service"),
            DtStamp = At(stamp),
            Start = At(ZoneClocks.At(bench.Schedule.Start!.Value, zone, time.From)),
            End = At(ZoneClocks.At(bench.Schedule.Start!.Value, zone, time.To)),
            Summary = Clean(plan.Order.Title) is { Length: > 0 } title ? $"{title}: {words}" : words,
            Description = Clean(Note(job.Job, sign, bench)),
        };
    }

    // A coat's number, a stack's, belong to the sign: what is done once has none.
    private static string Sign(BenchJob job) => job.Task.ToString().ToLowerInvariant();

    private static string Words(BenchJob job) => job.Task switch
    {
        BenchTask.Errand => "buy what is missing",
        BenchTask.Saw => $"cut the boards for {Panels(job)}",
        BenchTask.CutCloth => $"cut cloth for {Panels(job)}",
        BenchTask.Prepare => $"ease the edges of {Panels(job)} and dust",
        BenchTask.Seal => $"seal {Panels(job)}",
        BenchTask.Glue => $"glue and lay {Panels(job)} (stack {Number(job.Stack)})",
        BenchTask.Trim => $"trim {Panels(job)} (stack {Number(job.Stack)}), edges again",
        BenchTask.Brace => $"glue cradles on {Panels(job)}",
        BenchTask.Coat => $"coat {Number(job.Coat)} on {Panels(job)}",
        BenchTask.Finish => $"finish and label {Panels(job)}",
        _ => throw new ArgumentOutOfRangeException(nameof(job)),
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Panels(BenchJob job) =>
        string.Create(CultureInfo.InvariantCulture, $"{job.Count} {(job.Count == 1 ? "panel" : "panels")}");

    private string Note(BenchJob job, string sign, BenchPlan bench) => (job.Task, sign) switch
    {
        (_, "press") => "Under weight; nothing to do.",
        (BenchTask.Errand, _) => string.Join("; ", plan.Buy.Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Quantity} × {line.Name}"))),
        (BenchTask.Saw, _) => "Follow the saw's own manual and the rules where you are; ask an experienced person where in doubt.",
        (BenchTask.Glue, _) when bench.Stacks[job.Stack - 1] is var stack => string.Create(
            CultureInfo.InvariantCulture, $"At most {stack.PerRound} laid before the weight goes on; {stack.Separators} separators."),
        (BenchTask.Trim, _) => "With a fresh blade, after the adhesive has cured.",
        _ => "Hands-on time by common practice.",
    };

    private static CalDateTime At(Instant moment) => new(moment.ToDateTimeUtc());

    private static string Clean(string text) => string.Concat(text.Select(sign => char.IsControl(sign) ? ' ' : sign)).Trim();
}
