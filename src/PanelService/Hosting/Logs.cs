using System.Globalization;
using Serilog;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace PanelService.Hosting;

/// <summary>What is written down: addresses, states, ids and times; never what an order says.</summary>
internal static class Logs
{
    /// <summary>The response header with the id that every log line of a request carries.</summary>
    internal const string RequestIdHeader = "Request-Id";

    /// <summary>The configuration's section: "File" (default true), "DaysKept" (default 14).</summary>
    private const string Section = "Logs";
    private const int DaysKept = 14;
    private const long MostBytesAFile = 10_000_000;
    private const string Line = "[{Timestamp:HH:mm:ss} {Level:u3}] {Message:lj} {RequestId}{NewLine}{Exception}";

    internal static void AddLogs(this IServiceCollection services, IConfiguration configuration, string dataFolder) =>
        services.AddSerilog(
            log => Configure(log, configuration, dataFolder),
            preserveStaticLogger: true); // Every host its own: tests run several.

    /// <summary>One line a request, and its id on every other line and in the answer.</summary>
    internal static void UseRequestLog(this WebApplication app)
    {
        app.Use((http, next) =>
        {
            http.Response.Headers[RequestIdHeader] = http.TraceIdentifier;
            return next(http);
        });
        app.UseSerilogRequestLogging(options =>
        {
            options.Logger = app.Services.GetRequiredService<Serilog.ILogger>();
            options.GetMessageTemplateProperties = Properties;
            options.EnrichDiagnosticContext = (context, http) => context.Set("RequestId", http.TraceIdentifier);
        });
    }

    // The path as an address writes it: decoded it could hold a line's end, and what follows would pass for a line of ours.
    private static LogEventProperty[] Properties(HttpContext http, string path, double milliseconds, int status) =>
    [
        new("RequestMethod", new ScalarValue(http.Request.Method)),
        new("RequestPath", new ScalarValue(http.Request.Path.ToUriComponent())),
        new("StatusCode", new ScalarValue(status)),
        new("Elapsed", new ScalarValue(milliseconds)),
    ];

    private static void Configure(LoggerConfiguration log, IConfiguration configuration, string dataFolder)
    {
        log.MinimumLevel.Information()
            .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
            .MinimumLevel.Override("Microsoft.Hosting.Lifetime", LogEventLevel.Information)
            .Enrich.FromLogContext()
            .WriteTo.Console(outputTemplate: Line, formatProvider: CultureInfo.InvariantCulture);
        if (configuration.GetValue($"{Section}:File", true))
        {
            WriteToFile(log, Path.Combine(dataFolder, "logs", "panel-service-.json"), configuration.GetValue($"{Section}:DaysKept", DaysKept));
        }
    }

    // A folder that cannot be written to costs the file, not the service: the sink says so on the console and goes on.
    private static void WriteToFile(LoggerConfiguration log, string path, int days)
    {
        Serilog.Debugging.SelfLog.Enable(Console.Error);
        log.WriteTo.File(
            new CompactJsonFormatter(), path, rollingInterval: RollingInterval.Day, retainedFileCountLimit: days,
            fileSizeLimitBytes: MostBytesAFile, rollOnFileSizeLimit: true, shared: true);
    }
}
