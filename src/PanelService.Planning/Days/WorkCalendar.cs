using PanelService.Planning.Orders;

namespace PanelService.Planning.Days;

/// <summary>
/// The working hours, on an axis of minutes that have passed since midnight of the first day: a day on which the clocks
/// are put on is an hour shorter, and what dries or stands under weight takes the time it takes.
/// </summary>
internal sealed class WorkCalendar(ScheduleSettings settings)
{
    private const int DayLength = 1440;

    /// <summary>A schedule of more days than this is no plan anybody keeps.</summary>
    public const int MostDays = 366;

    /// <summary>Where the schedule must have ended.</summary>
    public int Horizon { get; } = MostDays * DayLength;

    /// <summary>The hours of a day; none where it is not worked.</summary>
    /// <param name="day">Days after the first.</param>
    public (int From, int To)? Window(int day) => IsWorked(day)
        ? (Passed(day, settings.FromMinute), Passed(day, settings.FromMinute + settings.DayMinutes))
        : null;

    /// <summary>All hours up to the horizon.</summary>
    public IEnumerable<(int From, int To)> Windows() =>
        Enumerable.Range(0, MostDays).Select(Window).OfType<(int, int)>();

    /// <summary>The earliest start at or after a moment from which work of some length fits into a day's hours.</summary>
    /// <param name="moment">Minutes passed.</param>
    /// <param name="minutes">The length, at most a day's hours.</param>
    /// <returns>Minutes passed; the horizon where it fits nowhere before it.</returns>
    public int Fit(int moment, int minutes)
    {
        // Hours that reach past midnight may belong to the day before.
        for (int day = Math.Max(0, (moment / DayLength) - 2); day < MostDays; day++)
        {
            if (Window(day) is var (from, to) && Math.Max(from, moment) + minutes <= to)
            {
                return Math.Max(from, moment);
            }
        }

        return Horizon;
    }

    /// <summary>The latest start from which work of some length is done within a day's hours by a moment.</summary>
    /// <param name="moment">Minutes passed.</param>
    /// <param name="minutes">The length, at most a day's hours.</param>
    /// <returns>Minutes passed; below zero where there is none.</returns>
    public int FitBefore(int moment, int minutes)
    {
        for (int day = Math.Min(MostDays - 1, (moment / DayLength) + 1); day >= 0; day--)
        {
            if (Window(day) is var (from, to) && Math.Min(to, moment) - minutes >= from)
            {
                return Math.Min(to, moment) - minutes;
            }
        }

        return -1;
    }

    /// <summary>How long the hours go on after a moment within them; zero where it lies in none.</summary>
    /// <param name="moment">Minutes passed.</param>
    public int Left(int moment)
    {
        for (int day = Math.Max(0, (moment / DayLength) - 2); day <= (moment / DayLength) + 1 && day < MostDays; day++)
        {
            if (Window(day) is var (from, to) && from <= moment && moment < to)
            {
                return to - moment;
            }
        }

        return 0;
    }

    /// <summary>Minutes passed up to a time of the clocks; a time they skip is moved on by what they skip.</summary>
    /// <param name="day">Days after the first.</param>
    /// <param name="minute">Minute of the day; past 1439 it is the next day's.</param>
    public int Passed(int day, int minute)
    {
        int clock = (day * DayLength) + minute;
        return clock - settings.ClockChanges.Sum(change => At(change) is var at && clock >= at + Math.Max(change.Shift, 0) ? change.Shift : 0);
    }

    /// <summary>What the clocks show after some minutes: days after the first, and the minute of the day.</summary>
    /// <param name="passed">Minutes passed.</param>
    public (int Day, int Minute) Clock(int passed)
    {
        int clock = passed;
        foreach (var change in settings.ClockChanges)
        {
            clock += clock >= At(change) ? change.Shift : 0;
        }

        return (Math.DivRem(clock, DayLength, out int minute), minute);
    }

    private static int At(ClockChange change) => (change.Day * DayLength) + change.Minute;

    private bool IsWorked(int day) => settings.Start is not { } start
        || settings.Days.IsDefaultOrEmpty
        || settings.Days.Contains(start.AddDays(day).DayOfWeek);
}
