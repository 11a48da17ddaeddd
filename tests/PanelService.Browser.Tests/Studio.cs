using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Playwright;
using PanelService.Tests.Shared;

namespace PanelService.Browser.Tests;

/// <summary>The service on a port of its own, and one browser for all tests.</summary>
[SuppressMessage("Design", "CA1001", Justification = "The test runner disposes it through IAsyncLifetime.")]
public sealed class Studio : IAsyncLifetime
{
    /// <summary>A machine that is busy with other tests is slow, not wrong.</summary>
    private const float Patience = 90_000;

    /// <summary>
    /// The page tries changes where planning was quick. By this clock it never was: most tests do not look at changes, and trying
    /// them takes more than the rest of the test.
    /// </summary>
    private const string NoHints = "{ let minutes = 0; performance.now = () => 60000 * minutes++; }";

    private readonly Host _host = new();
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private IPage? _bare;

    public Uri Address => _host.ClientOptions.BaseAddress;

    public async Task InitializeAsync()
    {
        if (!Chromium.IsThere)
        {
            return;
        }

        _host.UseKestrel(0);
        _host.StartServer();
        Assertions.SetDefaultExpectTimeout(Patience);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Chromium.Path,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        await _host.DisposeAsync();
    }

    /// <summary>A page of the service without the ticket, enough to load its modules; one for all who ask, since modules keep nothing.</summary>
    internal async Task<IPage> BareAsync()
    {
        if (_bare is null)
        {
            _bare = await _browser!.NewPageAsync();
            _bare.SetDefaultTimeout(Patience);
            await _bare.GotoAsync(new Uri(Address, "health").ToString());
        }

        return _bare;
    }

    /// <summary>The page as a first visitor sees it, in a context of its own.</summary>
    internal async Task<IPage> VisitAsync(int width = 1280, int height = 900)
    {
        IPage page = await OpenAsync(Address, width, height);
        await page.Locator(".lines .line").First.WaitForAsync();
        return page;
    }

    /// <summary>Any address, in a context of its own.</summary>
    internal async Task<IPage> OpenAsync(Uri address, int width = 1280, int height = 900)
    {
        IBrowserContext context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            Locale = "en-IE",
        });
        context.SetDefaultTimeout(Patience);
        await context.AddInitScriptAsync(NoHints);
        IPage page = await context.NewPageAsync();

        // A test that waits in vain says nothing of why.
        page.PageError += (_, fault) => Console.WriteLine($"the page: {fault}");
        page.RequestFailed += (_, request) => Console.WriteLine($"the page: {request.Method} {request.Url} {request.Failure}");
        await page.GotoAsync(address.ToString(), new PageGotoOptions { WaitUntil = WaitUntilState.DOMContentLoaded });
        return page;
    }

    private sealed class Host : WebApplicationFactory<Program>
    {
        private readonly DataFolder _data = new();

        protected override void ConfigureWebHost(IWebHostBuilder builder) => builder
            .UseSetting("Serilog:MinimumLevel", "Warning")
            .UseSetting(DataFolder.Setting, _data.Path);
    }
}

/// <summary>All browser tests share one studio.</summary>
[CollectionDefinition(Name)]
public sealed class StudioGroup : ICollectionFixture<Studio>
{
    public const string Name = "studio";
}
