using NodaTime;
using PanelService.Planning.Days;

namespace PanelService.Calendars;

/// <summary>A step, or the part of one that is done on one day.</summary>
/// <param name="Step">The step.</param>
/// <param name="Part">1, 2, … where it takes more than a day.</param>
/// <param name="From">When it begins.</param>
/// <param name="To">When it ends.</param>
internal sealed record CalendarEntry(BenchStep Step, int Part, Instant From, Instant To);
