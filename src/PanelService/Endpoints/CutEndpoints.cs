using System.Collections.Immutable;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Http;
using PanelService.Shelves;
using PanelService.Store.Cuts;
using PanelService.Store.Plans;
using PanelService.Store.Stock;
using PanelService.Wire.Reading;
using PanelService.Wire.Studio;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>A plan that was carried out: booked as a whole, looked at, taken back as a whole.</summary>
internal static class CutEndpoints
{
    internal static void MapCuts(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder cuts = routes.MapGroup($"{PlanEndpoints.Address}/{{id}}/cut").WithTags("Stock")
            .ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status409Conflict)
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

        cuts.MapPost("", CutAsync).WithName("CutPlan")
            .WithSummary("The batch was made: in one booking the goods used leave the stock, and offcuts, remnants, leftovers and finished panels enter it.")
            .WithDescription("Goods that the order itself said were on hand are booked in first. spoiled: panels that came out spoiled; spoiledSheets: sheets that did, with all that was to come out of them; the true result is booked, and the answer offers an order for replacements. A body may be left out. Twice is refused, and so is a plan whose goods are not there any more: missing says which.")
            .Accepts<CutRequest>("application/json")
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json")
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
        cuts.MapGet("", FindAsync).WithName("GetCut").WithSummary("What was booked when the plan was cut; 409 where it is not cut.");
        cuts.MapPost("undo", UndoAsync).WithName("UndoCut")
            .WithSummary("Takes the whole cut back, unless what it brought in has been used since; the plan can be cut again.")
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
    }

    private static async Task<Results<Ok<CutBookingResponse>, ProblemHttpResult>> CutAsync(
        string id, CutBody body, CutBook book, PlanDesk desk, StockBook stock, CancellationToken cancellation)
    {
        if (body.Problem is { } problem)
        {
            return problem;
        }

        return await book.CutAsync(id, body.Spoiled, cancellation) switch
        {
            CutBooked cut => TypedResults.Ok(await WriteAsync(id, cut.Record, cut.Plan, stock, cancellation)),
            NoPlanToCut => NotKept(id, desk),
            AlreadyCut cut => StudioProblems.CutBefore(id, cut.At),
            GoodsGone gone => StudioProblems.Gone(gone.Missing, "Goods of this plan are not there any more."),
            SpoilingWrong wrong => Wrong(wrong),
            _ => Problems.Failed(),
        };
    }

    private static async Task<Results<Ok<CutBookingResponse>, ProblemHttpResult>> FindAsync(
        string id, CutBook book, PlanBook plans, PlanDesk desk, StockBook stock, CancellationToken cancellation)
    {
        if (await plans.FindAsync(id, cancellation) is not PlanFound { Plan: var plan })
        {
            return NotKept(id, desk);
        }

        return await book.FindAsync(id, cancellation) is { } record
            ? TypedResults.Ok(await WriteAsync(id, record, plan, stock, cancellation))
            : StudioProblems.IsNotCut(id);
    }

    private static async Task<Results<Ok<MovementListResponse>, ProblemHttpResult>> UndoAsync(
        string id, CutBook book, PlanBook plans, PlanDesk desk, CancellationToken cancellation)
    {
        UndoOutcome outcome = await book.UndoAsync(id, cancellation);
        if (outcome is not NothingToUndo)
        {
            return MovementEndpoints.Answer(id, outcome);
        }

        return await plans.OrderOfAsync(id, cancellation) is null ? NotKept(id, desk) : StudioProblems.IsNotCut(id);
    }

    /// <summary>No plan of that name is stored: it is still being planned, there came none of it, or it never was.</summary>
    private static ProblemHttpResult NotKept(string id, PlanDesk desk) =>
        PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is null ? problem! : Problems.Unknown(id);

    private static async Task<CutBookingResponse> WriteAsync(string id, CutRecord record, FinishedPlan plan, StockBook stock, CancellationToken cancellation)
    {
        ImmutableArray<StockItem> now = record.Spoiled.IsEmpty ? [] : await stock.ListAsync(withEmpty: false, cancellation);
        return new(
            id,
            record.Booking,
            record.At,
            StockTranslation.Write(record.Movements),
            [.. record.Entered.Select(StockTranslation.Write)],
            [.. record.Spoiled.Select(one => new SpoiledResponse(one.Mark, one.Count, one.Sheet))],
            record.Spoiled.IsEmpty ? null : ReplacementOrder.Of(plan, record.Spoiled, now));
    }

    private static ProblemHttpResult Wrong(SpoilingWrong wrong)
    {
        var faults = new Faults();
        foreach (SpoilingFault fault in wrong.Faults)
        {
            faults.Add($"{JsonPath.Element(fault.OfSheet ? "spoiledSheets" : "spoiled", fault.Index)}.{fault.Field}", fault.Text);
        }

        return Problems.Invalid(faults);
    }
}
