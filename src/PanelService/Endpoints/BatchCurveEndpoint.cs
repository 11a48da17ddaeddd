using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.Options;
using PanelService.FrontDoor;
using PanelService.Http;
using PanelService.Planning.Orders;
using PanelService.Validation;
using PanelService.Wire.Curves;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>The plan's order made 1, 2, … times over: one search after another, until one cannot be made or the client goes away.</summary>
internal static class BatchCurveEndpoint
{
    internal static async Task<Results<Ok<BatchCurveResponse>, EmptyHttpResult, ProblemHttpResult>> AnswerAsync(
        string id, [AsParameters] CurveQuery query, PlanDesk desk, BatchRepeater repeater, HttpContext http)
    {
        (int upTo, ProblemHttpResult? fault) = query.Read();
        if (fault is not null)
        {
            return fault;
        }

        return PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is { } plan
            ? await CurveAsync(id, plan.Order, upTo, repeater, http)
            : problem!;
    }

    private static async Task<Results<Ok<BatchCurveResponse>, EmptyHttpResult, ProblemHttpResult>> CurveAsync(
        string id, Order order, int upTo, BatchRepeater repeater, HttpContext http)
    {
        List<CurvePointResponse> points = [];
        for (int times = 1; times <= upTo; times++)
        {
            if (TooMany(order, times) is { } limit)
            {
                return Curve(id, order, points, limit);
            }

            PlanSnapshot? last = await repeater.PlanAsync(ClientName.Of(http), order, times, http.RequestAborted);
            if (http.RequestAborted.IsCancellationRequested)
            {
                return TypedResults.Empty;
            }

            if (last?.Plan is not { } plan)
            {
                return last?.Problem is { Status: StatusCodes.Status422UnprocessableEntity } reason
                    ? Curve(id, order, points, reason.Detail)
                    : Unfinished(last, http);
            }

            points.Add(CurveTranslation.Write(plan, times));
        }

        return Curve(id, order, points, endsBecause: null);
    }

    private static Ok<BatchCurveResponse> Curve(string id, Order order, List<CurvePointResponse> points, string? endsBecause) =>
        TypedResults.Ok(new BatchCurveResponse
        {
            Id = id,
            Units = order.Units,
            Currency = order.Currency.Code,
            Points = points,
            EndsBecause = endsBecause,
        });

    private static string? TooMany(Order order, int times) =>
        order.Panels.FirstOrDefault(line => (long)Math.Max(line.Quantity, line.Spares) * times > WireLimits.Quantity) is { } line
            ? string.Create(CultureInfo.InvariantCulture, $"Line {line.Mark} made {times} times over is more than the {WireLimits.Quantity} panels one line may have.")
            : null;

    private static ProblemHttpResult Unfinished(PlanSnapshot? last, HttpContext http)
    {
        if (last?.Problem is { Status: not StatusCodes.Status503ServiceUnavailable } broken)
        {
            return TypedResults.Problem(broken);
        }

        int seconds = http.RequestServices.GetRequiredService<IOptions<PlanningOptions>>().Value.RetryAfterSeconds;
        http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        return last is null ? Problems.AllBusy() : TypedResults.Problem(last.Problem!);
    }
}
