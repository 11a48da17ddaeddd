using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>Markup in what somebody types is shown as what it is: text (ASVS 5.0, 3.2.2).</summary>
[Collection(StudioGroup.Name)]
public sealed class MarkupTests(Studio studio)
{
    private const string Markup = "<img src=x onerror=\"window.ran=1\"><script>window.ran=1</script>";

    [BrowserFact]
    public async Task A_title_and_a_mark_with_markup_are_shown_as_text()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator("input[data-path=\"title\"]").FillAsync(Markup);
        await page.PlanAsync();
        string inDrawings = string.Concat(await page.Locator("svg.drawing").AllTextContentsAsync());

        Assert.Contains("<img src=x", inDrawings, StringComparison.Ordinal);
        await HoldToTextAsync(page);

        // Kept by the browser, and read again.
        await page.ReloadAsync();
        await page.DrawnAsync();
        Assert.Equal(Markup, await page.Locator("input[data-path=\"title\"]").InputValueAsync());
        await HoldToTextAsync(page);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_drawing_opened_by_itself_runs_nothing()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator("input[data-path=\"title\"]").FillAsync(Markup);
        await page.PlanAsync();
        string slip = await page.Locator("a[href*=\"saw-run.svg\"]").First.GetAttributeAsync("href") ?? "";

        IPage alone = await page.Context.NewPageAsync();
        IResponse? response = await alone.GotoAsync(new Uri(studio.Address, slip).ToString());

        Assert.Contains("sandbox", (await response!.AllHeadersAsync())["content-security-policy"], StringComparison.Ordinal);
        Assert.Contains("<img src=x", await alone.Locator("svg").First.TextContentAsync() ?? "", StringComparison.Ordinal);
        Assert.Equal(0, await alone.Locator("script, img").CountAsync());
        await page.Context.CloseAsync();
    }

    private static async Task HoldToTextAsync(IPage page)
    {
        Assert.Equal(0, await page.Locator("img, body script").CountAsync());
        Assert.Null(await page.EvaluateAsync<int?>("() => window.ran ?? null"));
    }
}
