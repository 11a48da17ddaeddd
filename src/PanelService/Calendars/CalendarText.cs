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

    internal string Write(IEnumerable<CalendarEntry> entries)
    {
        var calendar = new Ical.Net.Calendar { ProductId = Product };
        foreach (CalendarEntry entry in entries)
        {
            calendar.Events.Add(Event(entry));
        }

        return new CalendarSerializer().SerializeToString(calendar)
            ?? throw new InvalidOperationException("The calendar came to no text.");
    }

    private CalendarEvent Event(CalendarEntry entry) => new()
    {
        Uid = string.Create(CultureInfo.InvariantCulture, $"{planId}-{entry.Step.Task}-{entry.Step.Number}-{entry.Part}@panel-service").ToLowerInvariant(),
        DtStamp = At(stamp),
        Start = At(entry.From),
        End = At(entry.To),
        Summary = Clean(plan.Order.Title) is { Length: > 0 } title ? $"{title}: {Words(entry.Step)}" : Words(entry.Step),
        Description = Clean(Note(entry.Step)),
    };

    private static string Words(BenchStep step) => step.Task switch
    {
        BenchTask.Errand => "buy what is missing",
        BenchTask.Saw => $"cut the boards for {Panels(step)}",
        BenchTask.CutCloth => $"cut cloth for {Panels(step)}",
        BenchTask.Glue => $"glue and lay {Panels(step)} (round {Number(step)})",
        BenchTask.Press => $"{Panels(step)} in the press (round {Number(step)})",
        BenchTask.Trim => $"trim {Panels(step)} (round {Number(step)})",
        BenchTask.Coat => $"coat {Number(step)} on {Panels(step)}",
        _ => throw new ArgumentOutOfRangeException(nameof(step)),
    };

    private static string Number(BenchStep step) => step.Number.ToString(CultureInfo.InvariantCulture);

    private static string Panels(BenchStep step) =>
        string.Create(CultureInfo.InvariantCulture, $"{step.Panels} {(step.Panels == 1 ? "panel" : "panels")}");

    private string Note(BenchStep step) => step.Task switch
    {
        BenchTask.Errand => string.Join("; ", plan.Buy.Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Quantity} × {line.Name}"))),
        BenchTask.Saw => "Follow the saw's own manual and the rules where you are; ask an experienced person where in doubt.",
        BenchTask.Press => "Under weight; nothing to do. Start the next round only when the press is free.",
        BenchTask.Trim => "With a fresh blade, after the adhesive has cured.",
        _ => "Hands-on time by common practice.",
    };

    private static CalDateTime At(Instant moment) => new(moment.ToDateTimeUtc());

    private static string Clean(string text) => string.Concat(text.Select(sign => char.IsControl(sign) ? ' ' : sign)).Trim();
}
