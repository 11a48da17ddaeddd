using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Http;
using PanelService.Store.Stock;
using PanelService.Wire.Studio;

namespace PanelService.Endpoints;

/// <summary>The ledger: read, and added to by taking movements back.</summary>
internal static class MovementEndpoints
{
    private const int Page = 1000;

    internal static void MapMovements(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder movements = routes.MapGroup($"{StockEndpoints.Address}/movements").WithTags("Stock")
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

        movements.MapGet("", ListAsync).WithName("ListMovements")
            .WithSummary("Every change of the stock, the oldest first; never rewritten.")
            .WithDescription("stock: only those of one heap. plan: only those of one plan. after: only those with a greater id; at most 1000 are given at once, and next says where to go on.");
        movements.MapPost("{id}/undo", UndoAsync).WithName("UndoMovement")
            .WithSummary("Takes one movement back by adding its opposite.")
            .ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status409Conflict)
            .ProducesProblem(StatusCodes.Status507InsufficientStorage);
    }

    private static async Task<Ok<MovementListResponse>> ListAsync(
        StockBook book, CancellationToken cancellation, string? stock = null, string? plan = null, long after = 0)
    {
        ImmutableArray<Movement> page = await book.MovementsAsync(stock, plan, after, Page, cancellation);
        return TypedResults.Ok(new MovementListResponse(StockTranslation.Write(page), page.Length == Page ? page[^1].Id : null));
    }

    private static async Task<Results<Ok<MovementListResponse>, ProblemHttpResult>> UndoAsync(string id, StockBook book, CancellationToken cancellation) =>
        long.TryParse(id, NumberStyles.None, CultureInfo.InvariantCulture, out long movement)
            ? Answer(id, await book.UndoAsync(movement, cancellation))
            : StudioProblems.UnknownMovement(id);

    internal static Results<Ok<MovementListResponse>, ProblemHttpResult> Answer(string id, UndoOutcome outcome) => outcome switch
    {
        TakenBack back => TypedResults.Ok(new MovementListResponse(StockTranslation.Write(back.Movements), null)),
        AlreadyUndone => StudioProblems.UndoneBefore(),
        UsedSince used => StudioProblems.Gone(used.Missing, "What came in has been used since."),
        _ => StudioProblems.UnknownMovement(id),
    };
}
