using System.Collections.Immutable;
using NodaTime;
using PanelService.Planning.Orders;

namespace PanelService.Calendars;

/// <summary>Time zones as the planner takes them: when their clocks change after a day.</summary>
internal static class ZoneClocks
{
    // A schedule's days, and the two that working hours may reach past them.
    private const int Days = 370;

    /// <summary>The zone of a name; null: there is none.</summary>
    internal static DateTimeZone? Find(string name) => DateTimeZoneProviders.Tzdb.GetZoneOrNull(name);

    /// <summary>When its clocks change.</summary>
    internal static ImmutableArray<ClockChange> ChangesAfter(DateOnly start, DateTimeZone zone)
    {
        LocalDate first = LocalDate.FromDateOnly(start);
        Instant from = zone.AtStartOfDay(first).ToInstant();
        var changes = ImmutableArray.CreateBuilder<ClockChange>();
        foreach (var interval in zone.GetZoneIntervals(from, from + Duration.FromDays(Days)))
        {
            if (interval.HasEnd && interval.End < from + Duration.FromDays(Days))
            {
                LocalDateTime before = interval.IsoLocalEnd;

                // In whole numbers: an island that changed sides of the date line left out a day, more than an offset may be.
                int shift = (zone.GetUtcOffset(interval.End).Seconds - interval.WallOffset.Seconds) / NodaConstants.SecondsPerMinute;
                changes.Add(new ClockChange(
                    Period.Between(first, before.Date, PeriodUnits.Days).Days, (before.Hour * NodaConstants.MinutesPerHour) + before.Minute, shift));
            }
        }

        return changes.ToImmutable();
    }

    /// <summary>The moment at which so many minutes have passed since midnight of a day.</summary>
    internal static Instant At(DateOnly start, DateTimeZone zone, int passed) =>
        zone.AtLeniently(LocalDate.FromDateOnly(start).AtMidnight()).ToInstant() + Duration.FromMinutes(passed);
}
