using System.Text.Json;
using Microsoft.Playwright;

namespace PanelService.Trials.Pages;

/// <summary>Visits to the page, each by a browser that knows nothing yet.</summary>
internal sealed class Visit(IBrowser browser, Uri address)
{
    /// <summary>Pixels a second, two and a half windows: a hand that leafs through.</summary>
    private const int ScrollSpeed = 2200;

    /// <summary>Pixels in one gesture: the browser scrolls by itself, without a word from here for each turn of the wheel.</summary>
    private const int GesturePixels = 8000;

    /// <summary>Milliseconds a busy machine is given before the trial gives up.</summary>
    private const float Patience = 300_000;

    /// <summary>
    /// Notes when the window is filled (first contentful paint, W3C Paint Timing) by a ticket that can be used, and by how much anything
    /// in the window moves after that (W3C Layout Instability): a first view that is not the final one would be none.
    /// </summary>
    private const string NoteFirstView =
        """
        window.shifts = [];
        new PerformanceObserver((list) => window.shifts.push(...list.getEntries())).observe({ type: 'layout-shift' });
        window.viewed = new Promise((seen) => {
          const times = {};
          new PerformanceObserver((list, watch) => {
            list.getEntries().forEach((one) => { times[one.name] = one.startTime; });
            if (!times.usable || !times['first-contentful-paint']) return;
            watch.disconnect();
            seen(Math.max(times.usable, times['first-contentful-paint']));
          }).observe({ entryTypes: ['mark', 'paint'] });
        });
        """;

    /// <summary>Presses the button and answers how long it took until the plan was painted.</summary>
    private const string PressAndWait =
        """
        () => new Promise((resolve) => {
          const began = performance.now();
          const watch = new MutationObserver(() => {
            if (!document.querySelector('.proof .cash')) return;
            watch.disconnect();
            requestAnimationFrame(() => setTimeout(() => {
              const ended = performance.now();
              const asked = performance.getEntriesByType('resource').filter((one) => one.name.includes('/api/plans') && one.startTime >= began && one.responseEnd > 0 && one.responseEnd <= ended);
              resolve([ended - began, asked.length === 0 ? 0 : Math.max(...asked.map((one) => one.responseEnd)) - Math.min(...asked.map((one) => one.startTime))]);
            }));
          });
          watch.observe(document.body, { subtree: true, childList: true });
          document.querySelector('.go').click();
        })
        """;

