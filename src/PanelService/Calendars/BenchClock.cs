using NodaTime;
using PanelService.Planning.Days;

namespace PanelService.Calendars;

/// <summary>
/// Lays steps on real days: work from the hour the batch begins at, at most eight hours a day; the press runs on through
/// the night and through a change of the clocks, by elapsed time. Every day is a working day.
/// </summary>
internal sealed class BenchClock
{
    /// <summary>A calendar of more days than this is no plan anybody keeps.</summary>
    internal const int MostDays = 366;

    private static readonly Duration _day = Duration.FromHours(8);

    private readonly DateTimeZone _zone;
    private readonly LocalDateTime _start;
    private Instant _now;

    private BenchClock(LocalDateTime start, DateTimeZone zone)
    {
        (_start, _zone) = (start, zone);
        _now = Morning(start.Date);
    }

    /// <summary>Lays them out; null where they take longer than <see cref="MostDays"/>.</summary>
    /// <param name="steps">The steps, in their order.</param>
    /// <param name="start">When the first begins, on the zone's clocks; an hour the clocks skip is moved on by what they skip.</param>
    /// <param name="zone">Where.</param>
    internal static IReadOnlyList<CalendarEntry>? Lay(IEnumerable<BenchStep> steps, LocalDateTime start, DateTimeZone zone)
    {
        var clock = new BenchClock(start, zone);
        Instant last = clock.Morning(start.Date.PlusDays(MostDays));
        List<CalendarEntry> entries = [];
        foreach (CalendarEntry entry in steps.SelectMany(clock.Do))
        {
            if (entry.To > last)
            {
                return null;
            }

            entries.Add(entry);
        }

        return entries;
    }

    private IEnumerable<CalendarEntry> Do(BenchStep step)
    {
        if (step.NextMorning)
        {
            _now = NextMorning();
        }

        return step.Task == BenchTask.Press ? [Spend(step, 1, Minutes(step))] : Work(step);
    }

    private IEnumerable<CalendarEntry> Work(BenchStep step)
    {
        Duration left = Minutes(step);
        for (int part = 1; left > Duration.Zero; part++)
        {
            Duration today = Today();
            if (today <= Duration.Zero)
            {
                _now = NextMorning();
                today = Today();
            }

            Duration now = Duration.Min(left, today);
            yield return Spend(step, part, now);
            left -= now;
        }
    }

    private CalendarEntry Spend(BenchStep step, int part, Duration time)
    {
        Instant from = _now;
        _now += time;
        return new CalendarEntry(step, part, from, _now);
    }

    // What is left of the working day that now lies in; nothing before it begins.
    private Duration Today()
    {
        Instant morning = Morning(_now.InZone(_zone).Date);
        return _now < morning ? Duration.Zero : morning + _day - _now;
    }

    private Instant NextMorning()
    {
        LocalDate today = _now.InZone(_zone).Date;
        Instant morning = Morning(today);
        return morning > _now ? morning : Morning(today.PlusDays(1));
    }

    private Instant Morning(LocalDate day) => _zone.AtLeniently(day.At(_start.TimeOfDay)).ToInstant();

    private static Duration Minutes(BenchStep step) => Duration.FromSeconds((long)Math.Ceiling(step.Minutes * 60));
}
