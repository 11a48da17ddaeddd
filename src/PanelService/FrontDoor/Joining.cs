using System.Security.Claims;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.Extensions.Options;

namespace PanelService.FrontDoor;

/// <summary>A browser's stay: a cookie it gets when it joins, worth nothing once the key is another.</summary>
internal static class Joining
{
    internal const string Scheme = CookieAuthenticationDefaults.AuthenticationScheme;

    private const string KeyClaim = "key";
    private const int NameBytes = 9;

    internal static Task JoinAsync(HttpContext http, AccessKey key, EndedStays ended)
    {
        EndStay(http, ended);
        string name = "browser " + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(NameBytes));
        Claim[] claims = [new(ClaimTypes.NameIdentifier, name), new(KeyClaim, key.Print)];
        return http.SignInAsync(Scheme, new ClaimsPrincipal(new ClaimsIdentity(claims, Scheme)), new AuthenticationProperties { IsPersistent = true });
    }

    /// <summary>Takes the browser's cookie back, and makes every copy of it worthless.</summary>
    internal static Task LeaveAsync(HttpContext http, EndedStays ended)
    {
        EndStay(http, ended);
        return http.SignOutAsync(Scheme);
    }

    private static void EndStay(HttpContext http, EndedStays ended)
    {
        if (http.User is { Identity: { IsAuthenticated: true, AuthenticationType: Scheme } } who)
        {
            ended.End(who.FindFirstValue(ClaimTypes.NameIdentifier)!);
        }
    }

    internal static void Configure(CookieAuthenticationOptions cookie, IOptions<FrontDoorOptions> options)
    {
        cookie.Cookie.Name = "panel-service";
        cookie.CookieManager = new HostBoundCookies();
        cookie.Cookie.Path = "/";
        cookie.Cookie.HttpOnly = true;
        cookie.Cookie.SameSite = SameSiteMode.Strict;
        cookie.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        cookie.ExpireTimeSpan = TimeSpan.FromDays(options.Value.SessionDays);
        cookie.SlidingExpiration = true;
        cookie.Events.OnValidatePrincipal = HoldToKeyAsync;
        cookie.Events.OnRedirectToLogin = context => KeyScheme.RefuseAsync(context.HttpContext);
    }

    private static async Task HoldToKeyAsync(CookieValidatePrincipalContext context)
    {
        IServiceProvider services = context.HttpContext.RequestServices;
        string now = services.GetRequiredService<AccessKey>().Print;
        bool isHeld = now.Length > 0 && context.Principal?.FindFirstValue(KeyClaim) == now;
        if (!isHeld || services.GetRequiredService<EndedStays>().Has(context.Principal!.FindFirstValue(ClaimTypes.NameIdentifier) ?? ""))
        {
            context.RejectPrincipal();
            await context.HttpContext.SignOutAsync(Scheme);
        }
    }
}
