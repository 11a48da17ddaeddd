using System.Text.Encodings.Web;
using System.Text.Json;
using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>Writing the ticket: by the rack, by pasting, with a way back, in another language and with decimals.</summary>
[Collection(StudioGroup.Name)]
public sealed class TicketTests(Studio studio)
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    [BrowserFact]
    public async Task A_tap_on_the_rack_adds_one_and_the_count_under_it_is_the_line_s()
    {
        IPage page = await studio.VisitAsync();
        int before = await page.Lines().CountAsync();
        ILocator tile = page.Locator(".tile", new() { Has = page.Locator("[aria-label^=\"Add 5 × 7,\"]") });

        await tile.Locator("button").ClickAsync();
        await tile.Locator(".format-count").FillAsync("6");

        Assert.Equal(before + 1, await page.Lines().CountAsync());
        Assert.Equal("6", await page.Locator($"input[data-path=\"panels[{before}].quantity\"]").InputValueAsync());
        Assert.Equal("7", await page.Locator($"input[data-path=\"panels[{before}].height\"]").InputValueAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_pasted_column_is_read_back_and_undone_step_by_step()
    {
        IPage page = await studio.VisitAsync();
        int before = await page.Lines().CountAsync();
        await page.Locator("input[data-path=\"panels[0].quantity\"]").FillAsync("99");

        await page.Locator("#write").FillAsync("12\t5\t7\tprimed\n4\t16\t20\tlinen");
        Assert.Equal(["12 of 5 × 7 in, primed board", "4 of 16 × 20 in, cloth glued on, linen"], await page.Locator(".read-back li").AllTextContentsAsync());
        await page.GetByText("Put on the ticket").ClickAsync();
        await Assertions.Expect(page.Lines()).ToHaveCountAsync(before + 2);

        await page.GetByText("Undo", new() { Exact = true }).ClickAsync();
        await Assertions.Expect(page.Lines()).ToHaveCountAsync(before);
        Assert.Equal("99", await page.Locator("input[data-path=\"panels[0].quantity\"]").InputValueAsync());
        await page.GetByText("Undo", new() { Exact = true }).ClickAsync();
        Assert.Equal("10", await page.Locator("input[data-path=\"panels[0].quantity\"]").InputValueAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Inches_are_fractions_or_decimals_at_a_switch()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        string[] fractions = [.. await page.Locator(".leftovers strong").AllTextContentsAsync()];
        Assert.Contains(fractions, text => text.Contains('/', StringComparison.Ordinal));

        await page.GetByLabel("Inches as").SelectOptionAsync("decimals");

        string[] decimals = [.. await page.Locator(".leftovers strong").AllTextContentsAsync()];
        Assert.Equal(fractions.Length, decimals.Length);
        Assert.DoesNotContain(decimals, text => text.Contains('/', StringComparison.Ordinal));
        Assert.Contains(decimals, text => text.Contains('.', StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task French_is_French_at_the_saw_too()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        string[] english = [.. await page.Locator(".caution").AllTextContentsAsync()];
        int waste = await page.Locator("svg.drawing text", new() { HasTextRegex = new("^waste$") }).CountAsync();

        await page.GetByLabel("Language").SelectOptionAsync("fr");
        await page.Locator("html[lang=fr]").WaitForAsync();
        await page.DrawnAsync();

        string[] french = [.. await page.Locator(".caution").AllTextContentsAsync()];
        Assert.Equal(english.Length, french.Length);
        Assert.Empty(english.Intersect(french));
        Assert.NotEqual(0, waste);
        Assert.Equal(waste, await page.Locator("svg.drawing text", new() { HasTextRegex = new("^chute$") }).CountAsync());
        Assert.Equal(0, await page.Locator("svg.drawing text", new() { HasTextRegex = new("^(waste|keep)") }).CountAsync());
        await page.Context.CloseAsync();
    }

    // Names keep what they were given, and regulations their numbers.
    [BrowserFact]
    public async Task French_figures_have_a_comma_on_the_page_in_its_fields_and_in_the_drawings()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator("#open").SelectOptionAsync("demo lighthouse-studio");
        await page.Locator("[data-path=\"title\"]").FillAsync("Série 1.2");
        await page.GetByLabel("Language").SelectOptionAsync("fr");
        await page.Locator("html[lang=fr]").WaitForAsync();
        await page.Lines().First.WaitForAsync();
        await page.PlanAsync();
        await page.OpenEverythingAsync();

        string[] lines = await page.EvaluateAsync<string[]>(
            """
            () => {
              const drawn = [...document.querySelectorAll('svg text')].map((one) => one.textContent);
              const typed = [...document.querySelectorAll('input[data-path]')].filter((one) => !/\.(name|id)$|^title$/.test(one.dataset.path)).map((one) => one.value);
              const said = document.querySelector('.days').innerText + document.querySelector('.proof').innerText + document.querySelector('.act').innerText;
              return [...drawn, ...typed, ...said.split('\n')].filter((line) => /\d[.,]\d/.test(line));
            }
            """);

        Assert.Contains(lines, line => line.Contains("3,2", StringComparison.Ordinal));
        Assert.Contains("Série 1.2", lines);
        Assert.DoesNotContain(
            lines.Where(line => !line.Contains(" CFR ", StringComparison.Ordinal)).Select(line => line.Replace("Hardboard 3.2 mm", "", StringComparison.Ordinal).Replace("Série 1.2", "", StringComparison.Ordinal)),
            line => System.Text.RegularExpressions.Regex.IsMatch(line, @"\d\.\d"));
        await Assertions.Expect(page.Locator("[data-fresh]")).ToHaveCountAsync(1);
        await page.Context.CloseAsync();
    }

    // What the service says in English of the same ticket must stand nowhere on the French page.
    [BrowserFact]
    public async Task French_is_French_where_something_is_wrong()
    {
        IPage page = await studio.VisitAsync();
        await page.GetByLabel("Language").SelectOptionAsync("fr");
        await page.Locator("html[lang=fr]").WaitForAsync();
        await page.Lines().First.WaitForAsync();

        foreach ((string path, string text)[] wrong in Mistakes)
        {
            Task<IResponse> answered = page.WaitForResponseAsync(response => response.Url.EndsWith("/api/plans", StringComparison.Ordinal) && response.Request.Method == "POST");
            foreach ((string path, string text) in wrong)
            {
                await page.Locator($"[data-path=\"{path}\"]").FillAsync(text);
            }

            await page.PlanButton().ClickAsync();
            string[] english = await EnglishOfAsync(await answered);
            await Assertions.Expect(page.Locator(".problem li")).ToHaveCountAsync(english.Length);
            string shown = await page.Locator(".problem").InnerTextAsync() + string.Concat(await page.Locator(".error").AllTextContentsAsync());

            Assert.NotEmpty(english);
            Assert.All(english, words => Assert.DoesNotContain(words, shown, StringComparison.Ordinal));
            Assert.DoesNotMatch("(?i)\\b(must|expected|required|the|this|least|than|no)\\b", shown);
        }

        await page.Context.CloseAsync();
    }

    // What cannot be read; what is out of bounds.
    private static readonly (string Path, string Text)[][] Mistakes =
    [
        [("panels[0].width", "large"), ("panels[1].quantity", "deux"), ("panels[2].height", "8 9"), ("panels[3].shopPrice", "cher")],
        [("panels[0].width", "0"), ("panels[1].quantity", "0"), ("panels[2].height", "11"), ("panels[3].shopPrice", "-1"), ("currency", "EURO")],
    ];

    private static async Task<string[]> EnglishOfAsync(IResponse response)
    {
        JsonElement problem = (await response.JsonAsync())!.Value;
        return [.. problem.GetProperty("errors").EnumerateObject().SelectMany(field => field.Value.EnumerateArray()).Select(words => words.GetString()!)];
    }

    [BrowserFact]
    public async Task What_the_folded_fields_say_goes_out_with_the_order()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator("details.fold-work > summary").ClickAsync();
        foreach (string fold in (string[])["Cloth by side, press and drying", "Days and hands", "Time and money"])
        {
            await page.GetByText(fold, new() { Exact = true }).ClickAsync();
        }

        await page.Locator("[data-path=\"bench.margin[2]\"]").FillAsync("1 1/2");
        await page.Locator("[data-path=\"bench.shrinkage[0]\"]").FillAsync("2");
        await page.Locator("[data-path=\"schedule.start\"]").FillAsync("2026-12-01");
        await page.Locator("[data-path=\"schedule.from\"]").FillAsync("08:30");
        await page.Locator("[data-path=\"schedule.hands\"]").FillAsync("2");
        await page.GetByText("Tue", new() { Exact = true }).ClickAsync();
        await page.GetByText("Sat", new() { Exact = true }).ClickAsync();
        await page.Locator("[data-path=\"tax.percent\"]").FillAsync("20");
        await page.GetByText("A shop that charges for the way").ClickAsync();
        await page.Locator("[data-path=\"shops[0].name\"]").FillAsync("Timber yard");
        await page.Locator("[data-path=\"shops[0].charge\"]").FillAsync("5");
        await page.GetByText("A tool to pay off").ClickAsync();
        await page.Locator("[data-path=\"tools[0].name\"]").FillAsync("Roller");
        await page.Locator("[data-path=\"tools[0].price\"]").FillAsync("12");
        await page.Locator("[data-path=\"tools[0].spreadOver\"]").FillAsync("60");
        await page.Locator(".good summary").First.ClickAsync();
        await page.Locator("[data-path=\"boards[0].shop\"]").SelectOptionAsync(new SelectOptionValue { Label = "Timber yard" });
        ILocator glue = page.Locator(".good").Filter(new() { HasText = "Neutral pH adhesive" });
        await glue.Locator("summary").First.ClickAsync();
        await glue.GetByText("A price for more").Nth(1).ClickAsync();
        await page.Locator("[data-path=\"adhesives[0].containers[1].priceFrom[0].count\"]").FillAsync("2");
        await page.Locator("[data-path=\"adhesives[0].containers[1].priceFrom[0].price\"]").FillAsync("19");
        await page.Locator(".line summary").First.ClickAsync();
        await page.Locator("[data-path=\"panels[0].mount\"]").SelectOptionAsync("later");
        await page.Locator("[data-path=\"panels[0].first\"]").CheckAsync();
        await page.PlanAsync();

        string sent = await page.EvaluateAsync<string>("async () => (await fetch(`/api/plans/${location.hash.slice(6)}/order`)).text()");
        using JsonDocument document = JsonDocument.Parse(sent);
        JsonElement order = document.RootElement;
        Assert.Equal("""["1/2","1 1/2","1/2","1/2"]""", Close(order.GetProperty("bench").GetProperty("margin")));
        Assert.Equal("[2,2]", Close(order.GetProperty("bench").GetProperty("shrinkage")));
        Assert.Equal("""{"start":"2026-12-01","from":"08:30","hands":2,"days":["tuesday","saturday"]}""", Close(order.GetProperty("schedule")));
        Assert.Equal("""{"percent":20}""", Close(order.GetProperty("tax")));
        Assert.Equal("""[{"name":"Roller","price":12,"spreadOver":60}]""", Close(order.GetProperty("tools")));
        JsonElement shop = order.GetProperty("shops")[0];
        Assert.Equal("5", Close(shop.GetProperty("charge")));
        Assert.Equal(shop.GetProperty("id").GetString(), order.GetProperty("boards")[0].GetProperty("shop").GetString());
        Assert.Equal("""[{"count":2,"price":19}]""", Close(order.GetProperty("adhesives")[0].GetProperty("containers")[1].GetProperty("priceFrom")));
        Assert.Equal("later", order.GetProperty("panels")[0].GetProperty("mount").GetString());
        Assert.True(order.GetProperty("panels")[0].GetProperty("first").GetBoolean());
        await page.Context.CloseAsync();
    }

    // Without the spaces between, and with every character as it is.
    private static string Close(JsonElement json) => JsonSerializer.Serialize(json, Plain);
}
