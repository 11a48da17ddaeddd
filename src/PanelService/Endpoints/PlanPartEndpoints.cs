using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Drawing;
using PanelService.Http;
using PanelService.Planning.Plans;
using PanelService.Wire.Plans;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>Parts of a plan on their own: drawings, the tally, the shopping list, and what follows from it.</summary>
internal static class PlanPartEndpoints
{
    private const string Svg = "image/svg+xml";
    private const string Csv = "text/csv";
    private const string SlipNote = "paper: a4 or letter, a4 where it is not said. page: 1 and up, 1 where it is not said; the header Page-Count says how many there are. lang: en or fr; where it is not said, what Accept-Language asks for. In millimetres of paper: print at full size.";

    internal static void MapPlanParts(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder parts = routes.MapGroup($"{PlanEndpoints.Address}/{{id}}").WithTags("Parts of a plan")
            .ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status409Conflict)
            .ProducesProblem(StatusCodes.Status500InternalServerError);

        parts.MapGet("sheets/{number:int}.svg", Sheet).WithName("DrawSheet")
            .WithSummary("A sheet, drawn: sizes, numbered cuts, leftovers hatched.")
            .Produces<string>(StatusCodes.Status200OK, Svg);
        parts.MapGet("cloth/{number:int}.svg", Cloth).WithName("DrawCloth")
            .WithSummary("A length, roll or remnant of cloth, drawn.")
            .Produces<string>(StatusCodes.Status200OK, Svg);
        parts.MapGet("cost", Cost).WithName("GetCost").WithSummary("The plan's tally.");
        parts.MapGet("buy.csv", Buy).WithName("GetShoppingList")
            .WithSummary("The shopping list as comma-separated values (RFC 4180).")
            .Produces<string>(StatusCodes.Status200OK, Csv);
        parts.MapGet("labels.svg", LabelsEndpoint.Answer).WithName("DrawLabels")
            .WithSummary("Labels for the backs of the panels cut and for the kept offcuts, a page at a time.")
            .WithDescription("paper: a4 or letter, a4 where it is not said. grid: plain, or how label sheets are parted: 2x4, 2x7, 3x7, 3x8 on a4, 2x5, 2x7, 3x10 on letter. date: a day to stand on them. lang: en or fr; where it is not said, what Accept-Language asks for. page: 1 and up, 1 where it is not said; the header Page-Count says how many there are. In millimetres of paper: print at full size.")
            .Produces<string>(StatusCodes.Status200OK, Svg)
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json");
        parts.MapGet("saw-run.svg", SawSlipEndpoint.Answer).WithName("DrawSawRun")
            .WithSummary("The slip to pin up beside the saw: one entry per setting, with boxes to tick, a page at a time.")
            .WithDescription(SlipNote)
            .Produces<string>(StatusCodes.Status200OK, Svg)
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json");
        parts.MapGet("supplier-slip.svg", SawSlipEndpoint.AnswerSupplier).WithName("DrawSupplierSlip")
            .WithSummary("The cuts to have made where the board is bought, a page at a time; it says so where there are none.")
            .WithDescription(SlipNote)
            .Produces<string>(StatusCodes.Status200OK, Svg)
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json");
        parts.MapGet("calendar.ics", CalendarEndpoint.Answer).WithName("GetCalendar")
            .WithSummary("The batch's days as iCalendar (RFC 5545): errand, saw, gluing, press, trimming, coats.")
            .WithDescription("start: the day and hour the batch begins, on the zone's clocks (2026-12-01T09:00); where it is not said the order's schedule.start, else tomorrow at the hour work begins. zone: an IANA time zone; where it is not said the order's schedule.zone, else UTC. Moments are written in UTC. 422 where the batch takes longer than 366 days.")
            .Produces<string>(StatusCodes.Status200OK, CalendarEndpoint.Type)
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json")
            .ProducesProblem(StatusCodes.Status422UnprocessableEntity);
        parts.MapGet("schedule.svg", CalendarEndpoint.Chart).WithName("DrawSchedule")
            .WithSummary("The batch's days as bars: hands, press, drying.")
            .WithDescription("start and zone as for calendar.ics; where neither is said, the plan's own schedule, whose days may have no dates.")
            .Produces<string>(StatusCodes.Status200OK, Svg)
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json");
        parts.MapGet("bench", CalendarEndpoint.Bench).WithName("GetBench")
            .WithSummary("The bench planned for other days, or the mounting of what was left for later.")
            .WithDescription("start and zone as for calendar.ics; mount: now (where it is not said) or later.")
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json");
        parts.MapGet("batch-curve", BatchCurveEndpoint.AnswerAsync).WithName("GetBatchCurve")
            .WithSummary("Cash and cost per panel when the whole order is made 1, 2, … times over, each really planned.")
            .WithDescription("upTo: 1 to 20 times, 10 where it is not said. Planned at quick effort with quantities and spares taken n times and stock, wishes and overheads as they are; the curve ends, and says why, where n times cannot be made.")
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json")
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);
        parts.MapGet("batch-curve.svg", BatchCurveEndpoint.DrawAsync).WithName("DrawBatchCurve")
            .WithSummary("The batch curve, drawn: cost per panel beside the shop's, cash, and where a good is added.")
            .WithDescription("upTo as for the batch curve. 422 where not even one time can be made.")
            .Produces<string>(StatusCodes.Status200OK, Svg)
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json")
            .ProducesProblem(StatusCodes.Status422UnprocessableEntity)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);
    }

    private static Results<ContentHttpResult, ProblemHttpResult> Sheet(string id, int number, PlanDesk desk) =>
        With(id, desk, plan => plan.Sheets.Any(sheet => sheet.Number == number)
            ? Drawn(SheetDrawing.Render(plan, number))
            : Problems.UnknownPart("sheet", number));

    private static Results<ContentHttpResult, ProblemHttpResult> Cloth(string id, int number, PlanDesk desk) =>
        With(id, desk, plan => plan.Cloth.Any(cloth => cloth.Number == number)
            ? Drawn(ClothDrawing.Render(plan, number))
            : Problems.UnknownPart("cloth", number));

    private static Results<Ok<CostResponse>, ProblemHttpResult> Cost(string id, PlanDesk desk) =>
        PlanOf(id, desk, out ProblemHttpResult? problem) is { } plan
            ? TypedResults.Ok(new CostTranslation(plan).Write())
            : problem!;

    private static Results<ContentHttpResult, ProblemHttpResult> Buy(string id, PlanDesk desk, HttpResponse response) =>
        With(id, desk, plan =>
        {
            response.Headers.ContentDisposition = "attachment; filename=\"buy.csv\"";
            return TypedResults.Text(ShoppingListCsv.Write(plan), $"{Csv}; header=present", Encoding.UTF8);
        });

    private static ContentHttpResult Drawn(string svg) => TypedResults.Text(svg, Svg, Encoding.UTF8);

    private static Results<ContentHttpResult, ProblemHttpResult> With(
        string id, PlanDesk desk, Func<Plan, Results<ContentHttpResult, ProblemHttpResult>> answer) =>
        PlanOf(id, desk, out ProblemHttpResult? problem) is { } plan ? answer(plan) : problem!;

    internal static Plan? PlanOf(string id, PlanDesk desk, out ProblemHttpResult? problem)
    {
        PlanSnapshot? now = desk.Find(id)?.Look().Snapshot;
        problem = now switch
        {
            null => Problems.Unknown(id),
            { State: PlanState.Planning } => Problems.StillPlanning(id),
            { Plan: null } => Problems.Failed(),
            _ => null,
        };
        return now?.Plan;
    }
}
