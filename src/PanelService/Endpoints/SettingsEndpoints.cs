using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Http;
using PanelService.Store.Settings;
using PanelService.Store.Versions;
using PanelService.Wire.Studio;

namespace PanelService.Endpoints;

/// <summary>The studio's own settings: saw, bench, and what else an order may leave out.</summary>
internal static class SettingsEndpoints
{
    internal static void MapSettings(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder settings = routes.MapGroup("/api/settings").WithTags("Settings")
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

        settings.MapGet("", FindAsync).WithName("GetSettings")
            .WithSummary("The saved settings; an empty object where none are, and the practice table holds.")
            .WithDescription("The ETag names the version; there is none where nothing is saved.")
            .Produces<StudioSettingsRequest>();
        settings.MapPut("", PutAsync).WithName("PutSettings")
            .WithSummary("Saves the settings that orders leave out; what is there already is only replaced with If-Match.")
            .AcceptsOrder<StudioSettingsRequest>()
            .Produces<StudioSettingsRequest>()
            .Produces<StudioSettingsRequest>(StatusCodes.Status201Created)
            .ProducesProblem(StatusCodes.Status412PreconditionFailed)
            .ProducesProblem(StatusCodes.Status428PreconditionRequired)
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
        settings.MapDelete("", DeleteAsync).WithName("DeleteSettings")
            .WithSummary("Forgets the saved settings: the practice table holds again.")
            .ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status412PreconditionFailed)
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
    }

    private static async Task<Ok<JsonNode>> FindAsync(SettingsBook book, HttpResponse response, CancellationToken cancellation)
    {
        SavedSettings? saved = await book.FindAsync(cancellation);
        if (saved is not null)
        {
            response.SendTag(saved.Version);
        }

        return TypedResults.Ok(Write(saved?.Document ?? "{}", saved));
    }

    private static async Task<Results<Ok<JsonNode>, Created<JsonNode>, ProblemHttpResult>> PutAsync(
        RequestBody<StudioSettingsRequest> body, SettingsBook book, HttpContext http, CancellationToken cancellation)
    {
        var draft = new SavedSettings(body.Measures.Units, body.Measures.Currency.Code, body.Text, 0);
        SaveOutcome outcome = await book.PutAsync(draft, Preconditions.Read(http.Request), cancellation);
        if (outcome is not Saved saved)
        {
            return StudioProblems.NotSaved(outcome);
        }

        http.Response.SendTag(saved.Version);
        JsonNode answer = Write(body.Text, draft);
        return saved.IsNew ? TypedResults.Created("/api/settings", answer) : TypedResults.Ok(answer);
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> DeleteAsync(SettingsBook book, HttpRequest request, CancellationToken cancellation) =>
        await book.DeleteAsync(Preconditions.Read(request), cancellation) is var outcome && outcome is Saved
            ? TypedResults.NoContent()
            : StudioProblems.NotSaved(outcome);

    private static JsonNode Write(string document, SavedSettings? saved)
    {
        JsonNode settings = JsonNode.Parse(document)!;
        if (saved is not null)
        {
            settings["units"] = Wire.Reading.JsonPath.Camel(saved.Units.ToString());
            settings["currency"] = saved.Currency;
        }

        return settings;
    }
}