    /// <summary>How quick the processor is at scripts: half of it strings put together letter by letter, half of it numbers copied, in tenths of rounds a second.</summary>
    private const string Benchmark =
        """
        () => {
          const perSecond = (round) => {
            const began = performance.now();
            let rounds = 0;
            while (performance.now() - began < 500) { round(rounds); rounds++; }
            return rounds / 10 / ((performance.now() - began) / 1000);
          };
          const strings = perSecond(() => {
            let letters = '';
            for (let i = 0; i < 10000; i++) letters += 'a';
            if (letters.length === 1) throw new Error('A string that is never read may be left out.');
          });
          const pair = [0, 1].map(() => Array.from({ length: 100000 }, (_, i) => i));
          const numbers = perSecond((round) => {
            const [from, to] = round % 2 === 0 ? pair : [pair[1], pair[0]];
            for (let i = 0; i < from.length; i++) to[i] = from[i];
          });
          return (strings + numbers) / 2;
        }
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

    /// <summary>The machine's index, by <see cref="Benchmark"/>: what it does when nothing slows it, the best of three.</summary>
    internal async Task<double> IndexAsync()
    {
        IPage page = await NewAsync();
        double best = 0;
        for (int i = 0; i < 3; i++)
        {
            best = Math.Max(best, await page.EvaluateAsync<double>(Benchmark));
        }

        await page.Context.CloseAsync();
        return best;
    }

    /// <summary>From the address typed to a ticket that can be used.</summary>
    internal async Task<Timed> FirstViewAsync(double slowDown)
    {
        IPage page = await NewAsync();
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = slowDown });
        await CountProcessorAsync(session);
        await page.AddInitScriptAsync(NoteFirstView);
        await page.GotoAsync(address.ToString());
        double time = await page.EvaluateAsync<double>("() => window.viewed");
        double processor = await ProcessorAsync(session);
        await page.Locator("#ticket:not([aria-busy])").WaitForAsync();
        double shifted = await page.EvaluateAsync<double>(
            """
            (seen) => new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(
              window.shifts.filter((one) => one.startTime > seen).reduce((sum, one) => sum + one.value, 0)))))
            """,
            time);
        if (shifted > 0)
        {
            throw new InvalidOperationException($"The first view moved by {shifted} once it was there.");
        }

        await page.Context.CloseAsync();
        return new Timed(time, processor, 0);
    }

    /// <summary>From the button to the plan on the screen, once the page has kept itself for offline: nobody presses it sooner.</summary>
    internal async Task<Timed> PlanAsync()
    {
        IPage page = await OpenAsync();
        await page.Locator("html[data-offline]").WaitForAsync();
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        await CountProcessorAsync(session);
        double before = await ProcessorAsync(session);
        double[] times = await page.EvaluateAsync<double[]>(PressAndWait);
        double after = await ProcessorAsync(session);
        await page.Context.CloseAsync();
        return new Timed(times[0], after - before, times[1]);
    }

    /// <summary>Plans a demo, waits until its drawings stand, and scrolls from its top to its end as a wheel does.</summary>
    internal async Task<Scrolled> ScrollAsync(string demo)
    {
        IPage page = await OpenAsync();
        await page.Locator("#open").SelectOptionAsync($"demo {demo}");
        await page.WaitForFunctionAsync("() => document.querySelector('.act-said').textContent.includes('600')");
        await page.EvaluateAsync<double[]>(PressAndWait);
        await page.WaitForFunctionAsync("() => document.querySelector('.go:not([hidden])') && [...document.querySelectorAll('figure .drawing-place')].every((place) => place.querySelector('svg'))");
        await page.EvaluateAsync("() => scrollTo({ top: 0, behavior: 'instant' })");
        await page.EvaluateAsync(WatchFrames);
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        List<double> tasks = [];
        double pixels;
        await using (await Traced.BeginAsync(session, tasks))
        {
            pixels = await ToTheEndAsync(page, session);
        }

        JsonElement frames = await page.EvaluateAsync<JsonElement>("() => ({ count: window.count_, long: window.frames_ })");
        await page.Context.CloseAsync();
        double[] slow = [.. frames.GetProperty("long").EnumerateArray().Select(one => one.GetDouble())];
        return new Scrolled(pixels, frames.GetProperty("count").GetInt32(), slow.Length, slow.DefaultIfEmpty(0).Max(), tasks.Count, tasks.Count(task => task > 50), tasks.DefaultIfEmpty(0).Max());
    }

    // The page grows while what was out of sight is laid out: its end is looked for anew after each gesture.
    private static async Task<double> ToTheEndAsync(IPage page, ICDPSession session)
    {
        double at = 0;
        for (double before = -1; at > before;)
        {
            before = at;
            await session.SendAsync("Input.synthesizeScrollGesture", new Dictionary<string, object>
            {
                ["x"] = 40,
                ["y"] = 450,
                ["yDistance"] = -GesturePixels,
                ["speed"] = ScrollSpeed,
                ["gestureSourceType"] = "mouse",
            });
            at = await page.EvaluateAsync<double>("() => scrollY");
        }

        bool ended = await page.EvaluateAsync<bool>("() => scrollY + innerHeight >= document.documentElement.scrollHeight - 2");
        return ended ? at : throw new InvalidOperationException($"The page stopped scrolling at {at} pixels, before its end.");
    }

    // Times of the browser's own counters are of the main thread's processor, not of the clock.
    private static async Task CountProcessorAsync(ICDPSession session) =>
        await session.SendAsync("Performance.enable", new Dictionary<string, object> { ["timeDomain"] = "threadTicks" });

    private static async Task<double> ProcessorAsync(ICDPSession session)
    {
        JsonElement metrics = (await session.SendAsync("Performance.getMetrics"))!.Value.GetProperty("metrics");
        return metrics.EnumerateArray().First(one => one.GetProperty("name").GetString() == "TaskDuration").GetProperty("value").GetDouble() * 1000;
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
