using PanelService.Planning.Days;

namespace PanelService.Wire.Plans;

/// <summary>The work on days.</summary>
internal sealed record ScheduleResponse
{
    /// <summary>The day it begins, such as "2026-12-01"; left out where the order says none.</summary>
    public string? Start { get; init; }

    /// <summary>When a working day begins.</summary>
    public required string From { get; init; }

    /// <summary>How long it is, in minutes.</summary>
    public required int DayMinutes { get; init; }

    /// <summary>How many pairs of hands.</summary>
    public required int Hands { get; init; }

    /// <summary>How many stacks stand under weight at once.</summary>
    public required int PressSpaces { get; init; }

    /// <summary>When all is over, as the clocks then show.</summary>
    public required MomentResponse Finish { get; init; }

    /// <summary>Where its bar chart is; left out where it belongs to no plan's address.</summary>
    public string? Drawing { get; init; }

    /// <summary>The jobs, by start.</summary>
    public required IReadOnlyList<JobResponse> Jobs { get; init; }
}

/// <summary>A time as the clocks show it.</summary>
/// <param name="Day">1 is the day the work begins.</param>
/// <param name="Date">The date; left out where the order says no start.</param>
/// <param name="Time">The hour, such as "09:00".</param>
internal sealed record MomentResponse(int Day, string? Date, string Time);

/// <summary>Work done in one go, and the time it is then left alone.</summary>
internal sealed record JobResponse
{
    /// <summary>Its number; others name it in after.</summary>
    public required int Number { get; init; }

    /// <summary>What is done.</summary>
    public required BenchTask Task { get; init; }

    /// <summary>The steps it covers.</summary>
    public required IReadOnlyList<BenchStep> Steps { get; init; }

    /// <summary>What it is done to.</summary>
    public required IReadOnlyList<MarkCountResponse> Panels { get; init; }

    /// <summary>The coat; left out where it is none.</summary>
    public int? Coat { get; init; }

    /// <summary>The stack; left out where it is none.</summary>
    public int? Stack { get; init; }

    /// <summary>When it begins, in minutes passed since midnight of the first day.</summary>
    public required int Start { get; init; }

    /// <summary>Minutes of one pair of hands.</summary>
    public required int Hands { get; init; }

    /// <summary>The hands-on minutes of its panels, which hands rounds up; 0 for the errand. Over all jobs they are the minutes labour is paid by.</summary>
    public required decimal Minutes { get; init; }

    /// <summary>Minutes it is then left alone.</summary>
    public required int Wait { get; init; }

    /// <summary>Whether it takes a space of the press from its start to the end of its wait.</summary>
    public required bool Press { get; init; }

    /// <summary>Jobs that are over before it begins, their waits included.</summary>
    public required IReadOnlyList<int> After { get; init; }

    /// <summary>Jobs whose hands are through before it begins.</summary>
    public required IReadOnlyList<int> AfterHands { get; init; }

    /// <summary>When it begins, as the clocks show.</summary>
    public required MomentResponse Begins { get; init; }

    /// <summary>When its hands are free.</summary>
    public required MomentResponse HandsFree { get; init; }

    /// <summary>When its wait is over.</summary>
    public required MomentResponse Ready { get; init; }
}
