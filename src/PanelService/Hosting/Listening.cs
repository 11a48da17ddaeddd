using System.Security.Authentication;

namespace PanelService.Hosting;

/// <summary>Where the service listens: on this machine only, unless the configuration says otherwise.</summary>
internal static class Listening
{
    internal const string DefaultAddress = "http://localhost:5180";

    private static readonly string[] Settings = ["urls", "http_ports", "https_ports", "Kestrel:Endpoints"];

    internal static void ListenOnLoopbackByDefault(this WebApplicationBuilder builder)
    {
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.AddServerHeader = false;

            // Some systems still offer older ones.
            server.ConfigureHttpsDefaults(https => https.SslProtocols = SslProtocols.Tls12 | SslProtocols.Tls13);
        });
        if (!Settings.Any(setting => builder.Configuration.GetSection(setting).Exists()))
        {
            builder.WebHost.UseUrls(DefaultAddress);
        }
    }
}
