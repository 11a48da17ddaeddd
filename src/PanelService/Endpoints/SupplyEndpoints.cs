using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Http;
using PanelService.Shelves;
using PanelService.Store.Supplies;
using PanelService.Store.Versions;
using PanelService.Wire.Studio;

namespace PanelService.Endpoints;

/// <summary>What can be bought, by sort and id, in the shapes it has in an order.</summary>
internal static class SupplyEndpoints
{
    private const string Address = "/api/supplies";
    private const string Shapes = "sort: boards, cloths, adhesives, primers or strips. ";

    internal static void MapSupplies(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder supplies = routes.MapGroup(Address).WithTags("Supplies")
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

        supplies.MapGet("", ListAsync).WithName("ListSupplies").WithSummary("Everything that can be bought, by sort.");
        supplies.MapGet("{sort}", ListSortAsync).WithName("ListSuppliesOfSort")
            .WithSummary("What can be bought of one sort.").WithDescription(Shapes)
            .ProducesProblem(StatusCodes.Status404NotFound);
        supplies.MapGet("{sort}/{id}", FindAsync).WithName("GetSupply")
            .WithSummary("One good, with the day its price was set; the ETag names its version.").WithDescription(Shapes)
            .ProducesProblem(StatusCodes.Status404NotFound);
        supplies.MapPut("{sort}/{id}", PutAsync).WithName("PutSupply")
            .WithSummary("Saves a good in the shape it has in an order.")
            .WithDescription(Shapes + "Beside the good's own fields: units, currency (the studio's where not said) and pricedOn (the day its price was set; today where a price is new). What is on hand belongs to the stock and is left out. What is there already is only replaced with If-Match.")
            .Accepts<JsonObject>("application/json")
            .Produces<JsonObject>(StatusCodes.Status201Created)
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json")
            .ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status409Conflict)
            .ProducesProblem(StatusCodes.Status412PreconditionFailed)
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status428PreconditionRequired)
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
        supplies.MapDelete("{sort}/{id}", DeleteAsync).WithName("DeleteSupply")
            .WithSummary("Takes a good out of what can be bought; with If-Match only under that version.").WithDescription(Shapes)
            .ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status412PreconditionFailed)
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
    }

    private static async Task<Ok<JsonObject>> ListAsync(SupplyBook book, CancellationToken cancellation) =>
        TypedResults.Ok(SupplyTranslation.WriteAll(await book.ListAsync(cancellation)));

    private static async Task<Results<Ok<JsonArray>, ProblemHttpResult>> ListSortAsync(string sort, SupplyBook book, CancellationToken cancellation) =>
        SortOf(sort) is { } known
            ? TypedResults.Ok(SupplyTranslation.WriteSort(await book.ListAsync(cancellation), known))
            : StudioProblems.UnknownSort(sort);

    private static async Task<Results<Ok<JsonObject>, ProblemHttpResult>> FindAsync(
        string sort, string id, SupplyBook book, HttpResponse response, CancellationToken cancellation)
    {
        if (SortOf(sort) is not { } known)
        {
            return StudioProblems.UnknownSort(sort);
        }

        if (await book.FindAsync(known, id, cancellation) is not { } supply)
        {
            return StudioProblems.UnknownSupply(sort, id);
        }

        response.SendTag(supply.Version);
        return TypedResults.Ok(SupplyTranslation.Write(supply));
    }

    private static async Task<Results<Ok<JsonObject>, Created<JsonObject>, ProblemHttpResult>> PutAsync(
        string sort, string id, SupplyBook book, StudioMeasures measures, HttpContext http, CancellationToken cancellation)
    {
        if (SortOf(sort) is not { } known)
        {
            return StudioProblems.UnknownSort(sort);
        }

        (JsonDocument? document, ProblemHttpResult? problem) = await BodyReader.ReadAsync(http.Request, cancellation);
        using (document)
        {
            if (document is null)
            {
                return problem!;
            }

            SupplyBody body = SupplyBody.Read(known, id, document.RootElement, await measures.ReadAsync(cancellation));
            return body.Supply is null
                ? Problems.Invalid(body.Faults)
                : await SaveAsync(body, book, http, cancellation);
        }
    }

    private static async Task<Results<Ok<JsonObject>, Created<JsonObject>, ProblemHttpResult>> SaveAsync(
        SupplyBody body, SupplyBook book, HttpContext http, CancellationToken cancellation)
    {
        Supply draft = body.Supply!;
        SaveOutcome outcome = await book.PutAsync(draft, body.PricedOn, Preconditions.Read(http.Request), cancellation);
        if (outcome is not Saved saved)
        {
            return StudioProblems.NotSaved(outcome);
        }

        http.Response.SendTag(saved.Version);
        JsonObject answer = SupplyTranslation.Write(await book.FindAsync(draft.Sort, draft.Id, cancellation) ?? draft with { Version = saved.Version });
        if (body.LeftOut.Count > 0)
        {
            answer["warnings"] = new JsonArray(new JsonObject
            {
                ["id"] = "on-hand-left-out",
                ["text"] = $"{string.Join(", ", body.LeftOut)}: what is on hand belongs to the stock (POST /api/stock) and was left out here.",
            });
        }

        return saved.IsNew ? TypedResults.Created(http.Request.Path, answer) : TypedResults.Ok(answer);
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> DeleteAsync(
        string sort, string id, SupplyBook book, HttpRequest request, CancellationToken cancellation)
    {
        if (SortOf(sort) is not { } known)
        {
            return StudioProblems.UnknownSort(sort);
        }

        return await book.DeleteAsync(known, id, Preconditions.Read(request), cancellation) switch
        {
            Saved => TypedResults.NoContent(),
            NothingThere => StudioProblems.UnknownSupply(sort, id),
            var outcome => StudioProblems.NotSaved(outcome),
        };
    }

    private static SupplySort? SortOf(string word) =>
        Enum.TryParse(word, ignoreCase: true, out SupplySort sort) && Wire.Reading.JsonPath.Camel(sort.ToString()) == word ? sort : null;
}
