using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>The whole job on the page, from the ticket as one finds it to the tally.</summary>
[Collection(StudioGroup.Name)]
public sealed partial class JobTests(Studio studio)
{
    [BrowserTheory]
    [InlineData(1280, 900)]
    [InlineData(390, 844)]
    public async Task One_button_gives_the_plan_by_days(int width, int height)
    {
        IPage page = await studio.VisitAsync(width, height);

        await page.PlanAsync();

        Assert.Equal(["The errand", "At the saw", "At the bench", "Next morning", "The tally", "Back on the rack"], await page.Locator(".days h2").AllTextContentsAsync());
        string cash = await page.Locator(".proof .cash").TextContentAsync() ?? "";
        Assert.Equal(cash, await page.Locator(".day-errand .sum strong").TextContentAsync());
        Assert.Contains("No plan buys less than this", await page.Locator(".sure").TextContentAsync() ?? "", StringComparison.Ordinal);
        Assert.False(await page.OverflowsAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task The_keyboard_alone_writes_a_line_and_plans_it()
    {
        IPage page = await studio.VisitAsync();
        int before = await page.Lines().CountAsync();

        await page.Locator("#write").FocusAsync();
        await page.Keyboard.TypeAsync("2 5x7 bare");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Control+Enter");
        await page.DrawnAsync();

        Assert.Equal(before + 1, await page.Lines().CountAsync());
        Assert.Equal("plan", await page.EvaluateAsync<string>("() => document.activeElement.id"));
        Assert.Contains("5 × 7 in", await page.Locator(".ledger").TextContentAsync() ?? "", StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_setting_lights_its_cuts_and_no_others()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();

        await page.Locator(".setting").First.ClickAsync();

        string said = string.Join(';', await page.Locator(".setting-cuts").First.Locator(".cuts").AllTextContentsAsync());
        await Assertions.Expect(page.Locator(".sheets .cut[data-lit]")).ToHaveCountAsync(CutsIn(said));
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Nothing_is_lost_on_reload_nor_without_the_network()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator("html[data-offline]").WaitForAsync();
        await page.Locator("input[data-path=\"panels[0].quantity\"]").FillAsync("9");
        await page.PlanAsync();
        await page.Locator(".day-errand .tick input").First.CheckAsync();
        int drawings = await page.Locator("svg.drawing").CountAsync();

        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();
        await page.DrawnAsync();

        Assert.Equal("9", await page.Locator("input[data-path=\"panels[0].quantity\"]").InputValueAsync());
        Assert.True(await page.Locator(".day-errand .tick input").First.IsCheckedAsync());
        Assert.Equal(drawings, await page.Locator("svg.drawing").CountAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_wrong_field_is_named_beside_it_and_in_the_list()
    {
        IPage page = await studio.VisitAsync();
        ILocator field = page.Locator("input[data-path=\"panels[1].width\"]");

        await field.FillAsync("wide");
        await page.PlanButton().ClickAsync();
        await page.Locator(".problem li").First.WaitForAsync();

        Assert.Equal("true", await field.GetAttributeAsync("aria-invalid"));
        Assert.Contains("\"wide\"", await page.Locator(".line .error:not(:empty)").TextContentAsync() ?? "", StringComparison.Ordinal);
        await page.Locator(".problem a").ClickAsync();
        Assert.Equal("panels[1].width", await page.EvaluateAsync<string>("() => document.activeElement.dataset.path"));
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task The_yield_of_a_sheet_is_counted_beside_the_area_figure()
    {
        // Common practice: 14.4 areas of 8 × 10 in in a sheet of 24 × 48, and 10 panels with a 1/8 in kerf; the demo allows 1/16 under.
        IPage page = await studio.VisitAsync();
        await page.Locator("details.fold-work > summary").ClickAsync();
        await page.Locator("input[data-path=\"saw.undersize\"]").FillAsync("");

        await page.Locator(".yield button").ClickAsync();
        await page.Locator(".yield-answer svg.drawing").WaitForAsync();

        string said = await page.Locator(".yield-board > p").AllTextContentsAsync() is { } all ? string.Join(' ', all) : "";
        Assert.Contains("10 come out.", said, StringComparison.Ordinal);
        Assert.Contains("14.4", said, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    // "Sheet 1: cut 1; Sheets 2, 3: cuts 4–6": how many that is.
    private static int CutsIn(string said) => said.Split(';').Sum(part =>
    {
        string[] halves = part.Split(':');
        return Numbers(halves[0]) * Numbers(halves[1]);
    });

    private static int Numbers(string said) => Run().Matches(said).Sum(run =>
        run.Groups[2].Success ? int.Parse(run.Groups[2].Value, null) - int.Parse(run.Groups[1].Value, null) + 1 : 1);

    [GeneratedRegex(@"(\d+)(?:–(\d+))?")]
    private static partial Regex Run();
}
