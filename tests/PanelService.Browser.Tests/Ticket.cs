using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>What a painter does on the page, by what it is called there.</summary>
internal static class Ticket
{
    public static ILocator PlanButton(this IPage page) => page.Locator(".go");

    public static ILocator Lines(this IPage page) => page.Locator(".lines .line");

    /// <summary>Presses the one button and waits for the plan and all its drawings.</summary>
    public static async Task PlanAsync(this IPage page)
    {
        await page.PlanButton().ClickAsync();
        await page.DrawnAsync();
    }

    /// <summary>Waits until the plan stands there with every drawing in its place.</summary>
    public static async Task DrawnAsync(this IPage page)
    {
        await page.Locator(".proof .cash").WaitForAsync();
        await page.WaitForFunctionAsync("() => { const places = [...document.querySelectorAll('figure .drawing-place')]; return places.length > 0 && places.every((p) => p.querySelector('svg')); }");
    }

    /// <summary>Opens every fold, and has drawings out of view painted too.</summary>
    public static Task OpenEverythingAsync(this IPage page) => page.EvaluateAsync(
        "() => { document.querySelectorAll('details').forEach((d) => { d.open = true; }); document.querySelectorAll('.figure').forEach((f) => { f.style.contentVisibility = 'visible'; }); }");

    /// <summary>Whether the page is wider than the window.</summary>
    public static Task<bool> OverflowsAsync(this IPage page) =>
        page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > window.innerWidth");
}
