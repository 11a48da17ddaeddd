using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;
using PanelService.Store.Versions;

namespace PanelService.Http;

/// <summary>Versions as entity tags (RFC 9110): sent as ETag, asked for by If-Match and If-None-Match.</summary>
internal static class Preconditions
{
    internal const string Failed = "/problems/version-changed";
    internal const string Missing = "/problems/version-needed";
    private const string Any = "*";

    // No stored version: a tag of another's making never matches.
    private const int Foreign = -1;

    internal static string TagOf(int version) => string.Create(CultureInfo.InvariantCulture, $"\"{version}\"");

    /// <summary>Sends a version along.</summary>
    internal static void SendTag(this HttpResponse response, int version) => response.Headers.ETag = TagOf(version);

    /// <summary>Under which version a request wants its change made.</summary>
    internal static Precondition Read(HttpRequest request)
    {
        StringValues match = request.Headers.IfMatch;
        StringValues none = request.Headers.IfNoneMatch;
        bool any = IsAny(match);
        return new Precondition(StringValues.IsNullOrEmpty(match) || any ? null : Versions(match), any, IsAny(none));
    }

    /// <summary>The answer to a change whose condition does not hold or is missing.</summary>
    internal static ProblemHttpResult Refuse(VersionRefusal refusal)
    {
        string now = refusal.Stored is { } version ? $"the stored version is {TagOf(version)}" : "nothing is stored here";
        return refusal.IsMissing
            ? TypedResults.Problem(
                type: Missing,
                statusCode: StatusCodes.Status428PreconditionRequired,
                title: "Say which version you are changing.",
                detail: $"There is something here already, and changing it without having seen it could undo another's work: send If-Match with the ETag that GET gives ({now}).")
            : TypedResults.Problem(
                type: Failed,
                statusCode: StatusCodes.Status412PreconditionFailed,
                title: "It has changed since you looked.",
                detail: $"The condition of the request does not hold: {now}. Nothing was changed. GET it again, and send the change with its ETag.");
    }

    private static bool IsAny(StringValues header) => header.Count == 1 && header[0]?.Trim() == Any;

    private static ImmutableArray<int> Versions(StringValues header) =>
        EntityTagHeaderValue.TryParseList([.. header.OfType<string>()], out IList<EntityTagHeaderValue>? tags)
            ? [.. tags.Select(VersionOf)]
            : [Foreign];

    // Weak tags never match where a change is at stake.
    private static int VersionOf(EntityTagHeaderValue tag) =>
        !tag.IsWeak && int.TryParse(tag.Tag.AsSpan().Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out int version) ? version : Foreign;
}
