using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Options;
using PanelService.FrontDoor;
using PanelService.Http;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Shelves;
using PanelService.Store.Plans;
using PanelService.Wire.Orders;
using PanelService.Wire.Plans;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>Orders in, plans out: made at once or in the background, watched, stopped, dropped.</summary>
internal static class PlanEndpoints
{
    internal const string Address = "/api/plans";

    private static readonly TimeSpan StopPatience = TimeSpan.FromSeconds(2);

    internal static void MapPlans(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder plans = routes.MapGroup(Address).WithTags("Plans").ProducesProblem(StatusCodes.Status500InternalServerError);

        plans.MapPost("", CreateAsync).WithName("CreatePlan")
            .WithSummary("Plans an order: what to buy, how to cut it, what each panel costs, with the proof.")
            .WithDescription("With Prefer: respond-async the answer is 202 at once, with wait=N beside it after N seconds without a plan; GET of its Location then says how far it is. With keep=false the answer is 200, at its end: the plan has no address, is listed nowhere and stored nowhere.")
            .AcceptsOrder<OrderRequest>()
            .Produces<ImpossibleProblem>(StatusCodes.Status422UnprocessableEntity, "application/problem+json")
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);
        plans.MapGet("{id}", Get).WithName("GetPlan")
            .WithSummary("The plan, or how far it is while it is made.")
            .ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
        plans.MapDelete("{id}", DropAsync).WithName("DropPlan")
            .WithSummary("Drops the plan, unless it is cut; ends its search where it is still made.")
            .ProducesProblem(StatusCodes.Status404NotFound).ProducesProblem(StatusCodes.Status409Conflict);
        plans.MapPost("{id}/stop", StopAsync).WithName("StopPlan")
            .WithSummary("Ends the search and keeps the best plan so far.")
            .ProducesProblem(StatusCodes.Status404NotFound);
        plans.MapGet("{id}/progress", WatchAsync).WithName("WatchPlan")
            .WithSummary("How far the plan is, as server-sent events, until it is made.")
            .Produces<PlanStateResponse>(StatusCodes.Status200OK, "text/event-stream")
            .ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static async Task<Results<Ok<PlanResponse>, Created<PlanResponse>, Accepted<PlanStateResponse>, EmptyHttpResult, ProblemHttpResult>> CreateAsync(
        RequestBody<OrderRequest> body, [AsParameters] NewPlanQuery query, PlanDesk desk, PassingPlanner passing, TimeProvider clock, HttpContext http)
    {
        if (query.Fault() is { } fault)
        {
            return fault;
        }

        Order order = new OrderTranslation(body.Measures).Read(body.Value!);
        ImmutableArray<Warning> remarks = [.. Remarks.On(body.Value!), .. body.Filled!.Remarks];
        if (query.Passes)
        {
            return await passing.PlanAsync(ClientName.Of(http), order, remarks, http.RequestAborted) is { } passed
                ? Forgotten(passed, body.Filled.Links, query, http.RequestAborted)
                : Busy(http);
        }

        if (desk.Take(ClientName.Of(http), order, remarks, new PlanOrigin(body.Text, body.Filled.Links)) is not { } job)
        {
            return Busy(http);
        }

        if (Preferences.Patience(http) is not { } patience || await IsSoonAsync(job, patience, clock, http.RequestAborted))
        {
            return await FinishAsync(job, query, desk, http.RequestAborted);
        }

        await desk.PromiseAsync(ClientName.Of(http), job, http.RequestAborted);
        return TypedResults.Accepted(AddressOf(job.Id), StateOf(job));
    }

    /// <summary>Whether there is a plan before the client would rather have an address; or nobody left to tell it.</summary>
    private static async Task<bool> IsSoonAsync(PlanJob job, TimeSpan patience, TimeProvider clock, CancellationToken gone)
    {
        await Task.WhenAny(job.Finished, Task.Delay(patience, clock, gone));
        return gone.IsCancellationRequested || (patience > TimeSpan.Zero && job.Finished.IsCompleted);
    }

