using System.Collections.Immutable;

namespace PanelService.Planning.Orders;

/// <summary>When and by how many the bench is worked.</summary>
public sealed record ScheduleSettings
{
    /// <summary>The day the batch begins; null: not said, and every day is then a working day.</summary>
    public DateOnly? Start { get; init; }

    /// <summary>The minute of the day work begins at, 0 to 1439. Default 540: nine o'clock (common practice).</summary>
    public int FromMinute { get; init; } = 9 * 60;

    /// <summary>How long a working day is, 60 to 1440 minutes. Default 480: eight hours (common practice).</summary>
    public int DayMinutes { get; init; } = 8 * 60;

    /// <summary>The weekdays that are worked; empty: all.</summary>
    public ImmutableArray<DayOfWeek> Days { get; init; } = [];

    /// <summary>How many pairs of hands there are, 1 or more. Default 1.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>The IANA time zone's name, for whoever shows the schedule; null: none said.</summary>
    public string? Zone { get; init; }

    /// <summary>When the clocks change there, in their order.</summary>
    public ImmutableArray<ClockChange> ClockChanges { get; init; } = [];
}

/// <summary>A change of the clocks.</summary>
/// <param name="Day">Days after the start.</param>
/// <param name="Minute">The minute of that day, on the clocks as they were.</param>
/// <param name="Shift">By how many minutes they are put on; below 0: back.</param>
public sealed record ClockChange(int Day, int Minute, int Shift);
