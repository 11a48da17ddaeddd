using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Http;
using PanelService.Store.Plans;
using PanelService.Wire.Orders;
using PanelService.Wire.Plans;

namespace PanelService.Endpoints;

/// <summary>The stored plans: listed, searched, and copied into a new order.</summary>
internal static class PlanListEndpoints
{
    internal static void MapPlanList(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder plans = routes.MapGroup(PlanEndpoints.Address).WithTags("Plans")
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

        plans.MapGet("", ListAsync).WithName("ListPlans")
            .WithSummary("The stored plans, the newest first; searched by title and by the day they were made.")
            .WithDescription("title: part of the title, whatever its case. from, to: days (2026-11-25, both included) or moments (2026-11-25T09:00:00Z, to not included), in UTC where no offset is said. skip: 0 where not said. take: 1 to 500, 50 where not said.")
            .Produces<FaultsProblem>(StatusCodes.Status400BadRequest, "application/problem+json");
        plans.MapGet("{id}/order", OrderAsync).WithName("GetOrder")
            .WithSummary("The plan's order as it was sent, ready to be changed and sent again.")
            .Produces<OrderRequest>()
            .ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static async Task<Results<Ok<PlanListResponse>, ProblemHttpResult>> ListAsync(
        [AsParameters] PlanListQuery query, PlanBook book, CancellationToken cancellation)
    {
        (PlanSearch search, ProblemHttpResult? fault) = query.Read();
        return fault is null
            ? TypedResults.Ok(PlanListTranslation.Write(await book.ListAsync(search, cancellation)))
            : fault;
    }

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> OrderAsync(string id, PlanBook book, CancellationToken cancellation) =>
        await book.OrderOfAsync(id, cancellation) is { } order
            ? TypedResults.Text(order, "application/json", Encoding.UTF8)
            : Problems.Unknown(id);
}
