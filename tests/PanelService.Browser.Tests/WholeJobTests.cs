using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Playwright;
using PanelService.Tests.Shared;

namespace PanelService.Browser.Tests;

/// <summary>From an empty ticket to a batch booked as made, in the ways a workshop makes hard.</summary>
[Collection(StudioGroup.Name)]
public sealed class WholeJobTests(Studio studio)
{
    [BrowserTheory]
    [InlineData(1280, 900)]
    [InlineData(390, 844)]
    public async Task The_keyboard_alone_goes_from_an_empty_ticket_to_the_tally(int width, int height)
    {
        IPage page = await studio.VisitAsync(width, height);
        await page.TabToAsync(".head-tools button:last-child");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Lines()).ToHaveCountAsync(0);

        await page.TabToAsync("#write");
        await page.Keyboard.TypeAsync("12 8x10 bare @ 3.20");
        await page.Keyboard.PressAsync("Enter");
        await page.TabToAsync(".shelf-of-goods > button");
        await page.Keyboard.PressAsync("Enter");
        await page.WriteInAsync("title", "Twelve by hand");
        await page.WriteInAsync("boards[0].name", "Hardboard");
        await page.WriteInAsync("boards[0].kind", "hardboard");
        await page.WriteInAsync("boards[0].width", "24");
        await page.WriteInAsync("boards[0].height", "48");
        await page.WriteInAsync("boards[0].price", "6.10");
        await page.Keyboard.PressAsync("Control+Enter");
        await page.DrawnAsync();

        await page.TabToAsync(".day-errand .tick input");
        await page.Keyboard.PressAsync("Space");
        await page.TabToAsync(".stand-button");
        await page.Keyboard.PressAsync("Enter");
        int steps = await page.Locator(".steps .step").CountAsync();
        for (int i = 0; i < steps; i++)
        {
            await Assertions.Expect(page.Locator(".stand-place")).ToHaveTextAsync($"{i + 1} of {steps}");
            await page.Keyboard.PressAsync("Enter");
        }

        await Assertions.Expect(page.Locator("dialog")).ToHaveCountAsync(0);
        Assert.Equal(steps, await page.Locator(".steps .tick input:checked").CountAsync());
        Assert.True(await page.Locator(".day-errand .tick input").First.IsCheckedAsync());
        Assert.Contains("8 × 10 in", await page.Locator(".ledger").TextContentAsync() ?? "", StringComparison.Ordinal);

        // Two sheets of 6.10 give twelve with a full blade, since ten come out of one; common practice, and JobTests counts it.
        Assert.Equal("€12.20", await page.Locator(".proof .cash").TextContentAsync());
        await page.TabToAsync(".made .book");
        await page.Keyboard.PressAsync("Enter");
        await page.GetByText("Booked as made").WaitForAsync();
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Offline_the_saw_stand_of_an_open_plan_goes_on()
    {
        IPage page = await studio.VisitAsync(390, 844);
        await page.Locator("html[data-offline]").WaitForAsync();
        await page.PlanAsync();
        await page.Locator(".stand-button").ClickAsync();
        await page.Keyboard.PressAsync("Enter");

        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();
        await page.DrawnAsync();
        await page.Locator(".stand-button").ClickAsync();

        int steps = await page.Locator(".steps .step").CountAsync();
        for (int i = 1; i < steps; i++)
        {
            await Assertions.Expect(page.Locator(".stand-place")).ToHaveTextAsync($"{i + 1} of {steps}");
            Assert.NotEqual(0, await page.Locator(".stand-sheets .cut[data-lit]").CountAsync());
            await page.Keyboard.PressAsync("Enter");
        }

        Assert.Equal(steps, await page.Locator(".steps .tick input:checked").CountAsync());
        await page.Context.CloseAsync();
    }

