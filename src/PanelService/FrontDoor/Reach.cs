using System.Net;
using Microsoft.AspNetCore.Http;

namespace PanelService.FrontDoor;

/// <summary>How far the service reaches: this machine only, or the network, directly or through a proxy on this machine.</summary>
/// <param name="Open">Whether anybody but this machine could ask for anything.</param>
internal sealed record Reach(bool Open)
{
    // The platform's own switch, ASPNETCORE_FORWARDEDHEADERS_ENABLED in the environment.
    private const string BehindProxy = "FORWARDEDHEADERS_ENABLED";

    /// <summary>Looks at every address the server would listen on, and at what only makes sense for clients from elsewhere.</summary>
    /// <param name="configuration">The host's configuration, with its default address already put in.</param>
    internal static Reach Of(IConfiguration configuration) =>
        new(Addresses(configuration).Any(IsOpen) || HasPorts(configuration) || IsBehindProxy(configuration));

    /// <summary>Whether a name or an address in a URL means this machine itself.</summary>
    internal static bool IsLoopback(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out IPAddress? address) && IPAddress.IsLoopback(address));

    private static IEnumerable<string> Addresses(IConfiguration configuration) =>
        Split(configuration["urls"])
            .Concat(configuration.GetSection("Kestrel:Endpoints").GetChildren().Select(endpoint => endpoint["Url"] ?? ""))
            .Where(address => address.Length > 0);

    // A port alone listens on every address of the machine.
    private static bool HasPorts(IConfiguration configuration) =>
        string.IsNullOrEmpty(configuration["urls"])
        && Split(configuration["http_ports"]).Concat(Split(configuration["https_ports"])).Any();

    private static string[] Split(string? list) =>
        list?.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [];

    // A proxy on this machine connects from this machine: every client of the network would pass for it.
    private static bool IsBehindProxy(IConfiguration configuration) =>
        string.Equals(configuration[BehindProxy], "true", StringComparison.OrdinalIgnoreCase)
        || configuration.GetSection($"{FrontDoorOptions.Section}:{nameof(FrontDoorOptions.Hosts)}").GetChildren().Any(name => !IsLoopback(name.Value ?? ""));

    // What cannot be read is taken for open: better asked for a key once too often.
    private static bool IsOpen(string address)
    {
        try
        {
            return !IsLoopback(BindingAddress.Parse(address).Host);
        }
        catch (FormatException)
        {
            return true;
        }
    }
}
