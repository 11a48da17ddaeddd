using PanelService.Planning.Days;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Tests.Days;

public sealed class WorkCalendarTests
{
    // Clocks in Paris go back from 03:00 to 02:00 on 25 October 2026 (Directive 2000/84/EC).
    private static readonly WorkCalendar _back = new(new ScheduleSettings { Start = new DateOnly(2026, 10, 24), ClockChanges = [new ClockChange(1, 180, -60)] });

    // And skip 02:00 to 03:00 on 28 March 2027.
    private static readonly WorkCalendar _on = new(new ScheduleSettings { Start = new DateOnly(2027, 3, 27), ClockChanges = [new ClockChange(1, 120, 60)] });

    [Fact]
    public void Day_on_which_the_clocks_go_back_begins_an_hour_later_by_time_passed()
    {
        Assert.Equal((540, 1020), _back.Window(0));
        Assert.Equal((1440 + 600, 1440 + 1080), _back.Window(1));
    }

    [Fact]
    public void Day_on_which_the_clocks_go_on_begins_an_hour_sooner_by_time_passed() =>
        Assert.Equal((1440 + 480, 1440 + 960), _on.Window(1));

    [Fact]
    public void Time_that_the_clocks_skip_is_moved_on_by_what_they_skip()
    {
        Assert.Equal(1440 + 150, _on.Passed(1, 150));
        Assert.Equal((1, 210), _on.Clock(1440 + 150));
    }

    [Theory]
    [InlineData(0, 540)]
    [InlineData(1, 60)]
    [InlineData(1, 540)]
    [InlineData(2, 0)]
    public void Clock_shows_the_time_again_that_was_passed(int day, int minute)
    {
        Assert.Equal((day, minute), _back.Clock(_back.Passed(day, minute)));
        Assert.Equal((day, minute), _on.Clock(_on.Passed(day, minute)));
    }

    [Fact]
    public void Work_that_does_not_fit_before_closing_waits_for_the_next_working_day()
    {
        // 1 December 2026 is a Tuesday.
        var calendar = new WorkCalendar(new ScheduleSettings { Start = new DateOnly(2026, 12, 1), Days = [DayOfWeek.Tuesday, DayOfWeek.Friday] });
        Assert.Equal(540, calendar.Fit(0, 480));
        Assert.Equal((3 * 1440) + 540, calendar.Fit(541, 480));
        Assert.Equal(1020 - 60, calendar.Fit(600, 60) + 360);
    }
}
