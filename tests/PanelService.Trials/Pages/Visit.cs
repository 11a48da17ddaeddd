using System.Text.Json;
using Microsoft.Playwright;

namespace PanelService.Trials.Pages;

/// <summary>Visits to the page, each by a browser that knows nothing yet.</summary>
internal sealed class Visit(IBrowser browser, Uri address)
{
    /// <summary>A twelfth of the window at a time, as a wheel does.</summary>
    private const int WheelPixels = 120;

    /// <summary>Milliseconds a busy machine is given before the trial gives up.</summary>
    private const float Patience = 300_000;

    /// <summary>Notes when the ticket can be used: built, laid out and painted.</summary>
    private const string NoteFirstView =
        """
        new MutationObserver((_, watch) => {
          const ticket = document.getElementById('ticket');
          if (!ticket || ticket.hasAttribute('aria-busy')) return;
          watch.disconnect();
          requestAnimationFrame(() => setTimeout(() => { window.usable = performance.now(); }));
        }).observe(document, { subtree: true, childList: true, attributes: true });
        """;

    /// <summary>Presses the button and answers how long it took until the plan was painted.</summary>
    private const string PressAndWait =
        """
        () => new Promise((resolve) => {
          const began = performance.now();
          const watch = new MutationObserver(() => {
            if (!document.querySelector('.proof .cash')) return;
            watch.disconnect();
            requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began)));
          });
          watch.observe(document.body, { subtree: true, childList: true });
          document.querySelector('.go').click();
        })
        """;

    private const string WatchFrames =
        """
        () => {
          window.frames_ = [];
          window.count_ = 0;
          const count = () => { window.count_++; requestAnimationFrame(count); };
          requestAnimationFrame(count);
          new PerformanceObserver((list) => window.frames_.push(...list.getEntries().map((one) => one.duration))).observe({ type: 'long-animation-frame' });
        }
        """;

    /// <summary>Everything that is fetched for the first view, headers included, as it came over the wire.</summary>
    internal async Task<int> WeighAsync()
    {
        IPage page = await NewAsync();
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        double bytes = 0;
        session.Event("Network.loadingFinished").OnEvent += (_, news) => bytes += news!.Value.GetProperty("encodedDataLength").GetDouble();
        await session.SendAsync("Network.enable");
        await page.GotoAsync(address.ToString());
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        await page.Context.CloseAsync();
        return (int)bytes;
    }

    /// <summary>Milliseconds from the address typed to a ticket that can be used.</summary>
    internal async Task<double> FirstViewAsync(int slowDown)
    {
        IPage page = await NewAsync();
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = slowDown });
        await page.AddInitScriptAsync(NoteFirstView);
        await page.GotoAsync(address.ToString());
        await page.WaitForFunctionAsync("() => window.usable");
        double time = await page.EvaluateAsync<double>("() => window.usable");
        await page.Context.CloseAsync();
        return time;
    }

    /// <summary>Milliseconds from the button to the plan on the screen.</summary>
    internal async Task<double> PlanAsync()
    {
        IPage page = await OpenAsync();
        double time = await page.EvaluateAsync<double>(PressAndWait);
        await page.Context.CloseAsync();
        return time;
    }

    /// <summary>Plans a demo, waits until nothing moves, and scrolls from its top to its end by the wheel.</summary>
    internal async Task<Scrolled> ScrollAsync(string demo)
    {
        IPage page = await OpenAsync();
        await page.Locator("#open").SelectOptionAsync($"demo {demo}");
        await page.WaitForFunctionAsync("() => document.querySelector('.act-said').textContent.includes('600')");
        await page.EvaluateAsync<double>(PressAndWait);
        await page.WaitForFunctionAsync("() => document.querySelector('.go:not([hidden])')");
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        await page.EvaluateAsync("() => scrollTo({ top: 0, behavior: 'instant' })");
        await page.EvaluateAsync(WatchFrames);
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        List<double> tasks = [];
        await using (Traced traced = await Traced.BeginAsync(session, tasks))
        {
            await page.Mouse.MoveAsync(600, 400);
            while (!await page.EvaluateAsync<bool>("() => scrollY + innerHeight >= document.documentElement.scrollHeight - 2"))
            {
                await page.Mouse.WheelAsync(0, WheelPixels);
            }
        }

        JsonElement frames = await page.EvaluateAsync<JsonElement>("() => ({ count: window.count_, long: window.frames_ })");
        await page.Context.CloseAsync();
        double[] slow = [.. frames.GetProperty("long").EnumerateArray().Select(one => one.GetDouble())];
        return new Scrolled(frames.GetProperty("count").GetInt32(), slow.Length, slow.DefaultIfEmpty(0).Max(), tasks.Count(task => task > 50), tasks.DefaultIfEmpty(0).Max());
    }

    private async Task<IPage> OpenAsync()
    {
        IPage page = await NewAsync();
        await page.GotoAsync(address.ToString());
        await page.Locator("#ticket:not([aria-busy]) .lines .line").First.WaitForAsync();
        return page;
    }

    private async Task<IPage> NewAsync()
    {
        IBrowserContext context = await browser.NewContextAsync(new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 900 } });
        context.SetDefaultTimeout(Patience);
        return await context.NewPageAsync();
    }
}
