using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.Options;
using PanelService.Drawing;
using PanelService.FrontDoor;
using PanelService.Http;
using PanelService.Planning.Curves;
using PanelService.Planning.Orders;
using PanelService.Validation;
using PanelService.Wire.Curves;
using PanelService.Work;

namespace PanelService.Endpoints;

/// <summary>The plan's order made 1, 2, … times over: one search after another, until one cannot be made or the client goes away.</summary>
internal static class BatchCurveEndpoint
{
    private const string Svg = "image/svg+xml";

    internal static async Task<Results<Ok<BatchCurveResponse>, EmptyHttpResult, ProblemHttpResult>> AnswerAsync(
        string id, [AsParameters] CurveQuery query, PlanDesk desk, BatchRepeater repeater, HttpContext http) =>
        await CurveOfAsync(id, query, desk, repeater, http) switch
        {
            { Curve: { } curve } => TypedResults.Ok(CurveTranslation.Write(id, curve)),
            { Problem: { } problem } => problem,
            _ => TypedResults.Empty,
        };

    internal static async Task<Results<ContentHttpResult, EmptyHttpResult, ProblemHttpResult>> DrawAsync(
        string id, [AsParameters] CurveQuery query, PlanDesk desk, BatchRepeater repeater, HttpContext http) =>
        await CurveOfAsync(id, query, desk, repeater, http) switch
        {
            { Curve: { Points.IsEmpty: false } curve } => TypedResults.Text(CurveDrawing.Render(curve), Svg, Encoding.UTF8),
            { Curve: { } empty } => Problems.NothingToDraw(empty.EndsBecause ?? ""),
            { Problem: { } problem } => problem,
            _ => TypedResults.Empty,
        };

    private static async Task<Outcome> CurveOfAsync(
        string id, CurveQuery query, PlanDesk desk, BatchRepeater repeater, HttpContext http)
    {
        (int upTo, ProblemHttpResult? fault) = query.Read();
        if (fault is not null)
        {
            return new Outcome(null, fault);
        }

        return PlanPartEndpoints.PlanOf(id, desk, out ProblemHttpResult? problem) is { } plan
            ? await PlanAsync(plan.Order, upTo, repeater, http)
            : new Outcome(null, problem);
    }

    private static async Task<Outcome> PlanAsync(Order order, int upTo, BatchRepeater repeater, HttpContext http)
    {
        List<CurvePoint> points = [];
        for (int times = 1; times <= upTo; times++)
        {
            if (TooMany(order, times) is { } limit)
            {
                return Whole(order, points, limit);
            }

            PlanSnapshot? last = await repeater.PlanAsync(ClientName.Of(http), order, times, http.RequestAborted);
            if (http.RequestAborted.IsCancellationRequested)
            {
                return new Outcome(null, null);
            }

            if (last?.Plan is not { } plan)
            {
                return last?.Problem is { Status: StatusCodes.Status422UnprocessableEntity } reason
                    ? Whole(order, points, reason.Detail)
                    : new Outcome(null, Unfinished(last, http));
            }

            points.Add(CurvePoint.Of(plan, times));
        }

        return Whole(order, points, endsBecause: null);
    }

    private static Outcome Whole(Order order, List<CurvePoint> points, string? endsBecause) =>
        new(new BatchCurve(order, [.. points], endsBecause), null);

    private static string? TooMany(Order order, int times) =>
        order.Panels.FirstOrDefault(line => (long)Math.Max(line.Quantity, line.Spares) * times > WireLimits.Quantity) is { } line
            ? string.Create(CultureInfo.InvariantCulture, $"Line {line.Mark} made {times} times over is more than the {WireLimits.Quantity} panels one line may have.")
            : order.Panels.Sum(line => ((long)line.Quantity + line.Spares) * times) > WireLimits.Panels
                ? string.Create(CultureInfo.InvariantCulture, $"All lines together made {times} times over are more than the {WireLimits.Panels} panels that are planned in one order.")
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

    /// <summary>A curve, or the problem with it; neither where the client went away.</summary>
    private sealed record Outcome(BatchCurve? Curve, ProblemHttpResult? Problem);
}
