using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.AuthenticatedEncryption;
using Microsoft.AspNetCore.DataProtection.AuthenticatedEncryption.ConfigurationModel;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Options;

namespace PanelService.FrontDoor;

/// <summary>
/// Puts the front door in. On this machine alone nobody is asked for anything; open to the network everything but the
/// page's own files, the health answer and joining itself wants a key or a browser that has joined.
/// </summary>
internal static class Doorway
{
    /// <summary>The policy for everything a secret is tried at.</summary>
    internal const string TriesPolicy = "tries";

    internal static Reach AddFrontDoor(this WebApplicationBuilder builder, string dataFolder)
    {
        var reach = Reach.Of(builder.Configuration);
        IServiceCollection services = builder.Services;
        services.AddOptions<FrontDoorOptions>()
            .Bind(builder.Configuration.GetSection(FrontDoorOptions.Section)).ValidateDataAnnotations().ValidateOnStart();
        services.AddSingleton(reach);
        services.AddSingleton(new AccessKey(dataFolder));
        services.AddSingleton<JoinTickets>();
        services.AddSingleton(provider => new EndedStays(
            dataFolder, provider.GetRequiredService<TimeProvider>(), provider.GetRequiredService<IOptions<FrontDoorOptions>>()));
        services.AddAuthentications(reach, dataFolder);
        services.AddLimits();
        return reach;
    }

    /// <summary>Refuses what no page of ours and no script would send. Before anything is answered.</summary>
    internal static void UseOwnNames(this WebApplication app)
    {
        app.UseMiddleware<HostCheck>();
        app.UseMiddleware<OriginCheck>();
    }

    /// <summary>Whose request it is, whether that client asks too much, and whether it may come in. After the page's own files.</summary>
    internal static void UseFrontDoor(this WebApplication app)
    {
        app.UseAuthentication();
        app.UseRateLimiter();
        app.UseAuthorization();
    }

    /// <summary>Says at the console, never in the log, by which link the first browser joins.</summary>
    internal static void TellHowToJoin(this WebApplication app, Reach reach)
    {
        if (reach.Open)
        {
            // Made before anybody hears that the service is up: a link made later is the one that works.
            string word = app.Services.GetRequiredService<JoinTickets>().NewLink();
            app.Lifetime.ApplicationStarted.Register(() => Tell(app, word));
        }
    }

    private static void Tell(WebApplication app, string word)
    {
        if (app.Urls.Any(address => address.StartsWith("http:", StringComparison.OrdinalIgnoreCase)))
        {
            Console.WriteLine("Plain HTTP: whoever shares the network can read along, unless a proxy in front of it ends TLS. A certificate changes that (Kestrel:Certificates:Default).");
        }

        Console.WriteLine($"To join with a browser, add this to the page's address, within minutes and once: /#join={word}");
    }

    private static void AddAuthentications(this IServiceCollection services, Reach reach, string dataFolder)
    {
        services.AddAuthentication(Joining.Scheme)
            .AddScheme<AuthenticationSchemeOptions, KeyScheme>(KeyScheme.Name, null)
            .AddCookie(Joining.Scheme, cookie => cookie.ForwardDefaultSelector = http => KeyScheme.IsShown(http.Request) ? KeyScheme.Name : null);
        services.AddOptions<CookieAuthenticationOptions>(Joining.Scheme)
            .Configure<IOptions<FrontDoorOptions>>(Joining.Configure);
        services.AddAuthorizationBuilder().SetFallbackPolicy(reach.Open ? MustBeIn() : null);
        IDataProtectionBuilder protection = services.AddDataProtection().SetApplicationName("panel-service")
            .UseCryptographicAlgorithms(new AuthenticatedEncryptorConfiguration { EncryptionAlgorithm = EncryptionAlgorithm.AES_256_GCM });
        if (reach.Open)
        {
            protection.PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(dataFolder, "cookie-keys")));
        }
        else
        {
            // Nobody joins: nothing to keep.
            protection.UseEphemeralDataProtectionProvider();
        }
    }

    private static AuthorizationPolicy MustBeIn() => new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build();

    private static void AddLimits(this IServiceCollection services) =>
        services.AddOptions<RateLimiterOptions>().Configure<IOptions<FrontDoorOptions>>((limiter, door) =>
        {
            limiter.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(http => Share(http, door.Value));
            limiter.AddPolicy(TriesPolicy, _ => RateLimitPartition.GetFixedWindowLimiter(
                TriesPolicy, _ => new FixedWindowRateLimiterOptions { PermitLimit = door.Value.TriesPerMinute, Window = TimeSpan.FromMinutes(1) }));
        });

    private static RateLimitPartition<string> Share(HttpContext http, FrontDoorOptions door)
    {
        string client = ClientName.Of(http);
        return client == ClientName.Local
            ? RateLimitPartition.GetNoLimiter(client)
            : RateLimitPartition.GetTokenBucketLimiter(client, _ => new TokenBucketRateLimiterOptions
            {
                TokenLimit = door.RequestsPerMinute,

                // Six seconds: a tenth of what a minute gives is a whole number of requests, also of the fewest there can be.
                TokensPerPeriod = door.RequestsPerMinute / 10,
                ReplenishmentPeriod = TimeSpan.FromSeconds(6),
            });
    }
}
