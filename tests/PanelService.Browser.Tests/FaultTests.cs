using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>What is wrong is said where it is, of what it is, and once.</summary>
[Collection(StudioGroup.Name)]
public sealed class FaultTests(Studio studio)
{
    [BrowserFact]
    public async Task A_number_below_the_least_is_told_as_a_number()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator("[data-path=\"panels[0].quantity\"]").FillAsync("-3");
        await page.Locator("[data-path=\"panels[1].shopPrice\"]").FillAsync("-1");
        await page.PlanButton().ClickAsync();
        await Assertions.Expect(page.Locator(".problem li")).ToHaveCountAsync(2);

        string said = await page.Locator(".problem").InnerTextAsync();
        Assert.Contains("A, how many: Must be a whole number from 1 to 100000; this is -3.", said, StringComparison.Ordinal);
        Assert.Matches(@"B, a shop asks: Must be an amount from 0 to [0-9.]+; this is -1\.", said);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_fault_of_a_good_says_of_which_and_shows_no_escape()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator(".good summary").First.ClickAsync();
        await page.Locator("[data-path=\"boards[0].width\"]").FillAsync("wide");
        await page.PlanButton().ClickAsync();
        await page.Locator(".problem li").First.WaitForAsync();
        string named = await page.Locator(".problem li").InnerTextAsync();
        await page.Locator("[data-path=\"boards[0].name\"]").FillAsync("");
        await page.PlanButton().ClickAsync();
        ILocator nameless = page.Locator(".problem li", new() { HasTextString = "Board 1, width" });

        await nameless.WaitForAsync();
        Assert.StartsWith("Hardboard 1/8, 2 x 4 ft, width: \"wide\" is no length.", named, StringComparison.Ordinal);
        Assert.EndsWith("\"8 in\", \"2 ft 6 in\".", named, StringComparison.Ordinal);
        Assert.DoesNotContain('\\', named);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_ticket_without_any_board_is_told_so_once_with_a_way_to_add_one()
    {
        IPage page = await studio.VisitAsync();
        await page.GetByText("Start an empty ticket").ClickAsync();
        await page.Locator("#write").FillAsync("12 8x10 bare, 4 9x12 bare");
        await page.Keyboard.PressAsync("Enter");
        await page.PlanButton().ClickAsync();

        await Assertions.Expect(page.Locator(".problem li")).ToHaveTextAsync("No board is on the ticket. Add one that can be bought or is on the rack, or take board from the studio’s shelf.");
        await page.Locator(".problem a").ClickAsync();
        Assert.Equal("Another board", await page.EvaluateAsync<string>("() => document.activeElement.textContent"));
        await page.Context.CloseAsync();
    }

    // The service refuses for want of boards and would speak of cloth the next time only.
    [BrowserFact]
    public async Task A_ticket_without_board_and_cloth_is_told_of_both_at_once()
    {
        IPage page = await studio.VisitAsync();
        await page.GetByText("Start an empty ticket").ClickAsync();
        await page.Locator("#write").FillAsync("12 9x12 linen");
        await page.Keyboard.PressAsync("Enter");
        await page.PlanButton().ClickAsync();

        await Assertions.Expect(page.Locator(".problem li")).ToContainTextAsync(["No board is on the ticket.", "No cloth is on the ticket."]);
        await page.Context.CloseAsync();
    }

    // The second of two blanks is labelled × for the eye alone, and "a number of in" is no English.
    [BrowserFact]
    public async Task A_fault_in_the_second_of_two_blanks_names_what_it_is_the_other_side_of()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator(".fold-work > summary").ClickAsync();
        await page.Locator("[data-path=\"saw.smallestKept[1]\"]").FillAsync("banana");
        await page.PlanButton().ClickAsync();

        await Assertions.Expect(page.Locator(".problem li")).ToContainTextAsync("smallest board worth keeping, other side: \"banana\" is no length. Expected a number of inches such as 16.5");
        Assert.Equal(1, await page.GetByLabel("smallest board worth keeping, other side").CountAsync());
        Assert.StartsWith("« banana » n’est pas une longueur. Écrivez un nombre en pouces tel que 16,5", (await page.EvaluateAsync<string>("async () => (await import('/texts/fr.js')).default.fault('\"banana\" is no length. Expected a number of in such as 16.5, or text such as \"41 cm\".')")).Replace('\u00a0', ' '), StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task More_spoiled_than_made_is_told_with_the_numbers()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        await page.Locator(".made summary").ClickAsync();
        await page.Locator(".made input[data-mark=\"A\"]").FillAsync("11");
        await page.Locator(".made .book").ClickAsync();

        await Assertions.Expect(page.Locator(".made > [role=status]")).ToHaveTextAsync("Of \"A\" 11 are said to be spoiled, and 10 were made.");
        Assert.Equal("De A, 11 seraient ratés, et 10 ont été faits.", await page.EvaluateAsync<string>("async () => (await import('/texts/fr.js')).default.fault('Of \"A\" 11 are said to be spoiled, and 10 were made.')"));
        await page.Context.CloseAsync();
    }
}
