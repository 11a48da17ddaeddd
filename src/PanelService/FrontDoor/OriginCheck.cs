namespace PanelService.FrontDoor;

/// <summary>
/// Refuses writes that a page of another origin sends, by the browser's own word: Sec-Fetch-Site (W3C Fetch Metadata),
/// and Origin (RFC 6454) for browsers without it. Scripts send neither and are not hindered.
/// </summary>
internal sealed class OriginCheck(RequestDelegate next)
{
    private static readonly string[] Ours = ["same-origin", "none"];

    /// <summary>Lets the request on, or answers 403.</summary>
    public Task InvokeAsync(HttpContext http) =>
        IsRead(http.Request.Method) || IsSameOrigin(http.Request) ? next(http) : DoorProblems.CrossOrigin().ExecuteAsync(http);

    private static bool IsRead(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method);

    private static bool IsSameOrigin(HttpRequest request)
    {
        string site = request.Headers["Sec-Fetch-Site"].ToString();
        string origin = request.Headers.Origin.ToString();
        return (site.Length == 0 || Ours.Contains(site, StringComparer.Ordinal))
            && (origin.Length == 0 || IsThis(request, origin));
    }

    // Without the scheme: behind a proxy that ends TLS the service sees plain HTTP.
    private static bool IsThis(HttpRequest request, string origin) =>
        Uri.TryCreate(origin, UriKind.Absolute, out Uri? from) && from.Authority.Equals(request.Host.Value, StringComparison.OrdinalIgnoreCase);
}
