namespace PanelService.Hosting;

/// <summary>What a browser may do with our answers: nothing from any other host, no framing, no guessing of types.</summary>
internal static class SafetyHeaders
{
    private const string Policy =
        "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    // The page of the documentation carries its own start in the markup.
    private const string DocumentationPage = "/docs";

    internal static void UseSafetyHeaders(this WebApplication app) => app.Use((http, next) =>
    {
        http.Response.Headers.XContentTypeOptions = "nosniff";
        http.Response.Headers["Referrer-Policy"] = "no-referrer";
        if (!http.Request.Path.StartsWithSegments(DocumentationPage))
        {
            http.Response.Headers.ContentSecurityPolicy = Policy;
        }

        return next(http);
    });
}
