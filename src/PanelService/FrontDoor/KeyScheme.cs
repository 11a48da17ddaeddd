using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace PanelService.FrontDoor;

/// <summary>Knows a script by its key: <c>Authorization: Bearer …</c> (RFC 6750).</summary>
internal sealed class KeyScheme(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logs, UrlEncoder encoder, AccessKey key)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logs, encoder)
{
    internal const string Name = "Bearer";

    private const string Lead = Name + " ";

    /// <summary>Whether a request shows a key, right or wrong.</summary>
    internal static bool IsShown(HttpRequest request) =>
        request.Headers.Authorization.ToString().StartsWith(Lead, StringComparison.OrdinalIgnoreCase);

    /// <summary>Says that a key is wanted, and of which kind (RFC 9110, 11.6.1).</summary>
    internal static Task RefuseAsync(HttpContext http)
    {
        http.Response.Headers.WWWAuthenticate = Name;
        return DoorProblems.NotIn().ExecuteAsync(http);
    }

    /// <inheritdoc/>
    protected override Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (!IsShown(Request))
        {
            return Task.FromResult(AuthenticateResult.NoResult());
        }

        bool known = key.Matches(Request.Headers.Authorization.ToString()[Lead.Length..].Trim());
        return Task.FromResult(known ? AuthenticateResult.Success(TicketOf("key")) : AuthenticateResult.Fail("wrong key"));
    }

    /// <inheritdoc/>
    protected override Task HandleChallengeAsync(AuthenticationProperties properties) => RefuseAsync(Context);

    private static AuthenticationTicket TicketOf(string who) =>
        new(new ClaimsPrincipal(new ClaimsIdentity([new Claim(ClaimTypes.NameIdentifier, who)], Name)), Name);
}