    // A client that goes away takes its order with it.
    private static async Task<Results<Ok<PlanResponse>, Created<PlanResponse>, Accepted<PlanStateResponse>, EmptyHttpResult, ProblemHttpResult>> FinishAsync(
        PlanJob job, NewPlanQuery query, PlanDesk desk, CancellationToken gone)
    {
        await using (gone.Register(() => desk.Abandon(job.Id)))
        {
            PlanSnapshot last = await job.Finished;
            if (last.Plan is not null)
            {
                return TypedResults.Created(AddressOf(job.Id), Document(job, last, query.Inline));
            }

            desk.Abandon(job.Id);
            return gone.IsCancellationRequested ? TypedResults.Empty : TypedResults.Problem(last.Problem!);
        }
    }

    // A plan without an address: its drawings are in the document or nowhere.
    private static Results<Ok<PlanResponse>, Created<PlanResponse>, Accepted<PlanStateResponse>, EmptyHttpResult, ProblemHttpResult> Forgotten(
        PlanJob job, ImmutableArray<StockLink> links, NewPlanQuery query, CancellationToken gone)
    {
        PlanSnapshot last = job.Look().Snapshot;
        return last.Plan is not null
            ? TypedResults.Ok(Document(job, last, new DrawingLinks(null, query.Inline), links))
            : gone.IsCancellationRequested ? TypedResults.Empty : TypedResults.Problem(last.Problem!);
    }

    private static Results<Ok<PlanResponse>, Ok<PlanStateResponse>, ProblemHttpResult> Get(
        string id, [AsParameters] PlanQuery query, PlanDesk desk)
    {
        if (query.Fault() is { } fault)
        {
            return fault;
        }

        if (desk.Find(id) is not { } job)
        {
            return Problems.Unknown(id);
        }

        PlanSnapshot now = job.Look().Snapshot;
        return now.Plan is null ? TypedResults.Ok(StateOf(job)) : TypedResults.Ok(Document(job, now, query.Inline));
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> DropAsync(string id, PlanDesk desk, CancellationToken cancellation) =>
        await desk.DropAsync(id, cancellation) switch
        {
            PlanRemoval.Removed => TypedResults.NoContent(),
            PlanRemoval.IsCut => StoreProblems.IsCut(id),
            _ => Problems.Unknown(id),
        };

    // An order that still waits for a planner ends when it has had its turn: the client is not kept that long.
    private static async Task<Results<Ok<PlanStateResponse>, Accepted<PlanStateResponse>, ProblemHttpResult>> StopAsync(
        string id, PlanDesk desk, TimeProvider clock, CancellationToken cancellation)
    {
        if (desk.Find(id) is not { } job)
        {
            return Problems.Unknown(id);
        }

        job.Stop();
        await Task.WhenAny(job.Finished, Task.Delay(StopPatience, clock, cancellation));
        return job.Finished.IsCompleted ? TypedResults.Ok(StateOf(job)) : TypedResults.Accepted(AddressOf(id), StateOf(job));
    }

    private static Results<ServerSentEventsResult<PlanStateResponse>, ProblemHttpResult> WatchAsync(
        string id, PlanDesk desk, ProgressStream stream, CancellationToken cancellation) =>
        desk.Find(id) is { } job
            ? TypedResults.ServerSentEvents(stream.WatchAsync(job, cancellation))
            : Problems.Unknown(id);

    private static string AddressOf(string id) => $"{Address}/{id}";

    private static PlanStateResponse StateOf(PlanJob job) => PlanStates.Write(job);

    private static ProblemHttpResult Busy(HttpContext http)
    {
        int seconds = http.RequestServices.GetRequiredService<IOptions<PlanningOptions>>().Value.RetryAfterSeconds;
        http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        return Problems.AllBusy();
    }

    private static PlanResponse Document(PlanJob job, PlanSnapshot now, bool inline) =>
        Document(job, now, new DrawingLinks(AddressOf(job.Id), inline), job.Origin?.Links ?? []);

    private static PlanResponse Document(PlanJob job, PlanSnapshot now, DrawingLinks drawings, ImmutableArray<StockLink> links) =>
        new PlanTranslation(job.Id, now.Plan!, drawings).Write(now.State) with
        {
            FromStock = PlanStock.Of(now.Plan!, links),
        };
}
