using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Planning.Plans;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>Every way a request can fail, as problem details (RFC 9457) with a stable type.</summary>
internal static class Problems
{
    internal const string InvalidRequest = "/problems/invalid-request";
    internal const string MalformedJson = "/problems/malformed-json";
    internal const string BodyTooLarge = "/problems/body-too-large";
    internal const string UnsupportedMediaType = "/problems/unsupported-media-type";
    internal const string NoBoardFits = "/problems/no-board-fits";
    internal const string NotEnoughStock = "/problems/not-enough-stock";
    internal const string NoClothFits = "/problems/no-cloth-fits";
    internal const string TooManyPlaces = "/problems/too-many-places";
    internal const string NoSuchPlan = "/problems/no-such-plan";
    internal const string NoSuchPart = "/problems/no-such-part";
    internal const string NotPlannedYet = "/problems/not-planned-yet";
    internal const string NoPlan = "/problems/no-plan";
    internal const string NoPlanInTime = "/problems/no-plan-in-time";
    internal const string Busy = "/problems/busy";
    internal const string NotReadyNow = "/problems/not-ready";
    internal const string Json = "application/json";
    internal const string InternalError = "/problems/internal-error";

    internal static ProblemHttpResult Invalid(Faults faults) => With(
        new ProblemDetails
        {
            Type = InvalidRequest,
            Status = StatusCodes.Status400BadRequest,
            Title = "The request has faults.",
            Detail = "Nothing was planned. Each field under errors says what is wrong there and what would be right.",
        },
        "errors",
        faults.ToDictionary());

    internal static ProblemHttpResult Malformed(string detail) => With(
        new ProblemDetails
        {
            Type = MalformedJson,
            Status = StatusCodes.Status400BadRequest,
            Title = "The body is not JSON.",
            Detail = detail,
        },
        "errors",
        new Dictionary<string, string[]> { [JsonPath.Root] = [detail] });

    internal static ProblemHttpResult TooLarge(int limit) => Of(
        BodyTooLarge,
        StatusCodes.Status413PayloadTooLarge,
        "The body is too large.",
        $"A body may have at most {limit} bytes.");

    internal static ProblemHttpResult MediaType(string? given, string expected = Json) => Of(
        UnsupportedMediaType,
        StatusCodes.Status415UnsupportedMediaType,
        expected == Json ? "The body's type is not JSON." : "The body's type is not one that is read here.",
        $"Expected Content-Type: {expected} in UTF-8; this is {(string.IsNullOrEmpty(given) ? "not said" : given)}.");

    internal static ProblemHttpResult Unknown(string id) => Of(
        NoSuchPlan,
        StatusCodes.Status404NotFound,
        "There is no such plan.",
        $"No plan \"{id}\" is kept here; GET /api/plans lists those that are.");

    internal static ProblemHttpResult UnknownPart(string what, int number) => Of(
        NoSuchPart,
        StatusCodes.Status404NotFound,
        $"The plan has no such {what}.",
        $"There is no {what} {number} in this plan.");

    internal static ProblemHttpResult StillPlanning(string id) => Of(
        NotPlannedYet,
        StatusCodes.Status409Conflict,
        "The plan is not made yet.",
        $"Planning goes on; see /api/plans/{id}/progress.");

    internal static ProblemHttpResult Failed() => Of(
        NoPlan,
        StatusCodes.Status409Conflict,
        "There is no plan.",
        "Planning ended without one; GET of the plan itself says why.");

    internal static ProblemHttpResult AllBusy() => Of(
        Busy,
        StatusCodes.Status503ServiceUnavailable,
        "All planners are busy.",
        "Nothing was planned. Try again after the number of seconds that Retry-After names.");

    internal static ProblemHttpResult NotReady(string why) => Of(
        NotReadyNow,
        StatusCodes.Status503ServiceUnavailable,
        "Not ready to take an order.",
        why);

    internal static ProblemDetails StoppedTooSoon() => new()
    {
        Type = NoPlanInTime,
        Status = StatusCodes.Status503ServiceUnavailable,
        Title = "Stopped before there was a plan.",
        Detail = "The search was ended, by a stop, by the clock or for want of memory, before it had found a first plan. Send the order again, perhaps with less effort or in parts.",
    };

    internal static ProblemDetails Internal() => new()
    {
        Type = InternalError,
        Status = StatusCodes.Status500InternalServerError,
        Title = "Something went wrong here.",
        Detail = "The fault is the service's. Nothing stored was changed; the log has the details.",
    };

    internal static ProblemDetails Impossible(CannotBeMade reason) => new()
    {
        Type = reason.Reason switch
        {
            CannotReason.NoBoardFits => NoBoardFits,
            CannotReason.NotEnoughStock => NotEnoughStock,
            CannotReason.NoClothFits => NoClothFits,
            CannotReason.TooManyPlaces => TooManyPlaces,
            _ => throw new ArgumentOutOfRangeException(nameof(reason)),
        },
        Status = StatusCodes.Status422UnprocessableEntity,
        Title = reason.Reason == CannotReason.TooManyPlaces ? "The plan is too large to be written out." : "The order cannot be made.",
        Detail = reason.Detail,
        Extensions = { ["marks"] = reason.Marks.Select(line => new Unmakeable(line.Mark, line.Missing, line.Count)).ToArray() },
    };

    /// <summary>A curve of no points.</summary>
    internal static ProblemHttpResult NothingToDraw(string because) => Of(
        "/problems/nothing-to-draw",
        StatusCodes.Status422UnprocessableEntity,
        "There is nothing to draw.",
        $"The order cannot be made even once: {because}");

    private static ProblemHttpResult Of(string type, int status, string title, string detail) =>
        TypedResults.Problem(detail: detail, statusCode: status, title: title, type: type);

    private static ProblemHttpResult With(ProblemDetails problem, string extension, object value)
    {
        problem.Extensions[extension] = value;
        return TypedResults.Problem(problem);
    }
}

/// <summary>A line that cannot be made.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Missing">What is missing, in words.</param>
/// <param name="Count">How many of it are missing.</param>
internal sealed record Unmakeable(string Mark, string Missing, int Count);
