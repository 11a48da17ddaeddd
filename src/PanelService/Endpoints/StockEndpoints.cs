using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Http;
using PanelService.Planning.Measures;
using PanelService.Shelves;
using PanelService.Store.Shelves;
using PanelService.Store.Stock;
using PanelService.Store.Versions;
using PanelService.Validation;
using PanelService.Wire.Reading;
using PanelService.Wire.Studio;

namespace PanelService.Endpoints;

/// <summary>What is in the studio: listed, added, corrected.</summary>
internal static class StockEndpoints
{
    internal const string Address = "/api/stock";

    internal static void MapStock(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder stock = routes.MapGroup(Address).WithTags("Stock")
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

        stock.MapGet("", ListAsync).WithName("ListStock")
            .WithSummary("What is in the studio: boards and offcuts, cloth and remnants, liquids, finished panels, each under its pencil id.")
            .WithDescription("empty=true: those of which nothing is left, too.");
        stock.MapGet("{id}", FindAsync).WithName("GetStock").WithSummary("One heap; the ETag names its version.")
            .ProducesProblem(StatusCodes.Status404NotFound);
        stock.MapPost("", AddAsync).WithName("AddStock")
            .WithSummary("Adds a heap of alike pieces, or a liquid; the answer has the id to write on it.")
            .AcceptsOrder<StockRequest>()
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
        stock.MapPatch("{id}", CorrectAsync).WithName("CorrectStock")
            .WithSummary("Corrects a heap to what it really is; the ledger tells both. With If-Match only under that version.")
            .AcceptsOrder<StockPatchRequest>()
            .ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status412PreconditionFailed)
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
    }

    private static async Task<Ok<StockListResponse>> ListAsync(StockBook book, CancellationToken cancellation, bool empty = false) =>
        TypedResults.Ok(new StockListResponse([.. (await book.ListAsync(empty, cancellation)).Select(StockTranslation.Write)]));

    private static async Task<Results<Ok<StockResponse>, ProblemHttpResult>> FindAsync(
        string id, StockBook book, HttpResponse response, CancellationToken cancellation)
    {
        if (await book.FindAsync(id, cancellation) is not { } item)
        {
            return StudioProblems.UnknownStock(id);
        }

        response.SendTag(item.Version);
        return TypedResults.Ok(StockTranslation.Write(item));
    }

    private static async Task<Results<Created<StockResponse>, ProblemHttpResult>> AddAsync(
        RequestBody<StockRequest> body, StockBook book, ShelfBook shelf, HttpResponse response, CancellationToken cancellation)
    {
        var faults = new Faults();
        Shelf now = await shelf.ReadAsync(cancellation);
        if (StockReader.Read(body.Value!, body.Measures, now.Supplies, faults) is not { } draft)
        {
            return Problems.Invalid(faults);
        }

        StockItem item = (await book.AddAsync([draft], body.Value!.Note, cancellation))[0];
        response.SendTag(item.Version);
        return TypedResults.Created($"{Address}/{item.Id}", StockTranslation.Write(item));
    }

    private static async Task<Results<Ok<StockResponse>, ProblemHttpResult>> CorrectAsync(
        string id, RequestBody<StockPatchRequest> body, StockBook book, HttpContext http, CancellationToken cancellation)
    {
        if (await book.FindAsync(id, cancellation) is not { } before)
        {
            return StudioProblems.UnknownStock(id);
        }

        var faults = new Faults();
        StockCorrection correction = Correction(body, before, faults);
        if (faults.Any)
        {
            return Problems.Invalid(faults);
        }

        SaveOutcome outcome = await book.CorrectAsync(id, correction, Preconditions.Read(http.Request), cancellation);
        if (outcome is not Saved saved)
        {
            return StudioProblems.NotSaved(outcome);
        }

        http.Response.SendTag(saved.Version);
        return TypedResults.Ok(StockTranslation.Write((await book.FindAsync(id, cancellation))!));
    }

    private static StockCorrection Correction(RequestBody<StockPatchRequest> body, StockItem before, Faults faults)
    {
        StockPatchRequest patch = body.Value!;
        bool isLiquid = StockQuantity.IsLiquid(before.Sort);
        Refuse(isLiquid && patch.Count is not null, "count", $"{before.Id} is a liquid: it has a volume.");
        Refuse(!isLiquid && patch.Volume is not null, "volume", $"{before.Id} is counted in pieces: it has a count.");
        Refuse(patch.Value is not null && body.Measures.Currency.Code != before.Currency, "currency", $"{before.Id} is valued in {before.Currency}; say the same.");
        bool isMeasured = patch.Volume is not null || new[] { patch.Thickness, patch.Width, patch.Height, patch.Length, patch.EdgeTrim }.Any(length => length is not null);
        Refuse(isMeasured && patch.Units is null && body.Measures.Units != before.Units, "units", $"{before.Id} is kept in {JsonPath.Camel(before.Units.ToString())}; say which units these numbers are in.");
        return new StockCorrection(
            good => good with
            {
                Name = patch.Name ?? good.Name,
                Kind = patch.Kind ?? good.Kind,
                Thickness = patch.Thickness ?? good.Thickness,
                Width = patch.Width ?? good.Width,
                Height = patch.Height ?? good.Height,
                Length = patch.Length ?? good.Length,
                EdgeTrim = patch.EdgeTrim ?? good.EdgeTrim,
            },
            isLiquid && patch.Volume is { } volume ? StockQuantity.Of(Volume.From(volume, body.Measures.Units)) : patch.Count,
            patch.Value is { } value ? MoneyScale.Read(value, body.Measures.Currency) : null,
            patch.Note);

        void Refuse(bool isWrong, string field, string text)
        {
            if (isWrong)
            {
                faults.Add(field, text);
            }
        }
    }
}
