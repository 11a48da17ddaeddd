using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>The page's weight, where it comes from, and how it lies on paper.</summary>
[Collection(StudioGroup.Name)]
public sealed partial class PaperTests(Studio studio)
{
    private const int MostBytes = 150_000;

    [BrowserFact]
    public async Task The_page_weighs_little_and_comes_from_one_host()
    {
        IPage page = await studio.VisitAsync();

        string[] hosts = await page.EvaluateAsync<string[]>("() => performance.getEntriesByType('resource').map((r) => new URL(r.name).origin)");
        int bytes = await page.EvaluateAsync<int>("() => performance.getEntries().reduce((sum, r) => sum + (r.transferSize ?? 0), 0)");

        Assert.Equal([studio.Address.GetLeftPart(UriPartial.Authority)], hosts.Distinct());
        Assert.InRange(bytes, 1, MostBytes);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Nothing_on_the_page_needs_inline_code_or_style()
    {
        IPage page = await studio.VisitAsync();
        var refused = new List<string>();
        page.Console += (_, message) => refused.Add(message.Text);
        await page.RouteAsync("**/*", async route =>
        {
            IAPIResponse response = await route.FetchAsync();
            var headers = new Dictionary<string, string>(response.Headers) { ["content-security-policy"] = "default-src 'self'" };
            await route.FulfillAsync(new RouteFulfillOptions { Response = response, Headers = headers });
        });
        await page.ReloadAsync();

        await page.PlanAsync();

        Assert.DoesNotContain(refused, text => text.Contains("Content Security Policy", StringComparison.OrdinalIgnoreCase));
        await page.Context.CloseAsync();
    }

    [BrowserTheory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task Every_drawing_prints_whole_on_a_page(string paper)
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        int drawings = await page.Locator("figure svg.drawing").CountAsync();
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });

        double tallest = await page.EvaluateAsync<double>("() => Math.max(...[...document.querySelectorAll('figure svg.drawing')].map((s) => s.getBoundingClientRect().height)) / 96 * 25.4");
        byte[] pdf = await page.PdfAsync(new PagePdfOptions { Format = paper });

        // Letter is the lower one: 279.4 mm less two margins of 12 and a line for the caption.
        Assert.InRange(tallest, 50, 245);
        Assert.InRange(PdfPage().Count(Encoding.Latin1.GetString(pdf)), drawings + 2, drawings + 12);
        await page.Context.CloseAsync();
    }

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex PdfPage();
}
