namespace PanelService.Hosting;

/// <summary>What a browser may do with our answers: nothing from any other host, no framing, no guessing of types.</summary>
internal static class SafetyHeaders
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; "
        + "worker-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    // The documentation page is a library's, whose markup carries style attributes. Scripts are from this origin there too.
    private const string DocumentationPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self'; "
        + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private const string DocumentationPage = "/docs";

    internal static void UseSafetyHeaders(this WebApplication app) => app.Use((http, next) =>
    {
        IHeaderDictionary headers = http.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
        headers.ContentSecurityPolicy = http.Request.Path.StartsWithSegments(DocumentationPage) ? DocumentationPolicy : Policy;
        return next(http);
    });
}
