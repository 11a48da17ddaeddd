using Microsoft.AspNetCore.Authentication.Cookies;

namespace PanelService.FrontDoor;

/// <summary>
/// Over TLS a cookie's name begins with <c>__Host-</c>: browsers then take it only with Secure, for this host alone and for
/// every path (RFC 6265bis, 4.1.3.2). Over plain HTTP, where no browser would take such a name, it stays as it is.
/// </summary>
internal sealed class HostBoundCookies : ICookieManager
{
    internal const string Prefix = "__Host-";

    private readonly ChunkingCookieManager _cookies = new();

    /// <inheritdoc/>
    public string? GetRequestCookie(HttpContext context, string key) => _cookies.GetRequestCookie(context, NameOf(context, key));

    /// <inheritdoc/>
    public void AppendResponseCookie(HttpContext context, string key, string? value, CookieOptions options) =>
        _cookies.AppendResponseCookie(context, NameOf(context, key), value, options);

    /// <inheritdoc/>
    public void DeleteCookie(HttpContext context, string key, CookieOptions options) =>
        _cookies.DeleteCookie(context, NameOf(context, key), options);

    private static string NameOf(HttpContext context, string key) => context.Request.IsHttps ? Prefix + key : key;
}
