using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.FrontDoor;

namespace PanelService.Endpoints;

/// <summary>Coming in when the service is open to the network: six digits from a browser that is in to one that is not.</summary>
internal static class AccessEndpoints
{
    // The order and the last plan, which the page keeps to work without the network, go with the browser that leaves.
    private const string EverythingKept = "\"cache\", \"storage\"";

    // A stranger's body is read before anybody knows who it is.
    private const long MostJoinBytes = 4096;

    internal static void MapAccess(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder access = routes.MapGroup("/api/access").WithTags("Access").ProducesProblem(StatusCodes.Status429TooManyRequests);
        access.MapGet("", Look).AllowAnonymous().WithName("GetAccess").WithSummary("Whether a key is asked for here, and whether the caller is in.");
        access.MapPost("/codes", GiveCode).WithName("CreateJoinCode").WithSummary("Six digits that let one more browser join, once, for some minutes.")
            .ProducesProblem(StatusCodes.Status409Conflict);
        access.MapPost("/join", JoinAsync).AllowAnonymous().RequireRateLimiting(Doorway.TriesPolicy).WithMetadata(new RequestSizeLimitAttribute(MostJoinBytes))
            .WithName("Join").WithSummary("Joins this browser with six digits or with the word of a link; the answer sets its cookie.")
            .ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status403Forbidden);
        access.MapDelete("", (Delegate)LeaveAsync).AllowAnonymous().WithName("Leave").WithSummary("This browser leaves: its cookie is taken back, and it is to keep nothing of ours.");
    }

    private static Ok<AccessResponse> Look(Reach reach, HttpContext http) =>
        TypedResults.Ok(new AccessResponse(reach.Open, !reach.Open || http.User.Identity?.IsAuthenticated == true));

    private static Results<Ok<JoinCodeResponse>, ProblemHttpResult> GiveCode(Reach reach, JoinTickets tickets)
    {
        if (!reach.Open)
        {
            return DoorProblems.NothingToJoin();
        }

        (string code, DateTimeOffset ends) = tickets.NewCode();
        return TypedResults.Ok(new JoinCodeResponse(code, ends));
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> JoinAsync([FromBody] JoinRequest wish, JoinTickets tickets, AccessKey key, EndedStays ended, HttpContext http)
    {
        if (!tickets.Redeem(wish.Code ?? ""))
        {
            return DoorProblems.WrongTicket();
        }

        await Joining.JoinAsync(http, key, ended);
        return TypedResults.NoContent();
    }

    private static async Task<NoContent> LeaveAsync(EndedStays ended, HttpContext http)
    {
        await Joining.LeaveAsync(http, ended);
        http.Response.Headers["Clear-Site-Data"] = EverythingKept;
        return TypedResults.NoContent();
    }
}

/// <summary>How the front door stands.</summary>
/// <param name="Asked">Whether the service is open to the network and asks for a key or a code.</param>
/// <param name="In">Whether the caller is in.</param>
internal sealed record AccessResponse(bool Asked, bool In);

/// <summary>What a browser joins with. In the body, since addresses are logged.</summary>
/// <param name="Code">Six digits, or the word of a link.</param>
internal sealed record JoinRequest(string? Code);

/// <summary>Six digits to read out.</summary>
/// <param name="Code">The digits.</param>
/// <param name="Ends">When they stop working.</param>
internal sealed record JoinCodeResponse(string Code, DateTimeOffset Ends);
