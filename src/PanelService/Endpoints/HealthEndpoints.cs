using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Http;
using PanelService.Store;
using PanelService.Store.Faults;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>Whether the service is up, and whether it can take an order now.</summary>
internal static class HealthEndpoints
{
    internal static void MapHealth(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder health = routes.MapGroup("").AllowAnonymous().WithTags("Health");
        health.MapGet("/health", Health).WithName("GetHealth").WithSummary("Whether the service is up.");
        health.MapGet("/ready", ReadyAsync).WithName("GetReadiness").WithSummary("Whether it can take an order now: its memory opens, and an order has room to wait.")
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);
    }

    private static Ok<HealthResponse> Health() => TypedResults.Ok(new HealthResponse("ok"));

    private static async Task<Results<Ok<HealthResponse>, ProblemHttpResult>> ReadyAsync(
        Studio studio, PlannerQueue queue, CancellationToken cancellation)
    {
        if (queue.IsFull)
        {
            return Problems.NotReady("Every planner is busy and the queue is full.");
        }

        try
        {
            await studio.OpenAsync(cancellation);
            return TypedResults.Ok(new HealthResponse("ready"));
        }
        catch (StoreUnavailableException fault)
        {
            return Problems.NotReady(fault.Message);
        }
    }
}

/// <summary>How the service is.</summary>
/// <param name="Status">"ok", or "ready".</param>
internal sealed record HealthResponse(string Status);
