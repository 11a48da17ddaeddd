using System.Net;
using System.Security.Claims;

namespace PanelService.FrontDoor;

/// <summary>Who a request comes from, as far as shares and limits go: a joined browser, a key, or an address.</summary>
internal static class ClientName
{
    internal const string Local = "this machine";

    internal static string Of(HttpContext http) =>
        http.User.FindFirstValue(ClaimTypes.NameIdentifier) is { } joined ? joined : AddressOf(http);

    /// <summary>The address alone, for those who have not come in.</summary>
    internal static string AddressOf(HttpContext http) =>
        http.Connection.RemoteIpAddress is { } address && !IPAddress.IsLoopback(address) ? address.ToString() : Local;
}
