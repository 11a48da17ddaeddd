using System.Globalization;

namespace PanelService.Http;

/// <summary>The Prefer header (RFC 7240).</summary>
internal static class Preferences
{
    private const string Async = "respond-async";
    private const string Wait = "wait";
    private const int MostSeconds = 30;

    /// <summary>
    /// How long the client would be kept before it is answered without a plan, where it would rather be answered than kept:
    /// not at all, or as long as its <c>wait</c> says. The answer says what is heeded.
    /// </summary>
    /// <returns>Null where it waits for the end.</returns>
    internal static TimeSpan? Patience(HttpContext http)
    {
        string[] preferences = [.. http.Request.Headers["Prefer"].SelectMany(value => (value ?? "").Split(',')).Select(preference => preference.Split(';')[0].Trim())];
        if (!preferences.Contains(Async, StringComparer.OrdinalIgnoreCase))
        {
            return null;
        }

        int? seconds = preferences.Select(SecondsOf).FirstOrDefault(one => one is not null);
        http.Response.Headers["Preference-Applied"] = seconds is null ? Async : string.Create(CultureInfo.InvariantCulture, $"{Async}, {Wait}={seconds}");
        return TimeSpan.FromSeconds(seconds ?? 0);
    }

    private static int? SecondsOf(string preference) =>
        preference.Split('=') is [var name, var value] && name.Trim().Equals(Wait, StringComparison.OrdinalIgnoreCase)
            && int.TryParse(value.Trim().Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out int seconds)
            ? Math.Min(seconds, MostSeconds)
            : null;
}
