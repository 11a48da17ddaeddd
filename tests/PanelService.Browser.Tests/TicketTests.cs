using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>Writing the ticket: by the rack, by pasting, with a way back, in another language and with decimals.</summary>
[Collection(StudioGroup.Name)]
public sealed class TicketTests(Studio studio)
{
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
}
