using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using NodaTime;
using NodaTime.Text;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>When and where a batch begins.</summary>
/// <param name="Start">Day and hour on the zone's clocks, such as 2026-12-01T09:00; where not said, tomorrow at 09:00.</param>
/// <param name="Zone">An IANA time zone such as Europe/Paris; UTC where not said.</param>
internal sealed record CalendarQuery(
    [property: FromQuery(Name = "start")] string? Start, [property: FromQuery(Name = "zone")] string? Zone)
{
    private const int FirstYear = 2000;
    private const int LastYear = 2999;

    private static readonly LocalDateTimePattern _pattern = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");
    private static readonly LocalTime _nine = new(9, 0);

    /// <summary>Both, or the problem with them.</summary>
    /// <param name="now">The moment of the request.</param>
    internal (LocalDateTime Start, DateTimeZone Zone, ProblemHttpResult? Fault) Read(Instant now)
    {
        var faults = new Faults();
        DateTimeZone? zone = Zone is null ? DateTimeZone.Utc : DateTimeZoneProviders.Tzdb.GetZoneOrNull(Zone);
        if (zone is null)
        {
            faults.Add("zone", "Expected the name of a time zone in the IANA database, such as Europe/Paris; UTC where it is not said.");
        }

        LocalDateTime start = now.InZone(zone ?? DateTimeZone.Utc).Date.PlusDays(1).At(_nine);
        if (Start is not null && !(_pattern.Parse(Start).TryGetValue(start, out start) && start.Year is >= FirstYear and <= LastYear))
        {
            faults.Add("start", $"Expected a day and an hour from {FirstYear} to {LastYear}, such as 2026-12-01T09:00; tomorrow at 09:00 where it is not said.");
        }

        return (start, zone ?? DateTimeZone.Utc, faults.Any ? Problems.Invalid(faults) : null);
    }
}
