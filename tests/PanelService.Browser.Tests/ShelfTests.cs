using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>From one batch to the next: booked as made, its leftovers on the shelf, and a ticket that takes from there.</summary>
[Collection(StudioGroup.Name)]
public sealed class ShelfTests(Studio studio)
{
    [BrowserFact]
    public async Task A_batch_made_puts_its_leftovers_on_the_shelf_and_the_next_ticket_takes_from_it()
    {
        IPage page = await studio.VisitAsync();
        await page.GetByText("Save these prices on the shelf").ClickAsync();
        await Assertions.Expect(page.Locator(".shelf-said")).ToContainTextAsync("Saved");
        await page.PlanAsync();
        string before = await page.Locator(".proof .cash").TextContentAsync() ?? "";

        await page.Locator(".made summary").ClickAsync();
        await page.Locator(".made input[data-mark=\"A\"]").FillAsync("1");
        await page.Locator(".made .book").ClickAsync();
        await page.Locator(".made .pencil").First.WaitForAsync();
        string[] ids = [.. await page.Locator(".made .pencil").AllTextContentsAsync()];
        await page.GetByText("Make a ticket for the spoiled ones").ClickAsync();
        await Assertions.Expect(page.Lines()).ToHaveCountAsync(1);
        await page.Locator("#from-shelf").CheckAsync();
        await page.Locator(".shelf-holder summary").ClickAsync();
        await page.Locator(".shelf-list .pencil").First.WaitForAsync();
        string[] there = [.. await page.Locator(".shelf-list .pencil").AllTextContentsAsync()];
        await page.PlanButton().ClickAsync();
        await Assertions.Expect(page.Locator(".proof .cash")).Not.ToHaveTextAsync(before);
        await page.DrawnAsync();
        await page.PaintEverythingAsync();

        // Errand and sheets are this plan's: what comes from the rack stands there by name and pencil id.
        string errand = await page.Locator(".day-errand").InnerTextAsync();
        string cash = await page.Locator(".proof .cash").InnerTextAsync();
        string[] sheets = [.. await page.Locator(".sheets figcaption").AllInnerTextsAsync()];
        Assert.Contains("Take from the rack", errand, StringComparison.Ordinal);
        Assert.Contains(cash == "€0.00" ? "Nothing to buy." : cash, errand, StringComparison.Ordinal);
        Assert.Matches(@"1 ×\s+B[0-9]+, Hardboard 1/8, 2 x 4 ft, ", errand);
        Assert.All(sheets, sheet => Assert.Matches("Sheet 1: one sheet, B[0-9]+, Hardboard 1/8, 2 x 4 ft, 1 piece", sheet));
        Assert.Single(sheets);
        Assert.Contains("Primed linen, 54 in roll", await page.Locator(".day-bench figcaption").First.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Contains("Neutral pH adhesive", await page.Locator(".day-bench").InnerTextAsync(), StringComparison.Ordinal);
        await Assertions.Expect(page.GetByText("The service does not answer")).ToHaveCountAsync(0);

        // Its link opens it as what it is, in a browser that has never seen it.
        IPage other = await studio.OpenAsync(new Uri(studio.Address, $"/{new Uri(page.Url).Fragment}"));
        await other.DrawnAsync();
        await other.PaintEverythingAsync();
        await Assertions.Expect(other.Locator("#from-shelf")).ToBeCheckedAsync();
        Assert.Equal(sheets, await other.Locator(".sheets figcaption").AllInnerTextsAsync());
        string link = other.Url;
        await other.PlanButton().ClickAsync();
        await other.WaitForURLAsync(url => url != link);
        await other.DrawnAsync();
        Assert.Equal(0, await other.Locator(".problem:not([hidden])").CountAsync());
        Assert.Equal(cash, await other.Locator(".proof .cash").InnerTextAsync());
        await other.Context.CloseAsync();

        Assert.All(ids, id => Assert.Matches("^[A-Z][0-9]+$", id));
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(ids, id => Assert.Contains(id, there));
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_booking_taken_back_can_be_made_again()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        await page.Locator(".made .book").ClickAsync();
        await page.GetByText("It was not: take the booking back").ClickAsync();
        await page.Locator(".made .book").WaitForAsync();
        await page.Locator(".made .book").ClickAsync();
        await page.Locator(".made .pencil").First.WaitForAsync();

        await page.ReloadAsync();
        await page.DrawnAsync();
        await page.Locator(".made .pencil").First.WaitForAsync();
        Assert.Equal(0, await page.Locator(".made .book").CountAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_plan_the_service_kept_opens_with_its_order_in_another_browser()
    {
        IPage first = await studio.VisitAsync();
        await first.Locator("input[data-path=\"title\"]").FillAsync("Kept for another day");
        await first.Locator("input[data-path=\"panels[0].quantity\"]").FillAsync("7");
        await first.PlanAsync();
        await first.Context.CloseAsync();

        IPage second = await studio.VisitAsync();
        ILocator listed = second.Locator("#open option", new() { HasTextString = "Kept for another day" });

        // Once: what the page tried for its hints, before the first browser went away, is no plan of anybody's.
        await Assertions.Expect(listed).ToHaveCountAsync(1);
        await second.Locator("#open").SelectOptionAsync(await listed.GetAttributeAsync("value") ?? "");
        await second.DrawnAsync();

        await Assertions.Expect(second.Locator("input[data-path=\"panels[0].quantity\"]")).ToHaveValueAsync("7");
        await Assertions.Expect(second.Locator("input[data-path=\"title\"]")).ToHaveValueAsync("Kept for another day");
        await second.Context.CloseAsync();
    }
}
