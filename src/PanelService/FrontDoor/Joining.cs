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

    internal static Task JoinAsync(HttpContext http, AccessKey key)
    {
        string name = "browser " + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(NameBytes));
        Claim[] claims = [new(ClaimTypes.NameIdentifier, name), new(KeyClaim, key.Print)];
        return http.SignInAsync(Scheme, new ClaimsPrincipal(new ClaimsIdentity(claims, Scheme)), new AuthenticationProperties { IsPersistent = true });
    }

    internal static void Configure(CookieAuthenticationOptions cookie, IOptions<FrontDoorOptions> options)
    {
        cookie.Cookie.Name = "panel-service";
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
        string now = context.HttpContext.RequestServices.GetRequiredService<AccessKey>().Print;
        if (now.Length == 0 || context.Principal?.FindFirstValue(KeyClaim) != now)
        {
            context.RejectPrincipal();
            await context.HttpContext.SignOutAsync(Scheme);
        }
    }
}
