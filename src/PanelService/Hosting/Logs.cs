using System.Globalization;
using Serilog;
using Serilog.Events;

namespace PanelService.Hosting;

/// <summary>What is written down: addresses, states, ids and times; never what an order says.</summary>
internal static class Logs
{
    internal static void AddLogs(this IServiceCollection services) =>
        services.AddSerilog(log => log
            .MinimumLevel.Information()
            .MinimumLevel.Override("Microsoft.AspNetCore", LogEventLevel.Warning)
            .WriteTo.Console(formatProvider: CultureInfo.InvariantCulture));
}
