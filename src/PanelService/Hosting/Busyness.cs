using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Options;
using PanelService.Endpoints;
using PanelService.FrontDoor;
using PanelService.Http;
using PanelService.Work;

namespace PanelService.Hosting;

/// <summary>Answers that are computed while the client waits: as many at once as there are planners, some waiting, the rest refused.</summary>
internal static class Busyness
{
    internal const string Policy = "computed";

    internal static void AddBusyness(this IServiceCollection services)
    {
        services.AddRateLimiter(limiter => limiter.OnRejected = RefuseAsync);
        services.AddOptions<RateLimiterOptions>().Configure<IOptions<PlanningOptions>>((limiter, planning) =>
            limiter.AddConcurrencyLimiter(Policy, options =>
            {
                options.PermitLimit = Math.Max(1, planning.Value.Planners);
                options.QueueLimit = planning.Value.Waiting;
                options.QueueProcessingOrder = QueueProcessingOrder.OldestFirst;
            }));
    }

    /// <summary>
    /// What is refused before it is read. An order for which its client has no room left in the queue is: refusing costs next to
    /// nothing then, however often it is asked for. A plan that is not kept takes no place in it, and is refused only while it is full.
    /// </summary>
    internal static void UseEarlyRefusal(this WebApplication app)
    {
        PlannerQueue queue = app.Services.GetRequiredService<PlannerQueue>();
        PlanningOptions options = app.Services.GetRequiredService<IOptions<PlanningOptions>>().Value;
        app.Use((http, next) => BodyReader.IsInOtherCharacters(http.Request.ContentType)
            ? Problems.MediaType(http.Request.ContentType).ExecuteAsync(http)
            : next(http));
        app.Use((http, next) => HttpMethods.IsPost(http.Request.Method) && http.Request.Path.Equals(PlanEndpoints.Address, StringComparison.OrdinalIgnoreCase) && HasNoRoom(http)
            ? RefuseAsync(http, options.RetryAfterSeconds, Problems.AllBusy())
            : next(http));
        bool HasNoRoom(HttpContext http) => NewPlanQuery.IsPassing(http.Request.Query) ? queue.IsFull : queue.IsFullFor(ClientName.Of(http));
    }

    // A limit over time says when there is room again; the planners' limit, which cannot know, does not.
    private static async ValueTask RefuseAsync(OnRejectedContext context, CancellationToken cancellation)
    {
        HttpContext http = context.HttpContext;
        if (context.Lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan wait))
        {
            await RefuseAsync(http, (int)Math.Ceiling(wait.TotalSeconds), DoorProblems.TooMany());
            return;
        }

        int seconds = http.RequestServices.GetRequiredService<IOptions<PlanningOptions>>().Value.RetryAfterSeconds;
        await RefuseAsync(http, seconds, Problems.AllBusy());
    }

    private static Task RefuseAsync(HttpContext http, int seconds, ProblemHttpResult answer)
    {
        http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        return answer.ExecuteAsync(http);
    }
}
