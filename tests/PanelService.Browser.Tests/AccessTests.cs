using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>
/// Every view keeps WCAG 2.2 AA as far as a program can tell, in light and dark, at the bench and on the phone; the page
/// can be read at 200 % and moves nothing for those who do not want it.
/// </summary>
[Collection(StudioGroup.Name)]
public sealed class AccessTests(Studio studio)
{
    private static readonly string[] Rows =
        ["Another size", "Add a wish", "Another board", "Another cloth", "Another glue", "Another ground", "Another cost", "Something that wears out", "A tool to pay off", "A shop that charges for the way"];

    // Dark differs in colours, the phone in layout: each of the two is seen once.
    [BrowserTheory]
    [InlineData(ColorScheme.Light, 1280, 900)]
    [InlineData(ColorScheme.Dark, 390, 844)]
    public async Task Every_view_has_no_fault(ColorScheme colours, int width, int height)
    {
        IPage page = await studio.VisitAsync(width, height);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = colours, ReducedMotion = ReducedMotion.Reduce });
        List<string> faults = [.. await page.FaultsAsync("the example")];

        await page.PlanAsync();
        await page.OpenEverythingAsync();
        faults.AddRange(await page.FaultsAsync("the plan with everything open"));

        await page.Locator(".figure button").First.ClickAsync();
        faults.AddRange(await page.FaultsAsync("a drawing, large", "dialog"));
        await page.Keyboard.PressAsync("Escape");
        await page.Locator(".stand-button").ClickAsync();
        faults.AddRange(await page.FaultsAsync("at the saw", "dialog"));
        await page.Keyboard.PressAsync("Escape");

        await page.Locator(".made .book").ClickAsync();
        await page.Locator(".made .pencil").First.WaitForAsync();
        faults.AddRange(await page.FaultsAsync("booked as made", ".made"));

        await page.GetByText("Start an empty ticket").ClickAsync();
        await page.OpenEverythingAsync();
        foreach (string one in Rows)
        {
            await page.GetByText(one, new() { Exact = true }).ClickAsync();
        }

        faults.AddRange(await page.FaultsAsync("an empty ticket with a row of everything"));
        await page.GetByText("Start an empty ticket").ClickAsync();
        await page.Locator("#write").FillAsync("some of the large ones\n2 wide x 8\n3 8x10 linen");
        await page.GetByText("Put on the ticket").ClickAsync();
        await page.PlanButton().ClickAsync();
        await page.Locator(".problem:not([hidden])").WaitForAsync();
        faults.AddRange(await page.FaultsAsync("what is wrong"));

        Assert.Empty(faults);
        await page.Context.CloseAsync();
    }

    // WCAG 2.2, 1.4.10: at 200 % a window of 1280 pixels is 640 wide, at 400 % it is 320.
    [BrowserTheory]
    [InlineData(640)]
    [InlineData(320)]
    public async Task Enlarged_text_is_neither_lost_nor_scrolled_sideways(int width)
    {
        IPage page = await studio.VisitAsync(width, 450);
        await page.PlanAsync();
        await page.OpenEverythingAsync();

        string[] cut = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('main *')]
              .filter((e) => e.children.length === 0 && e.textContent.trim() !== '' && !e.closest('svg, .unseen, .skip') && getComputedStyle(e).clipPath === 'none')
              .filter((e) => { const box = e.getBoundingClientRect(); return box.width > 0 && (box.right > innerWidth + 1 || box.left < -1); })
              .map((e) => `${e.className || e.tagName}: ${e.textContent.trim().slice(0, 40)}`)
            """);

        Assert.Empty(cut);
        Assert.False(await page.OverflowsAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task What_is_taken_off_or_booked_leaves_the_focus_where_the_work_goes_on()
    {
        IPage page = await studio.VisitAsync();
        Task<string> FocusAsync() => page.EvaluateAsync<string>("() => document.activeElement.getAttribute('aria-label') ?? document.activeElement.textContent");

        await page.GetByLabel("Take off: A", new() { Exact = true }).ClickAsync();
        string afterFirst = await FocusAsync();
        await page.GetByLabel("Take off: D", new() { Exact = true }).ClickAsync();
        string afterLast = await FocusAsync();
        await page.GetByText("Add a wish").ClickAsync();
        await page.Locator(".wishes-place .take-off").ClickAsync();
        string afterOnly = await FocusAsync();
        await page.PlanAsync();
        await page.Locator(".made summary").ClickAsync();
        await page.Locator(".made input[data-mark=\"B\"]").FillAsync("1");
        await page.Locator(".made .book").ClickAsync();
        await page.Locator(".made .pencil").First.WaitForAsync();
        string afterBooking = await FocusAsync();
        await page.GetByText("Make a ticket for the spoiled ones").ClickAsync();
        string afterReplacing = await page.EvaluateAsync<string>("() => document.activeElement.dataset.path");

        Assert.Equal(("Take off: B", "Take off: C", "Add a wish"), (afterFirst, afterLast, afterOnly));
        Assert.StartsWith("Booked as made, ", afterBooking, StringComparison.Ordinal);
        Assert.Equal("title", afterReplacing);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Nothing_moves_where_less_motion_is_wanted()
    {
        IPage page = await studio.VisitAsync();
        const string Moving = "() => [getComputedStyle(document.documentElement).scrollBehavior, ...[...document.querySelectorAll('*')].map((e) => getComputedStyle(e)).filter((s) => s.animationName !== 'none' || parseFloat(s.transitionDuration) > 0).map((s) => s.animationName + s.transitionDuration)]";
        await page.PlanAsync();

        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ReducedMotion = ReducedMotion.NoPreference });
        string[] with = await page.EvaluateAsync<string[]>(Moving);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ReducedMotion = ReducedMotion.Reduce });
        string[] without = await page.EvaluateAsync<string[]>(Moving);

        Assert.Equal("smooth", with[0]);
        Assert.Equal(["auto"], without);
        await page.Context.CloseAsync();
    }

    // WCAG 2.2, 1.4.3: letters stand out from their ground by 4.5 to 1; axe does not look into drawings.
    [BrowserTheory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Every_word_of_a_drawing_stands_out(ColorScheme colours)
    {
        IPage page = await studio.VisitAsync();
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = colours });
        await page.PlanAsync();
        Assert.NotEqual(0, await page.Locator("svg.drawing text").CountAsync());

        string[] faint = await page.EvaluateAsync<string[]>(
            """
            () => {
              const light = (colour) => {
                const [r, g, b] = colour.match(/[\d.]+/g).map((v) => { const part = v / 255; return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4; });
                return 0.2126 * r + 0.7152 * g + 0.0722 * b;
              };
              const paper = light(getComputedStyle(document.querySelector('.ticket')).backgroundColor);
              const ratio = (one) => (Math.max(one, paper) + 0.05) / (Math.min(one, paper) + 0.05);
              return [...document.querySelectorAll('svg.drawing text')].filter((t) => ratio(light(getComputedStyle(t).fill)) < 4.5).map((t) => `${t.parentNode.getAttribute('class')}: ${t.textContent}`);
            }
            """);

        Assert.Empty(faint);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Every_drawing_has_a_name_and_a_description_for_those_who_do_not_see_it()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();

        string[] unnamed = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('svg')]
              .filter((s) => !s.closest('[aria-hidden="true"]'))
              .filter((s) => s.getAttribute('role') !== 'img' || !s.querySelector(':scope > title')?.textContent || !s.querySelector(':scope > desc')?.textContent)
              .map((s) => s.outerHTML.slice(0, 120))
            """);

        Assert.Empty(unnamed);
        await page.Context.CloseAsync();
    }
}
