using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>A phone propped at the saw keeps its screen on for as long as somebody stands there (Screen Wake Lock API).</summary>
[Collection(StudioGroup.Name)]
public sealed class AwakeTests(Studio studio)
{
    /// <summary>The browser's own lock needs a screen; this one writes down what is asked of it.</summary>
    private const string Stub =
        """
        window.locks = [];
        Object.defineProperty(navigator, 'wakeLock', { value: { request: async (sort) => {
          const lock = { sort, held: true, release: async () => { lock.held = false; } };
          window.locks.push(lock);
          return lock;
        } } });
        """;

    private const string ComeBack = "() => document.dispatchEvent(new Event('visibilitychange'))";

    [BrowserFact]
    public async Task The_screen_stays_on_while_one_stands_at_the_saw_and_no_longer()
    {
        IPage page = await studio.VisitAsync(390, 844);
        await page.EvaluateAsync(Stub);
        await page.PlanAsync();
        Assert.Empty(await page.EvaluateAsync<string[]>("() => window.locks.map((one) => one.sort)"));

        await page.Locator(".stand-button").ClickAsync();
        await page.WaitForFunctionAsync("() => window.locks.length === 1");
        Assert.Equal("screen true", await page.EvaluateAsync<string>("() => `${window.locks[0].sort} ${window.locks[0].held}`"));

        // The browser takes the lock away when the page is left, and gives none back unasked.
        await page.EvaluateAsync(ComeBack);
        await page.WaitForFunctionAsync("() => window.locks.length === 2");

        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator("dialog")).ToHaveCountAsync(0);
        await page.WaitForFunctionAsync("() => window.locks[1].held === false");
        await page.EvaluateAsync(ComeBack);
        Assert.Equal(2, await page.EvaluateAsync<int>("() => window.locks.length"));
        await page.Context.CloseAsync();
    }
}
