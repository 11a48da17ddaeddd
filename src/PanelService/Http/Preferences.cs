namespace PanelService.Http;

/// <summary>The Prefer header (RFC 7240).</summary>
internal static class Preferences
{
    private const string Async = "respond-async";

    /// <summary>Whether the client would rather be answered at once; the answer says that it is heeded.</summary>
    internal static bool RespondAsync(HttpContext http)
    {
        bool wanted = http.Request.Headers["Prefer"]
            .SelectMany(value => (value ?? "").Split(','))
            .Select(preference => preference.Split(';')[0].Trim())
            .Contains(Async, StringComparer.OrdinalIgnoreCase);
        if (wanted)
        {
            http.Response.Headers["Preference-Applied"] = Async;
        }

        return wanted;
    }
}
