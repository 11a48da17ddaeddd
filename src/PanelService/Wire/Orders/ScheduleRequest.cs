namespace PanelService.Wire.Orders;

/// <summary>When and by how many the bench is worked. What is left out comes from <c>GET /api/practice</c>.</summary>
internal sealed record ScheduleRequest
{
    /// <summary>The day the batch begins, such as "2026-12-01", 2000 to 2999; null: not said, and every day is a working day.</summary>
    public string? Start { get; init; }

    /// <summary>When work begins, such as "09:00". Default 09:00.</summary>
    public string? From { get; init; }

    /// <summary>When it ends, at least an hour later; "24:00" is midnight. Default 17:00, or eight hours after it begins.</summary>
    public string? To { get; init; }

    /// <summary>The weekdays that are worked. Default all.</summary>
    public IReadOnlyList<Weekday?>? Days { get; init; }

    /// <summary>How many pairs of hands, 1 to 100. Default 1.</summary>
    public int? Hands { get; init; }

    /// <summary>An IANA time zone such as "Europe/Paris": what dries over a change of its clocks takes the time it takes. Default none.</summary>
    public string? Zone { get; init; }
}

/// <summary>A day of the week.</summary>
internal enum Weekday
{
    /// <summary>Sunday.</summary>
    Sunday,

    /// <summary>Monday.</summary>
    Monday,

    /// <summary>Tuesday.</summary>
    Tuesday,

    /// <summary>Wednesday.</summary>
    Wednesday,

    /// <summary>Thursday.</summary>
    Thursday,

    /// <summary>Friday.</summary>
    Friday,

    /// <summary>Saturday.</summary>
    Saturday,
}
