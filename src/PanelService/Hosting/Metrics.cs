using OpenTelemetry.Metrics;
using PanelService.Work;

namespace PanelService.Hosting;

/// <summary>
/// Figures for whoever watches machines, sent by OpenTelemetry's own protocol when the configuration names a receiver, by
/// the standard's own variable. Otherwise nothing is measured and nothing leaves the machine.
/// </summary>
internal static class Metrics
{
    private const string Receiver = "OTEL_EXPORTER_OTLP_ENDPOINT";

    internal static void AddMetrics(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddSingleton<PlanningMeter>();
        if (!string.IsNullOrEmpty(configuration[Receiver]))
        {
            services.AddOpenTelemetry().WithMetrics(metrics => metrics
                .AddMeter(PlanningMeter.Name)
                .AddAspNetCoreInstrumentation()
                .AddRuntimeInstrumentation()
                .AddOtlpExporter());
        }
    }
}
