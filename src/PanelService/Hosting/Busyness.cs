using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Options;
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
                options.PermitLimit = planning.Value.Planners;
                options.QueueLimit = planning.Value.Waiting;
                options.QueueProcessingOrder = QueueProcessingOrder.OldestFirst;
            }));
    }

    private static async ValueTask RefuseAsync(OnRejectedContext context, CancellationToken cancellation)
    {
        HttpContext http = context.HttpContext;
        int seconds = http.RequestServices.GetRequiredService<IOptions<PlanningOptions>>().Value.RetryAfterSeconds;
        http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        await Problems.AllBusy().ExecuteAsync(http);
    }
}
