using System.Text.Json;
using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>How stiff panels are, what braces those that sag, and a board's own figures.</summary>
[Collection(StudioGroup.Name)]
public sealed class StiffnessTests(Studio studio)
{
    // 20 × 23 in of 1/8 in hardboard sag too much under a hand. Rails are 23 in, as the panels are cut, less 1/4 in at both ends; those that are
    // planned with the boards fit every size the panels might be cut at, 1/16 in undersize too.
    [BrowserFact]
    public async Task What_sags_too_much_is_told_with_its_strips_and_braced_at_a_press()
    {
        IPage page = await WithOneLargeAsync();
        await page.PlanAsync();
        string told = (await page.Locator(".stiffening").InnerTextAsync()).Replace('\u00a0', ' ');
        Assert.Contains("4 × 22 1/2 in", told, StringComparison.Ordinal);
        Assert.Contains("No strips are on the ticket", told, StringComparison.Ordinal);

        await page.Locator(".stiffening .brace").ClickAsync();
        await Assertions.Expect(page.Locator(".stiffening")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".proof .notes")).ToContainTextAsync("Add strips to have them counted");
        await page.GetByText("Another strip", new() { Exact = true }).ClickAsync();
        await page.Locator("[data-path=\"strips[0].name\"]").FillAsync("Pine 1 × 2, 8 ft");
        await page.Locator("[data-path=\"strips[0].length\"]").FillAsync("8 ft");
        await page.Locator("[data-path=\"strips[0].price\"]").FillAsync("4.20");
        await page.GetByText("A price for more", new() { Exact = true }).Last.ClickAsync();
        await page.Locator("[data-path=\"strips[0].priceFrom[0].count\"]").FillAsync("9");
        await page.Locator("[data-path=\"strips[0].priceFrom[0].price\"]").FillAsync("3.90");
        await page.PlanButton().ClickAsync();
        await page.Locator(".strips li").First.WaitForAsync();
        await page.PaintEverythingAsync();

        Assert.Contains("Pine 1 × 2, 8 ft", await page.Locator(".day-errand").InnerTextAsync(), StringComparison.Ordinal);
        string cut = (await page.Locator(".strips").InnerTextAsync()).Replace('\u00a0', ' ');
        Assert.Contains("22 7/16 in for A", cut, StringComparison.Ordinal);
        Assert.Contains("No way of cutting them buys strips for less.", await page.Locator(".day-saw").InnerTextAsync(), StringComparison.Ordinal);
        JsonElement order = await SentAsync(page);
        Assert.True(order.GetProperty("strength").GetProperty("brace").GetBoolean());
        Assert.Equal("""[{"count":9,"price":3.9}]""", JsonSerializer.Serialize(order.GetProperty("strips")[0].GetProperty("priceFrom")));
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_board_s_own_figures_go_out_and_come_back_with_its_grain()
    {
        IPage page = await WithOneLargeAsync();
        await page.Locator("[data-path=\"panels[0].quantity\"]").FillAsync("1");
        await page.Locator(".good summary").First.ClickAsync();
        await page.GetByText("Its own stiffness", new() { Exact = true }).First.ClickAsync();
        foreach ((string field, string value) in ((string, string)[])[("density", "680"), ("elasticity", "12000"), ("elasticityAcross", "5000"), ("shear", "600"), ("poisson", "0.1"), ("expansion", "0.1")])
        {
            await page.Locator($"[data-path=\"boards[0].{field}\"]").FillAsync(value);
        }

        await page.Locator("[data-path=\"boards[0].grain\"]").SelectOptionAsync("height");
        await page.PlanAsync();

        JsonElement board = (await SentAsync(page)).GetProperty("boards")[0];
        Assert.Equal((680, 12000, 5000, 600), (board.GetProperty("density").GetInt32(), board.GetProperty("elasticity").GetInt32(), board.GetProperty("elasticityAcross").GetInt32(), board.GetProperty("shear").GetInt32()));
        Assert.Equal((0.1m, 0.1m), (board.GetProperty("poisson").GetDecimal(), board.GetProperty("expansion").GetDecimal()));
        string told = await page.Locator(".strength").InnerTextAsync();
        Assert.Contains("grain along the long side", told, StringComparison.Ordinal);
        string corners = await page.Locator(".strength tbody tr").First.Locator("td").Nth(3).TextContentAsync() ?? "";
        Assert.Matches("^(<\u00a0)?[0-9.]+\u00a0in; (≤\u00a0)?[0-9.]+\u00a0in$", corners);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_spoiled_sheet_takes_all_its_panels_along_and_they_can_be_made_again()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        string plan = await page.EvaluateAsync<string>("async () => (await fetch(`/api/plans/${location.hash.slice(6)}`)).text()");
        JsonElement sheet = JsonDocument.Parse(plan).RootElement.GetProperty("sheets")[0];
        int pieces = sheet.GetProperty("pieces").GetArrayLength();

        await page.Locator(".made summary").ClickAsync();
        await page.Locator($".made input[data-spoiled-sheet=\"{sheet.GetProperty("number").GetInt32()}\"]").FillAsync("1");
        await page.Locator(".made .book").ClickAsync();
        await page.GetByText("Make a ticket for the spoiled ones").ClickAsync();

        await Assertions.Expect(page.Locator(".act-said")).ToContainTextAsync($"{pieces} panels");
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Labels_are_asked_for_in_the_page_s_language_on_the_sheet_chosen()
    {
        IPage page = await studio.VisitAsync();
        await page.GetByLabel("Language").SelectOptionAsync("fr");
        await page.Locator("html[lang=fr]").WaitForAsync();
        await page.Lines().First.WaitForAsync();
        await page.PlanAsync();
        await page.Locator("#labels-grid").SelectOptionAsync("a4 3x8");
        string address = await page.Locator(".labels-tools a").GetAttributeAsync("href") ?? "";

        string labels = await page.EvaluateAsync<string>("async (address) => (await fetch(address)).text()", address);

        Assert.Contains("grid=3x8", address, StringComparison.Ordinal);
        Assert.Contains("Étiquettes, page 1", labels, StringComparison.Ordinal);
        Assert.Contains("collée", labels, StringComparison.Ordinal);
        Assert.DoesNotContain("glued on", labels, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    // The example with one line of two large panels on the thin board.
    private async Task<IPage> WithOneLargeAsync()
    {
        IPage page = await studio.VisitAsync();
        while (await page.Lines().CountAsync() > 1)
        {
            await page.Lines().Last.Locator("summary").ClickAsync();
            await page.Lines().Last.GetByText("Take off").ClickAsync();
        }

        await page.Lines().First.Locator("summary").ClickAsync();
        foreach ((string field, string value) in ((string, string)[])[("quantity", "2"), ("width", "20"), ("height", "23"), ("thickness", "1/8")])
        {
            await page.Locator($"[data-path=\"panels[0].{field}\"]").FillAsync(value);
        }

        await page.Locator("[data-path=\"panels[0].surface\"]").SelectOptionAsync("bare");
        return page;
    }

    private static async Task<JsonElement> SentAsync(IPage page)
    {
        await page.Locator(".go[data-fresh]").WaitForAsync();
        return JsonDocument.Parse(await page.EvaluateAsync<string>("async () => (await fetch(`/api/plans/${location.hash.slice(6)}/order`)).text()")).RootElement;
    }
}
