using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using NodaTime;
using NodaTime.Text;
using PanelService.Calendars;
using PanelService.Planning.Days;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>When and where a batch begins.</summary>
/// <param name="Start">Day and hour on the zone's clocks, such as 2026-12-01T09:00; where not said, the order's schedule, else tomorrow.</param>
/// <param name="Zone">An IANA time zone such as Europe/Paris; where not said, the order's schedule, else UTC.</param>
internal sealed record CalendarQuery(
    [property: FromQuery(Name = "start")] string? Start, [property: FromQuery(Name = "zone")] string? Zone)
{
    private const int FirstYear = 2000;
    private const int LastYear = 2999;

    private static readonly LocalDateTimePattern _pattern = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");

    /// <summary>What is wrong with it; null: nothing.</summary>
    internal ProblemHttpResult? Fault()
    {
        var faults = new Faults();
        if (Zone is not null && ZoneClocks.Find(Zone) is null)
        {
            faults.Add("zone", "Expected the name of a time zone in the IANA database, such as Europe/Paris; UTC where it is not said.");
        }

        if (Start is not null && Moment() is null)
        {
            faults.Add("start", $"Expected a day and an hour from {FirstYear} to {LastYear}, such as 2026-12-01T09:00; tomorrow at the hour work begins where it is not said.");
        }

        return faults.Any ? Problems.Invalid(faults) : null;
    }

    /// <summary>The working days of a plan from then on, and the zone they are in.</summary>
    /// <param name="order">The plan's order.</param>
    /// <param name="now">The moment of the request.</param>
    internal (ScheduleSettings Schedule, DateTimeZone Zone) Read(Order order, Instant now)
    {
        ScheduleSettings own = order.Schedule;
        DateTimeZone zone = ZoneClocks.Find(Zone ?? own.Zone ?? "UTC")!;
        LocalDateTime start = Moment()
            ?? (own.Start is { } day ? LocalDate.FromDateOnly(day) : now.InZone(zone).Date.PlusDays(1))
                .At(LocalTime.FromMinutesSinceMidnight(own.FromMinute));
        DateOnly first = start.Date.ToDateOnly();
        return (own with
        {
            Start = first,
            FromMinute = (start.Hour * NodaConstants.MinutesPerHour) + start.Minute,
            Zone = zone.Id,
            ClockChanges = ZoneClocks.ChangesAfter(first, zone),
        }, zone);
    }

    /// <summary>The plan's own bench on those days, where they change nothing about it; else planned again.</summary>
    internal static BenchPlan Bench(Plan plan, ScheduleSettings schedule, CancellationToken gone)
    {
        ScheduleSettings own = plan.Order.Schedule;
        bool same = schedule.FromMinute == own.FromMinute
            && !plan.Bench.TooLong
            && (own.Days.IsDefaultOrEmpty || schedule.Start == own.Start)
            && schedule.ClockChanges.Concat(own.ClockChanges).All(change => change.Day * NodaConstants.MinutesPerDay > plan.Bench.Finish);
        return same ? plan.Bench with { Schedule = schedule } : BenchPlanner.Again(plan, schedule, gone);
    }

    private LocalDateTime? Moment() =>
        Start is not null && _pattern.Parse(Start).TryGetValue(default, out LocalDateTime start) && start.Year is >= FirstYear and <= LastYear ? start : null;
}
