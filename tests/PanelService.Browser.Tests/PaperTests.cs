using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>The page's weight, where it comes from, and how it lies on paper.</summary>
[Collection(StudioGroup.Name)]
public sealed class PaperTests(Studio studio)
{
    private const int MostBytes = 150_000;

    /// <summary>In points: the margins of 12 mm, less what a letter's side may take.</summary>
    private const double LeastMargin = 30;

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

    // A module found only once another was read costs a journey of its own: on a slow machine that is most of the first view.
    // What draws a plan is fetched after it.
    [BrowserFact]
    public async Task Every_module_is_named_beforehand()
    {
        IPage page = await studio.VisitAsync();

        string[] late = await page.EvaluateAsync<string[]>(
            """
            () => {
              const named = new Set([...document.querySelectorAll('link[rel=modulepreload], script[src]')].map((e) => e.href || e.src));
              const [usable] = performance.getEntriesByName('usable');
              const came = new Set(performance.getEntriesByType('resource').filter((r) => r.startTime < usable.startTime).map((r) => r.name).filter((name) => name.endsWith('.js')));
              return [...[...came].filter((name) => !named.has(name)), ...[...named].filter((name) => !came.has(name))];
            }
            """);

        Assert.Empty(late);
        await page.WaitForFunctionAsync("() => performance.getEntriesByType('resource').some((r) => r.name.endsWith('/view/day-saw.js'))");
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

    // A blank on the screen shows what it is wide enough for; what cannot be scrolled has to stand there whole.
    [BrowserTheory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task A_ticket_with_long_names_prints_whole_and_without_an_empty_page(string paper)
    {
        const string title = "Twenty-four panels for the study week on the island, of which six are for the harbour, six for the lighthouse and the others for whoever comes along";
        const string board = "Tempered hardboard of the smooth sort on both faces, 1/8 in, half a sheet of 2 by 4 ft, from the yard by the bridge";
        IPage page = await studio.VisitAsync();
        await page.Locator("input[data-path=\"title\"]").FillAsync(title);
        await page.Locator(".good summary").First.ClickAsync();
        await page.Locator("[data-path=\"boards[0].name\"]").FillAsync(board);
        await page.PlanAsync();
        string errand = await page.Locator(".day-errand h2").TextContentAsync() ?? "";
        string shop = await page.Locator(".day-errand h3").First.TextContentAsync() ?? "";

        IReadOnlyList<Printed> pages = Printed.Read(await page.PdfAsync(new PagePdfOptions { Format = paper }));

        Assert.All(pages, one => Assert.True(one.Text.Length > 20, "A page came out empty."));
        Assert.Contains(Printed.Close(title), pages[0].Text, StringComparison.Ordinal);
        Assert.Contains(Printed.Close(errand), pages[0].Text, StringComparison.Ordinal);
        Assert.Contains(Printed.Close(shop), pages[0].Text, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    // The bar that says it on the screen stays there: a plan under another ticket's name is cut for the wrong batch.
    [BrowserFact]
    public async Task A_ticket_changed_since_prints_under_the_name_it_was_planned_with_and_says_so()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        string stale = Printed.Close("The ticket has changed since this plan.");
        string before = Printed.Read(await page.PdfAsync())[0].Text;

        await page.Locator("input[data-path=\"title\"]").FillAsync("Another week");
        string after = Printed.Read(await page.PdfAsync())[0].Text;

        Assert.DoesNotContain(stale, before, StringComparison.Ordinal);
        Assert.Contains(stale, after, StringComparison.Ordinal);
        Assert.Contains(Printed.Close("Tern Island study week"), after, StringComparison.Ordinal);
        Assert.DoesNotContain(Printed.Close("Another week"), after, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    // ISO 216 and ANSI/ASME Y14.1, in points of 1/72 in.
    [BrowserTheory]
    [InlineData("A4", 595.3, 841.9)]
    [InlineData("Letter", 612, 792)]
    public async Task The_ticket_prints_by_days_with_every_drawing_whole_on_a_page(string paper, double width, double height)
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        string cash = await page.Locator(".proof .cash").TextContentAsync() ?? "";
        string[] days = [.. await page.Locator(".days h2").AllTextContentsAsync()];
        string[] captions = [.. (await page.Locator("figure[data-sheet] figcaption").AllTextContentsAsync()).Select(text => text.Split(',')[0])];

        IReadOnlyList<Printed> pages = Printed.Read(await page.PdfAsync(new PagePdfOptions { Format = paper }));

        int drawings = await page.Locator("figure svg.drawing").CountAsync();
        Assert.InRange(pages.Count, drawings + 4, drawings + 10);
        Assert.All(pages, one => Assert.InRange(one.Width, width - 1, width + 1));
        Assert.All(pages, one => Assert.InRange(one.Height, height - 1, height + 1));
        Assert.All(pages, one => Assert.True(one.Text.Length > 20, "A page came out empty."));
        Assert.All(pages, one => Assert.True(Math.Min(one.Left, Math.Min(one.Right, one.Bottom)) > LeastMargin, $"Something stands outside the margins: {one.Text[..40]}"));
        Assert.Contains(Printed.Close(cash), pages[0].Text, StringComparison.Ordinal);
        Assert.DoesNotContain(pages, one => one.Text.Contains(Printed.Close("Plan it again"), StringComparison.Ordinal));

        // The days come in their order, and those with work of their own begin a page.
        int[] begins = [.. days.Select(day => pages.ToList().FindIndex(one => one.Text.Contains(Printed.Close(day), StringComparison.Ordinal)))];
        Assert.DoesNotContain(-1, begins);
        Assert.Equal(begins.Order(), begins);
        Assert.All([1, 2, 4], day => Assert.InRange(pages[begins[day]].Text.IndexOf(Printed.Close(days[day]), StringComparison.Ordinal), 0, 2));

        // A drawing ends with its title block: where that stands on the page of the caption, nothing was cut off or broken.
        for (int i = 0; i < captions.Length; i++)
        {
            Printed one = Assert.Single(pages, p => p.Text.Contains(Printed.Close(captions[i]), StringComparison.Ordinal));
            Assert.Contains(Printed.Close($"Sheet {i + 1} of {captions.Length}"), one.Text, StringComparison.Ordinal);
        }

        await page.Context.CloseAsync();
    }
}
