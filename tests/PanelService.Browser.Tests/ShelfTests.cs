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
