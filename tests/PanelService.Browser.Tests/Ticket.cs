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

    /// <summary>Opens every fold, those within folds too, which are made as they open; and has what is out of view painted.</summary>
    public static async Task OpenEverythingAsync(this IPage page)
    {
        await page.EvaluateAsync(
            """
            async () => {
              for (;;) {
                const shut = [...document.querySelectorAll('details:not([open])')];
                if (shut.length === 0) break;
                await Promise.all(shut.map((fold) => new Promise((made) => { fold.addEventListener('toggle', made, { once: true }); fold.open = true; })));
              }
            }
            """);
        await page.PaintEverythingAsync();
    }

    /// <summary>
    /// Has what is out of view painted, which a browser puts off: till then its inner text is empty. What is to be read as a
    /// reader sees it is painted first, or the answer depends on how far the browser has come.
    /// </summary>
    public static Task PaintEverythingAsync(this IPage page) => page.EvaluateAsync(
        "() => document.querySelectorAll('.figure, .day, .day-supplies, .entry, .step').forEach((part) => { part.style.contentVisibility = 'visible'; })");

    /// <summary>Whether the page is wider than the window.</summary>
    public static Task<bool> OverflowsAsync(this IPage page) =>
        page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > window.innerWidth");
}
