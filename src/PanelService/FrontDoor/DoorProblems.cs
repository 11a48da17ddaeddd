using Microsoft.AspNetCore.Http.HttpResults;

namespace PanelService.FrontDoor;

/// <summary>Every way the front door refuses, as problem details (RFC 9457) with a stable type.</summary>
internal static class DoorProblems
{
    internal static ProblemHttpResult NotIn() => Of(
        "/problems/not-in",
        StatusCodes.Status401Unauthorized,
        "This service is open to the network, and you are not in.",
        "A script sends its key as Authorization: Bearer …; a browser joins with six digits, which any browser that is in can ask for.");

    internal static ProblemHttpResult WrongTicket() => Of(
        "/problems/wrong-code",
        StatusCodes.Status403Forbidden,
        "That code or link does not work.",
        "A code works once, for some minutes, and is dropped after five wrong tries. Ask for a new one in a browser that is in.");

    internal static ProblemHttpResult NothingToJoin() => Of(
        "/problems/nothing-to-join",
        StatusCodes.Status409Conflict,
        "This service serves this machine only.",
        "Nobody else can reach it, so there is nothing to join. How to open it to the network stands in the README under \"Open it to the workshop\".");

    internal static ProblemHttpResult CrossOrigin() => Of(
        "/problems/cross-origin",
        StatusCodes.Status403Forbidden,
        "A page of another origin may not do anything here.",
        "Nothing was changed. Requests to /api come from this service's own page, from a link that somebody follows, or from a script without Origin and Sec-Fetch-Site headers.");

    internal static ProblemHttpResult WrongHost(string host) => Of(
        "/problems/wrong-host",
        StatusCodes.Status421MisdirectedRequest,
        "This service does not go by that name.",
        $"The Host header says \"{host}\". Names it should answer to stand in the configuration under {FrontDoorOptions.Section}:{nameof(FrontDoorOptions.Hosts)}.");

    internal static ProblemHttpResult TooMany() => Of(
        "/problems/too-many-requests",
        StatusCodes.Status429TooManyRequests,
        "Too many requests.",
        "Nothing was done. Try again after the number of seconds that Retry-After names.");

    private static ProblemHttpResult Of(string type, int status, string title, string detail) =>
        TypedResults.Problem(detail: detail, statusCode: status, title: title, type: type);
}
