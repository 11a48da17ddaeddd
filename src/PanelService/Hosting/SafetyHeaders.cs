using PanelService.FrontDoor;

namespace PanelService.Hosting;

/// <summary>What a browser may do with our answers: nothing from any other host, no framing, no guessing of types.</summary>
internal static class SafetyHeaders
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; "
        + "worker-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    // The documentation page is a library's, whose markup carries style attributes. Scripts are from this origin there too.
    private const string DocumentationPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self'; "
        + "object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    // Documents and drawings. Opened by themselves they may load and run nothing, and count as no origin's.
    private const string ApiPolicy =
        "default-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; sandbox";

    private const string Api = "/api";
    private const string KeepNothing = "no-store";
    private const string DocumentationPage = "/docs";
    private const string Worker = "/sw.js";
    private const string OneYear = "max-age=31536000";

    // Put in at the last moment: whoever answers an exception clears the headers first.
    internal static void UseSafetyHeaders(this WebApplication app) => app.Use((http, next) =>
    {
        http.Response.OnStarting(() =>
        {
            PutIn(http);
            NameCharacters(http.Response);
            return Task.CompletedTask;
        });
        return next(http);
    });

    private static void PutIn(HttpContext http)
    {
        IHeaderDictionary headers = http.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (!IsPartOfAPage(http))
        {
            headers.XFrameOptions = "DENY";
            headers["Referrer-Policy"] = "no-referrer";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
            headers.ContentSecurityPolicy = PolicyAt(http.Request.Path);
        }

        // What the studio has is for whoever asks now, not for whoever uses this browser later; the page keeps by itself what it wants to.
        if (headers.CacheControl.Count == 0 && http.Request.Path.StartsWithSegments(Api, StringComparison.Ordinal))
        {
            headers.CacheControl = KeepNothing;
        }

        // Not for localhost: every other service of this machine's developers would be held to TLS, too.
        if (http.Request.IsHttps && !Reach.IsLoopback(http.Request.Host.Host))
        {
            headers.StrictTransportSecurity = OneYear;
        }
    }

    // A script or a style is held to the policy of the page that asks for it, and a browser that opens one by itself shows
    // its text: the page asks for fifty, and half a kilobyte on each would be a sixth of its weight. A worker has its own.
    private static bool IsPartOfAPage(HttpContext http) =>
        http.Response.StatusCode < StatusCodes.Status400BadRequest
        && http.Request.Path != Worker
        && http.Response.ContentType?.Split(';')[0].Trim() is "text/javascript" or "text/css";

    private static string PolicyAt(PathString path) =>
        path.StartsWithSegments(DocumentationPage, StringComparison.Ordinal) ? DocumentationPolicy
        : path.StartsWithSegments(Api, StringComparison.Ordinal) ? ApiPolicy
        : Policy;

    // Static files come without; ASVS 4.1.1 wants it on all text and XML.
    private static void NameCharacters(HttpResponse answer)
    {
        if (answer.ContentType is { } type && IsText(type) && !type.Contains("charset=", StringComparison.OrdinalIgnoreCase))
        {
            answer.ContentType = type + "; charset=utf-8";
        }
    }

    private static bool IsText(string type)
    {
        string essence = type.Split(';')[0].Trim();
        return essence.StartsWith("text/", StringComparison.OrdinalIgnoreCase)
            || essence.EndsWith("+xml", StringComparison.OrdinalIgnoreCase)
            || essence.EndsWith("/xml", StringComparison.OrdinalIgnoreCase);
    }
}
