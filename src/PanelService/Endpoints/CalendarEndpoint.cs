using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;
using PanelService.Calendars;
using PanelService.Http;
using PanelService.Planning.Days;
using PanelService.Planning.Plans;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>The batch's days as a calendar.</summary>
internal static class CalendarEndpoint
{
    internal const string Type = "text/calendar";

    internal static Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, [AsParameters] CalendarQuery query, PlanDesk desk, TimeProvider clock, HttpResponse response)
    {
        var now = Instant.FromDateTimeOffset(clock.GetUtcNow());
        (LocalDateTime start, DateTimeZone zone, ProblemHttpResult? fault) = query.Read(now);
        if (fault is not null)
        {
            return fault;
        }

        if (PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is not { } plan)
        {
            return problem!;
        }

        if (BenchClock.Lay(BenchSteps.Of(plan), start, zone) is not { } entries)
        {
            return TooLong();
        }

        response.Headers.ContentDisposition = "attachment; filename=\"calendar.ics\"";
        return TypedResults.Text(new CalendarText(id, plan, now).Write(entries), Type, Encoding.UTF8);
    }

    private static ProblemHttpResult TooLong() => TypedResults.Problem(
        type: "/problems/too-many-days",
        statusCode: StatusCodes.Status422UnprocessableEntity,
        title: "The batch takes more than a year.",
        detail: $"With one pair of hands and this press it is not done in {BenchClock.MostDays} days: more pressSpaces, a higher stack or a smaller batch would bring it within a year.");
}
