using System.Net;
using Microsoft.Extensions.Options;

namespace PanelService.FrontDoor;

/// <summary>
/// Answers only to names that are its own. A page elsewhere that gives its own name this machine's address (DNS
/// rebinding) would else read what it likes; it cannot do so under a plain address or under localhost.
/// </summary>
internal sealed class HostCheck(RequestDelegate next, IOptions<FrontDoorOptions> options, Reach reach)
{
    private readonly HashSet<string> _names = Names(options.Value, reach);

    /// <summary>Lets the request on, or answers 421.</summary>
    public Task InvokeAsync(HttpContext http) =>
        IsOurs(http.Request.Host) ? next(http) : DoorProblems.WrongHost(http.Request.Host.Host).ExecuteAsync(http);

    private bool IsOurs(HostString host) =>
        host.HasValue && (_names.Contains(host.Host) || Reach.IsLoopback(host.Host) || (reach.Open && IPAddress.TryParse(host.Host.Trim('[', ']'), out _)));

    private static HashSet<string> Names(FrontDoorOptions options, Reach reach)
    {
        var names = new HashSet<string>(options.Hosts, StringComparer.OrdinalIgnoreCase);
        if (reach.Open)
        {
            names.Add(Environment.MachineName);
            names.Add(Environment.MachineName + ".local");
        }

        return names;
    }
}
