using Microsoft.AspNetCore.Http.HttpResults;

namespace PanelService.Endpoints;

/// <summary>Whether the service is up.</summary>
internal static class HealthEndpoints
{
    internal static void MapHealth(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/health", Health).AllowAnonymous().WithTags("Health").WithName("GetHealth").WithSummary("Whether the service is up.");

    private static Ok<HealthResponse> Health() => TypedResults.Ok(new HealthResponse("ok"));
}

/// <summary>Whether the service is up.</summary>
/// <param name="Status">"ok".</param>
internal sealed record HealthResponse(string Status);
