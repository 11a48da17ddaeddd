using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Planning.Practice;
using PanelService.Wire.Practice;

namespace PanelService.Endpoints;

/// <summary>What the service takes for granted, with its sources: settings and standard formats.</summary>
internal static class PracticeEndpoints
{
    internal static void MapPractice(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder practice = routes.MapGroup("/api").WithTags("Practice").ProducesProblem(StatusCodes.Status500InternalServerError);

        practice.MapGet("practice", Practice).WithName("GetPractice")
            .WithSummary("What each setting is where an order says nothing, and where that comes from.");
        practice.MapGet("formats", Formats).WithName("GetFormats")
            .WithSummary("Standard formats by series, each in the unit its sizes are whole in.");
    }

    private static Ok<PracticeResponse> Practice() => TypedResults.Ok(PracticeTranslation.Table());

    private static Ok<FormatSeriesResponse[]> Formats() =>
        TypedResults.Ok(StandardFormats.All.Select(PracticeTranslation.Series).ToArray());
}
