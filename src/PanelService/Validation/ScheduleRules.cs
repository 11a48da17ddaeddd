using FluentValidation;
using PanelService.Calendars;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for the working hours.</summary>
internal sealed class ScheduleRules : AbstractValidator<ScheduleRequest>
{
    private const int LeastMinutes = 60;
    private const int MostHands = 100;
    private const int Nine = 540;

    /// <summary>Sets the rules out.</summary>
    public ScheduleRules()
    {
        RuleFor(s => s.Start).Fault(start => start is not null && ScheduleTranslation.Day(start) is not { Year: >= 2000 and <= 2999 }
            ? "Expected a day from 2000 to 2999, such as \"2026-12-01\"."
            : null);
        RuleFor(s => s.From).Fault(from => from is not null && ScheduleTranslation.Minute(from) is null or 1440
            ? "Expected an hour of the day, such as \"09:00\"."
            : null);
        RuleFor(s => s.To).Fault(to => to is not null && ScheduleTranslation.Minute(to) is null
            ? "Expected an hour of the day, such as \"17:00\"; \"24:00\" is midnight."
            : null);
        RuleFor(s => s.To).Must((s, to) => ScheduleTranslation.Minute(to) is not { } end
                || (s.From is not null && ScheduleTranslation.Minute(s.From) is null)
                || end - (ScheduleTranslation.Minute(s.From) ?? Nine) >= LeastMinutes)
            .WithMessage("A working day is at least an hour long, and ends on the day it begins.");
        RuleFor(s => s.From).Must((s, from) => s.To is not null || ScheduleTranslation.Minute(from) is not { } begin || 1440 - begin >= LeastMinutes)
            .WithMessage("A working day is at least an hour long, and ends on the day it begins.");
        RuleFor(s => s.Days).Fault(days => days is { Count: 0 or > 7 } ? "Must have 1 to 7 weekdays, such as [\"monday\", \"tuesday\"]." : null);
        RuleFor(s => s.Hands).Count(1, MostHands);
        RuleFor(s => s.Zone).Fault(zone => zone is not null && ZoneClocks.Find(zone) is null
            ? "Expected the name of a time zone in the IANA database, such as \"Europe/Paris\"."
            : null);
    }
}
