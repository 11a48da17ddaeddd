using PanelService.Planning.Orders;

namespace PanelService.Planning.Days;

/// <summary>Reads a schedule's minutes as the clocks show them.</summary>
/// <param name="settings">What the schedule was made for.</param>
public sealed class BenchClock(ScheduleSettings settings)
{
    private readonly WorkCalendar _calendar = new(settings);

    /// <summary>What the clocks show.</summary>
    /// <param name="passed">Minutes passed since midnight of the first day.</param>
    /// <returns>Days after the first, and the minute of the day.</returns>
    public (int Day, int Minute) Shows(int passed) => _calendar.Clock(passed);

    /// <summary>A day's working hours in minutes passed; null where it is not worked.</summary>
    /// <param name="day">Days after the first, below 366.</param>
    public (int From, int To)? Hours(int day) => _calendar.Window(day);
}
