namespace PanelService.FrontDoor;

/// <summary>
/// Refuses writes that a page of another origin sends, by the browser's own word: Sec-Fetch-Site (W3C Fetch Metadata),
/// and Origin (RFC 6454) for browsers without it. Nor may such a page have anything read for it: it could not see the
/// answer, but a backup or a curve asked for again and again costs this machine all the same. Links that somebody follows
/// are no such reads. Scripts send neither header and are not hindered.
/// </summary>
internal sealed class OriginCheck(RequestDelegate next)
{
    private const string Site = "Sec-Fetch-Site";
    private const string Api = "/api";

    private static readonly string[] Ours = ["same-origin", "none"];

    /// <summary>Lets the request on, or answers 403.</summary>
    public Task InvokeAsync(HttpContext http) =>
        MayPass(http.Request) ? next(http) : DoorProblems.CrossOrigin().ExecuteAsync(http);

    private static bool MayPass(HttpRequest request) => IsRead(request.Method) ? IsOursOrFollowed(request) : IsSameOrigin(request);

    // Of reads only the browser's word for the site counts: Origin comes with reads that it then does not show to the page.
    private static bool IsOursOrFollowed(HttpRequest request) =>
        !request.Path.StartsWithSegments(Api, StringComparison.OrdinalIgnoreCase)
        || IsOurSite(request)
        || request.Headers["Sec-Fetch-Mode"] == "navigate";

    private static bool IsOurSite(HttpRequest request) =>
        request.Headers[Site].ToString() is var site && (site.Length == 0 || Ours.Contains(site, StringComparer.Ordinal));

    private static bool IsRead(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method);

    private static bool IsSameOrigin(HttpRequest request)
    {
        string origin = request.Headers.Origin.ToString();
        return IsOurSite(request) && (origin.Length == 0 || IsThis(request, origin));
    }

    // Without the scheme: behind a proxy that ends TLS the service sees plain HTTP.
    private static bool IsThis(HttpRequest request, string origin) =>
        Uri.TryCreate(origin, UriKind.Absolute, out Uri? from) && from.Authority.Equals(request.Host.Value, StringComparison.OrdinalIgnoreCase);
}
