using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;
using PanelService.Calendars;
using PanelService.Drawing;
using PanelService.Http;
using PanelService.Planning.Days;
using PanelService.Planning.Plans;
using PanelService.Wire.Plans;
using PanelService.Wire.Reading;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>The batch's days: as a calendar, as bars, as a document for other days, and the mounting that was left for later.</summary>
internal static class CalendarEndpoint
{
    internal const string Type = "text/calendar";
    private const string Svg = "image/svg+xml";

    internal static Results<ContentHttpResult, ProblemHttpResult> Answer(
        string id, [AsParameters] CalendarQuery query, PlanDesk desk, TimeProvider clock, HttpContext http)
    {
        if (query.Fault() is { } fault)
        {
            return fault;
        }

        if (PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is not { } plan)
        {
            return problem!;
        }

        var now = Instant.FromDateTimeOffset(clock.GetUtcNow());
        var (schedule, zone) = query.Read(plan.Order, now);
        BenchPlan bench = CalendarQuery.Bench(plan, schedule, http.RequestAborted);
        if (bench.TooLong)
        {
            return TooLong();
        }

        http.Response.Headers.ContentDisposition = "attachment; filename=\"calendar.ics\"";
        return TypedResults.Text(new CalendarText(id, plan, now).Write(bench, zone), Type, Encoding.UTF8);
    }

    // Where neither start nor zone is said, the chart is the plan's own: its days may have no dates.
    internal static Results<ContentHttpResult, ProblemHttpResult> Chart(
        string id, [AsParameters] CalendarQuery query, PlanDesk desk, TimeProvider clock, HttpContext http)
    {
        if (query.Fault() is { } fault)
        {
            return fault;
        }

        return PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is { } plan
            ? TypedResults.Text(ScheduleDrawing.Render(plan, BenchOf(plan, query, clock, http)), Svg, Encoding.UTF8)
            : problem!;
    }

    internal static Results<Ok<BenchPlanResponse>, ProblemHttpResult> Bench(
        string id, [AsParameters] CalendarQuery query, string? mount, PlanDesk desk, TimeProvider clock, HttpContext http)
    {
        if (query.Fault() is { } fault)
        {
            return fault;
        }

        if (mount is not (null or "now" or "later"))
        {
            var faults = new Faults();
            faults.Add("mount", "Expected \"now\": the batch's own bench, or \"later\": the mounting of what was left for later.");
            return Problems.Invalid(faults);
        }

        if (PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is not { } plan)
        {
            return problem!;
        }

        BenchPlan bench = mount == "later"
            ? BenchPlanner.Later(plan, query == new CalendarQuery(null, null) ? plan.Order.Schedule : query.Read(plan.Order, Now(clock)).Schedule, http.RequestAborted)
            : BenchOf(plan, query, clock, http);
        return TypedResults.Ok(new BenchTranslation(plan.Order, bench, drawing: null).Write());
    }

    private static BenchPlan BenchOf(Plan plan, CalendarQuery query, TimeProvider clock, HttpContext http) =>
        query == new CalendarQuery(null, null)
            ? plan.Bench
            : CalendarQuery.Bench(plan, query.Read(plan.Order, Now(clock)).Schedule, http.RequestAborted);

    private static Instant Now(TimeProvider clock) => Instant.FromDateTimeOffset(clock.GetUtcNow());

    private static ProblemHttpResult TooLong() => TypedResults.Problem(
        type: "/problems/too-many-days",
        statusCode: StatusCodes.Status422UnprocessableEntity,
        title: "The batch takes more than a year.",
        detail: "With these hands and this press it is not done in 366 days: more pressSpaces, a higher stack, more hands or a smaller batch would bring it within a year.");
}
