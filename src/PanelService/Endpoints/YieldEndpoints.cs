using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using PanelService.Hosting;
using PanelService.Http;
using PanelService.Planning.Yields;
using PanelService.Wire.Reading;
using PanelService.Wire.Yields;

namespace PanelService.Endpoints;

/// <summary>The pencil's first question.</summary>
internal static class YieldEndpoints
{
    internal static void MapYield(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/api/yield", Answer).WithTags("Yield").WithName("GetYield")
            .WithSummary("How many panels of one size come out of a sheet, or of all sheets given: exact, drawn, beside the area figure.")
            .AcceptsOrder<YieldRequest>()
            .RequireRateLimiting(Busyness.Policy)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable)
            .ProducesProblem(StatusCodes.Status500InternalServerError);

    private static Results<Ok<YieldResponse>, ProblemHttpResult> Answer(RequestBody<YieldRequest> body, CancellationToken gone)
    {
        Yield yield = YieldPlanner.Answer(YieldTranslation.Read(body.Value!, body.Measures), gone);
        return !yield.TooFine.IsEmpty ? TooFine(yield)
            : yield.IsCutShort ? TooMany(yield)
            : TypedResults.Ok(YieldTranslation.Write(yield));
    }

    private static ProblemHttpResult TooMany(Yield yield)
    {
        var faults = new Faults();
        faults.Add("boards", string.Create(CultureInfo.InvariantCulture, $"Too many to be counted exactly at once for so small a panel: ask about the first {yield.Boards.Length} alone."));
        return Problems.Invalid(faults);
    }

    private static ProblemHttpResult TooFine(Yield yield)
    {
        var faults = new Faults();
        faults.Add("panel", $"Too small to be counted exactly on {string.Join(", ", yield.TooFine.Select(b => $"\"{b.Id}\""))}: its sides must be about 1/40 of the sheet's longer side or more.");
        return Problems.Invalid(faults);
    }
}