    // It comes back with what it remembers, the plan finished before it went; or new and empty, and is asked again.
    [BrowserTheory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_service_gone_in_the_middle_is_waited_for_and_nothing_is_lost(bool remembers)
    {
        using var data = new DataFolder();
        using var other = new DataFolder();
        Uri address;
        IPage page;
        await using (var first = new OneHost(data, 0))
        {
            address = first.ClientOptions.BaseAddress;
            page = await studio.OpenAsync(address);
            await page.Locator("#open").SelectOptionAsync("demo ropewalk-workshop");
            await page.Locator("details.fold-work > summary").ClickAsync();
            await page.Locator("select[data-path=\"effort\"]").SelectOptionAsync("quick");
            await page.PlanButton().ClickAsync();
            await page.GetByText("Stop, keep the best so far").WaitForAsync();
        }

        await Assertions.Expect(page.Locator(".act-said")).ToContainTextAsync("The service does not answer. Nothing is lost");
        await page.Locator("input[data-path=\"title\"]").FillAsync("Written while nobody answered");

        await using var second = new OneHost(remembers ? data : other, address.Port);
        await page.DrawnAsync();

        Assert.Equal("Written while nobody answered", await page.Locator("input[data-path=\"title\"]").InputValueAsync());
        await Assertions.Expect(page.Locator(".act-said")).ToContainTextAsync("The ticket has changed since this plan.");
        Assert.Equal(0, await page.Locator(".problem:not([hidden])").CountAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Drawings_are_laid_out_before_they_are_scrolled_to()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();

        await page.WaitForFunctionAsync("() => [...document.querySelectorAll('.days figure.figure')].every((figure) => getComputedStyle(figure).contentVisibility === 'visible')");
        Assert.True(await page.EvaluateAsync<bool>("() => [...document.querySelectorAll('.days figure.figure svg text')].every((text) => text.getBBox().width > 0)"));
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Without_the_service_the_button_says_so_and_the_ticket_stays()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator("input[data-path=\"panels[0].quantity\"]").FillAsync("7");
        await page.Context.SetOfflineAsync(true);

        await page.PlanButton().ClickAsync();
        await Assertions.Expect(page.Locator(".problem")).ToContainTextAsync("The service does not answer");
        Assert.Equal("7", await page.Locator("input[data-path=\"panels[0].quantity\"]").InputValueAsync());

        await page.Context.SetOfflineAsync(false);
        await page.PlanAsync();
        Assert.Equal(0, await page.Locator(".problem:not([hidden])").CountAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task What_draws_the_days_is_asked_for_again_where_the_network_failed()
    {
        IPage page = await studio.OpenAsync(new Uri(studio.Address, "health"));
        await page.Context.RouteAsync("**/view/day-saw.js", route => route.AbortAsync("internetdisconnected"));
        await page.GotoAsync(studio.Address.ToString());
        await page.PlanButton().ClickAsync();
        ILocator again = page.Locator(".days").GetByText("Try again");
        await again.WaitForAsync();
        Assert.Equal(1, await page.Locator(".proof .cash").CountAsync());

        await page.Context.UnrouteAllAsync();
        await PressWhatIsThereAsync(again);
        await page.DrawnAsync();
        Assert.Equal(6, await page.Locator(".days > .day").CountAsync());
        await page.Context.CloseAsync();
    }

    // A fault of the page's own is no network that failed: it has to be seen as what it is, and leave nothing of another plan.
    [BrowserFact]
    public async Task A_fault_in_what_draws_the_days_is_not_taken_for_a_network_that_failed()
    {
        IPage page = await studio.OpenAsync(new Uri(studio.Address, "health"));
        await page.Context.RouteAsync("**/view/day-errand.js", route => route.FulfillAsync(new()
        {
            ContentType = "text/javascript",
            Body = "let times = 0; export function errand() { times += 1; if (times > 1) throw new TypeError('a fault of the page'); return [document.createElement('p')]; }",
        }));
        await page.GotoAsync(studio.Address.ToString());
        await page.PlanAsync();
        var fault = new TaskCompletionSource<string>();
        page.PageError += (_, words) => fault.TrySetResult(words);

        await page.Locator("input[data-path=\"panels[0].quantity\"]").FillAsync("11");
        await page.PlanButton().ClickAsync();

        Assert.Contains("a fault of the page", await fault.Task, StringComparison.Ordinal);
        await Assertions.Expect(page.GetByText("The service does not answer")).ToHaveCountAsync(0);
        Assert.Equal(0, await page.Locator(".days > .day").CountAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task What_stands_below_the_first_view_is_asked_for_again_where_the_network_failed()
    {
        IPage page = await studio.OpenAsync(new Uri(studio.Address, "health"));
        await page.Context.RouteAsync("**/view/yields.js", route => route.AbortAsync("internetdisconnected"));
        await page.GotoAsync(studio.Address.ToString());
        ILocator again = page.Locator(".rack-place").GetByText("Try again");
        await again.WaitForAsync();
        await page.Locator("details.fold-work > summary").ClickAsync();
        Assert.Equal(4, await page.Locator(".lines .line").CountAsync());

        await page.Context.UnrouteAllAsync();
        await PressWhatIsThereAsync(again);
        await page.Locator("input[data-path=\"saw.undersize\"]").WaitForAsync();
        Assert.True(await page.Locator(".rack-place .format-count").CountAsync() > 0);
        Assert.Equal(0, await again.CountAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task A_thinner_blade_is_offered_with_what_it_saves_and_the_plan_says_what_it_did()
    {
        // Twelve of 8 × 10 in, cut 1/16 under: 3 × 7 15/16 + 2 × 3/32 = 24 in to the hair, so that one sheet of 24 × 48 does; with 1/8 it takes two.
        IPage page = await studio.VisitAsync();

        // Changes are tried where planning was quick; the page's clock stands still, so that a busy machine makes no difference.
        await page.EvaluateAsync("() => { performance.now = () => 0; }");
        for (int i = 0; i < 3; i++)
        {
            await page.Locator(".lines .line").Nth(1).GetByText("Take off").ClickAsync();
        }

        await page.Locator("input[data-path=\"panels[0].quantity\"]").FillAsync("12");
        await page.Locator("select[data-path=\"panels[0].surface\"]").SelectOptionAsync("bare");
        await page.PlanAsync();
        ILocator offer = page.Locator(".changes li").First;
        await Assertions.Expect(offer).ToContainTextAsync("With a 3/32 in blade, 1 sheet less: €6.10 less to buy.");
        Assert.Empty(await page.FaultsAsync("what is offered", ".changes"));
        await offer.GetByRole(AriaRole.Button).ClickAsync();

        await Assertions.Expect(page.Locator(".did")).ToHaveTextAsync("Against the plan before: €6.10 less to buy, 1 sheet less.");
        await page.Locator("details.fold-work > summary").ClickAsync();
        await Assertions.Expect(page.Locator("input[data-path=\"saw.kerf\"]")).ToHaveValueAsync("3/32 in");
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task The_shopping_list_goes_by_kind_of_shop_to_others_and_alone_on_paper()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        await page.EvaluateAsync("() => { window.print = () => {}; navigator.share = async (what) => { window.shared = what.text; }; }");
        string cash = await page.Locator(".proof .cash").TextContentAsync() ?? "";

        await page.GetByText("Share the list").ClickAsync();
        await page.WaitForFunctionAsync("() => window.shared");
        string shared = await page.EvaluateAsync<string>("() => window.shared");
        await page.GetByText("Print this list alone").ClickAsync();
        Printed list = Assert.Single(Printed.Read(await page.PdfAsync(new PagePdfOptions { Format = "A4" })));

        string[] shops = [.. await page.Locator(".day-errand h3").AllTextContentsAsync()];
        Assert.Equal(3, shops.Length);
        Assert.All(shops, shop => Assert.Contains($"{shop}:\n– ", shared, StringComparison.Ordinal));
        Assert.EndsWith(cash, shared, StringComparison.Ordinal);
        Assert.All(shops, shop => Assert.Contains(Printed.Close(shop), list.Text, StringComparison.Ordinal));
        Assert.Contains(Printed.Close(cash), list.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Printed.Close("At the saw"), list.Text, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    /// <summary>Presses at once what may be gone the next moment: whatever the page is told makes it ask again by itself.</summary>
    private static async Task PressWhatIsThereAsync(ILocator buttons) =>
        _ = await buttons.EvaluateAllAsync<int>("(all) => { all.forEach((button) => button.click()); return all.length; }");

    private sealed class OneHost : WebApplicationFactory<Program>
    {
        private readonly DataFolder _data;

        internal OneHost(DataFolder data, int port)
        {
            _data = data;
            UseKestrel(port);
            StartServer();
        }

        protected override void ConfigureWebHost(IWebHostBuilder builder) =>
            builder.UseSetting("Serilog:MinimumLevel", "Warning").UseSetting(DataFolder.Setting, _data.Path);
    }
}
