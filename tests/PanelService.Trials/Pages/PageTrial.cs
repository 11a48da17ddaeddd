using System.Globalization;
using Microsoft.Playwright;

namespace PanelService.Trials.Pages;

/// <summary>
/// The page in a real browser: what it weighs, how soon it can be used on a slow machine, how soon the example's plan is
/// drawn, and whether 600 panels scroll without a stutter. Times are by the clock, so they say what this machine was
/// busy with, too; of the scrolling there is the main thread's processor time beside it.
/// </summary>
internal static class PageTrial
{
    private const int Rounds = 5;
    private const int SlowDown = 4;
    private const double MostFirstView = 1000;
    private const double MostPlan = 300;
    private const double MostFrame = 50;
    private const int MostBytes = 150_000;

    /// <summary>The distribution's; where there is none, the one Playwright installed for itself.</summary>
    private const string Chromium = "/usr/bin/chromium";

    /// <summary>The demo of 600 panels.</summary>
    private const string Large = "ropewalk-workshop";

    internal static async Task<int> RunAsync()
    {
        await using Service service = await Service.StartAsync();
        using IPlaywright playwright = await Playwright.CreateAsync();
        await using IBrowser browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = File.Exists(Chromium) ? Chromium : null,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
        var visit = new Visit(browser, service.Address);
        int bytes = await visit.WeighAsync();
        double[] views = await RepeatAsync(() => visit.FirstViewAsync(SlowDown));
        double[] plans = await RepeatAsync(visit.PlanAsync);
        Scrolled scrolled = await visit.ScrollAsync(Large);

        Say($"weight, bodies and headers as sent: {bytes} bytes (aim {MostBytes})");
        Say($"first view, processor slowed {SlowDown} times: median {views[Rounds / 2]:0} ms, worst {views[^1]:0} ms of {Rounds} (aim {MostFirstView:0})");
        Say($"from the button to the example's plan on the screen: median {plans[Rounds / 2]:0} ms, worst {plans[^1]:0} ms of {Rounds} (aim {MostPlan:0})");
        Say($"600 panels scrolled through, {scrolled.Frames} frames: {scrolled.Long} over {MostFrame:0} ms, the longest {scrolled.Longest:0} ms; the main thread's longest task took {scrolled.LongestTask:0} ms of processor time, {scrolled.LongTasks} over {MostFrame:0} ms (aim 0)");
        return bytes <= MostBytes && views[Rounds / 2] <= MostFirstView && plans[Rounds / 2] <= MostPlan && scrolled.Long == 0 ? 0 : 1;
    }

    private static async Task<double[]> RepeatAsync(Func<Task<double>> measure)
    {
        var times = new List<double>();
        for (int i = 0; i < Rounds; i++)
        {
            times.Add(await measure());
        }

        return [.. times.Order()];
    }

    private static void Say(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
