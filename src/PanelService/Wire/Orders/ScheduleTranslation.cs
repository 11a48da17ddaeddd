using System.Globalization;
using NodaTime;
using PanelService.Calendars;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Orders;

/// <summary>Working hours, field by field: what the request leaves out is common practice.</summary>
internal static class ScheduleTranslation
{
    private const int DayLength = 1440;

    internal static ScheduleSettings Settings(ScheduleRequest? request)
    {
        var practice = new ScheduleSettings();
        int from = Minute(request?.From) ?? practice.FromMinute;
        DateOnly? start = Day(request?.Start);
        DateTimeZone? zone = request?.Zone is { } name ? ZoneClocks.Find(name) : null;
        return new ScheduleSettings
        {
            Start = start,
            FromMinute = from,
            DayMinutes = Minute(request?.To) is { } to ? to - from : Math.Min(practice.DayMinutes, DayLength - from),
            Days = [.. (request?.Days ?? []).OfType<Weekday>().Select(day => (DayOfWeek)day).Distinct().Order()],
            Hands = request?.Hands ?? practice.Hands,
            Zone = request?.Zone,
            ClockChanges = start is { } day && zone is not null ? ZoneClocks.ChangesAfter(day, zone) : [],
        };
    }

    /// <summary>"2026-12-01"; null where it is none.</summary>
    internal static DateOnly? Day(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    /// <summary>"09:00" to "24:00" as a minute of the day; null where it is none.</summary>
    internal static int? Minute(string? text)
    {
        if (text == "24:00")
        {
            return DayLength;
        }

        return TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time)
            ? (time.Hour * 60) + time.Minute
            : null;
    }
}
