using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>What single days of the plan say, held against what the service books, draws and sends.</summary>
[Collection(StudioGroup.Name)]
public sealed partial class DayTests(Studio studio)
{
    // An offcut across the whole roll still has its selvedges: day 6, the drawing and the booking tell one size, without them.
    [BrowserFact]
    public async Task What_is_left_has_one_size_on_the_rack_the_drawing_and_the_shelf()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        string[] told = [.. (await page.Locator(".leftovers strong").AllInnerTextsAsync()).Select(Size).Order()];
        string[] drawn = [.. (await page.Locator(".cloths svg.drawing desc").AllTextContentsAsync()).Select(Size)];

        await page.Locator(".made .book").ClickAsync();
        await page.Locator(".made .pencil").First.WaitForAsync();
        string[] booked = [.. (await page.Locator(".made .heaps li").AllInnerTextsAsync()).Where(text => text.Contains("offcut", StringComparison.Ordinal) || text.Contains("remnant", StringComparison.Ordinal)).Select(Size).Order()];

        Assert.NotEmpty(drawn);
        Assert.Equal(booked.Distinct(), told.Distinct());
        Assert.All(drawn, size => Assert.Contains(size, told));
        await page.Context.CloseAsync();
    }

    // Nine in the morning in Auckland is 20:00 of the day before in UTC: daylight time there is 13 hours ahead (IANA database).
    [BrowserFact]
    public async Task The_calendar_is_in_the_browser_s_own_zone_unless_the_ticket_names_one()
    {
        IPage first = await studio.VisitAsync();
        await using IBrowserContext far = await first.Context.Browser!.NewContextAsync(new BrowserNewContextOptions { TimezoneId = "Pacific/Auckland", Locale = "en-NZ" });
        await first.Context.CloseAsync();
        IPage page = await far.NewPageAsync();
        await page.GotoAsync(studio.Address.ToString());
        await page.Locator("details.fold-work > summary").ClickAsync();
        await page.GetByText("Days and hands", new() { Exact = true }).ClickAsync();
        await page.Locator("[data-path=\"schedule.start\"]").FillAsync("2026-12-01");
        await page.PlanAsync();
        const string read = "async () => (await fetch(document.querySelector('a[href*=\"calendar.ics\"]').href)).text()";
        string own = await page.EvaluateAsync<string>(read);

        await page.Locator("[data-path=\"schedule.zone\"]").FillAsync("Europe/Paris");
        await page.PlanButton().ClickAsync();
        await Assertions.Expect(page.Locator("a[href*=\"calendar.ics\"]")).Not.ToHaveAttributeAsync("href", Zoned());
        string named = await page.EvaluateAsync<string>(read);

        Assert.Contains("DTSTART:20261130T200000Z", own, StringComparison.Ordinal);
        Assert.Contains("DTSTART:20261201T080000Z", named, StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task A_panel_dearer_than_the_shop_s_is_told_in_words()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator("[data-path=\"panels[0].shopPrice\"]").FillAsync("0.10");
        await page.PlanAsync();

        string said = await page.Locator(".entry .saved").First.TextContentAsync() ?? "";

        Assert.Matches(@"^ The shop would be €\d+\.\d\d cheaper each\.$", said);
        Assert.Matches(@"^ €\d+\.\d\d saved each\.$", await page.Locator(".entry .saved").Nth(1).TextContentAsync() ?? "");
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Every_setting_says_which_edge_goes_to_the_fence()
    {
        IPage page = await studio.VisitAsync();
        await page.PlanAsync();
        string[] edges = await page.EvaluateAsync<string[]>(
            """
            async () => (await (await fetch(`/api/plans/${location.hash.slice(6)}`)).json()).sawRun.map(({ tool, passes }) => {
              const [{ edge, edgeBy }] = passes;
              return `${edge} edge ${tool === 'sled' ? 'against the stop' : 'to the fence'}${edgeBy === 'factory' ? ', factory' : ''}`;
            })
            """);
        string[] run = [.. await page.Locator(".setting-cuts").AllTextContentsAsync()];
        await page.Locator(".stand-button").ClickAsync();
        string standing = await page.Locator(".stand-cuts").TextContentAsync() ?? "";

        Assert.Contains(edges, edge => edge.EndsWith(", factory", StringComparison.Ordinal));
        Assert.Equal(edges.Length, run.Length);
        Assert.All(edges.Zip(run), one => Assert.Contains(one.First, one.Second, StringComparison.Ordinal));
        Assert.Equal(run[0], standing);
        await page.Context.CloseAsync();
    }

    // 95 EUR buy no five panels of 11 × 14 in: whoever reads the price alone would think the batch whole.
    [BrowserFact]
    public async Task A_budget_says_beside_the_price_what_is_not_made()
    {
        IPage page = await OrderedAsync("order.budget = 95;");

        string said = await page.Locator(".proof .within").InnerTextAsync();

        Assert.StartsWith("With €95.00: ", said, StringComparison.Ordinal);
        Assert.Contains("D 3 of 3", said, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task What_is_bought_at_a_shop_that_charges_names_it()
    {
        IPage page = await OrderedAsync("order.shops = [{ id: 'yard', name: 'The yard by the bridge', charge: 9 }]; order.boards[0].shop = 'yard';");

        await Assertions.Expect(page.Locator(".day-errand .tick").First).ToContainTextAsync("at €6.10, The yard by the bridge");
        await page.Context.CloseAsync();
    }

    // 90 EUR leave a whole line out: it stands in no other list of the plan.
    [BrowserFact]
    public async Task What_a_budget_leaves_out_is_named_by_the_price_and_in_the_tally()
    {
        IPage page = await OrderedAsync("order.budget = 90;");
        string[] wanted = await page.EvaluateAsync<string[]>(
            """
            async () => {
              const plan = await (await fetch(`/api/plans/${location.hash.split('=')[1]}`)).json();
              const none = plan.budget.lines.filter((line) => line.made === 0);
              return none.map((line) => `${line.wanted} × ${line.mark}, `);
            }
            """);

        Assert.NotEmpty(wanted);
        foreach (string place in (string[])[".proof", ".day-tally"])
        {
            string said = await page.Locator($"{place} .left-out").InnerTextAsync();
            Assert.StartsWith("Not made, since the money is not enough: ", said, StringComparison.Ordinal);
            Assert.All(wanted, line => Assert.Contains(line, said, StringComparison.Ordinal));
            Assert.EndsWith(" in.", said, StringComparison.Ordinal);
        }

        await page.Context.CloseAsync();
    }

    // With the general cautions in it, the first setting alone filled the place of the run.
    [BrowserFact]
    public async Task What_holds_at_every_cut_stands_before_the_run_and_each_setting_warns_of_its_own()
    {
        IPage page = await OrderedAsync("");

        string[][] cautions = await page.EvaluateAsync<string[][]>("() => ['.every-cut .caution', '.step .caution'].map((at) => [...document.querySelectorAll(at)].map((one) => one.innerText))");
        string[] atStart = await page.EvaluateAsync<string[]>("async () => (await (await fetch(`/api/plans/${location.hash.split('=')[1]}`)).json()).sawRun[0].cautions.filter((one) => !one.here).map((one) => one.text)");

        Assert.Equal(atStart, cautions[0].Select(text => text.Replace('\u00a0', ' ')));
        Assert.Empty(cautions[0].Intersect(cautions[1]));
        Assert.All(cautions[1].SkipLast(1), text => Assert.Contains(" Here: ", text, StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    // Its lines F3, F8 and F0 are cut from boards of two thicknesses and from offcuts of the same.
    [BrowserFact]
    public async Task How_stiff_they_are_is_said_once_for_each_thickness_of_board()
    {
        IPage page = await OrderedAsync("order = await (await fetch('/api/demo/lighthouse-studio')).json();");

        string[] rows = [.. await page.Locator(".strength tbody th").AllInnerTextsAsync()];

        Assert.Contains(rows, row => row.StartsWith("F3, ", StringComparison.Ordinal));
        Assert.Equal(rows.Distinct(), rows);
        await page.Context.CloseAsync();
    }

    // As a script writes it: what may be left out is, and what is usual stands there by its name.
    [BrowserFact]
    public async Task A_choice_left_out_or_usual_is_shown_as_what_it_means()
    {
        IPage page = await OrderedAsync("delete order.panels[0].surface; order.boards[0].grain = 'none';");
        await page.Locator(".good summary").First.ClickAsync();
        await page.Locator("[data-path=\"boards[0].grain\"]").WaitForAsync();

        string[] shown = await page.EvaluateAsync<string[]>(
            "() => ['panels[0].surface', 'boards[0].grain'].map((path) => document.querySelector(`select[data-path=\"${path}\"]`).selectedOptions[0]?.value)");
        int blank = await page.EvaluateAsync<int>("() => [...document.querySelectorAll('select[data-path]')].filter((one) => one.selectedIndex < 0).length");

        Assert.Equal(["bare", ""], shown);
        Assert.Equal(0, blank);
        await page.Context.CloseAsync();
    }

    /// <summary>The example with a change, planned by the service and opened by its link.</summary>
    private async Task<IPage> OrderedAsync(string change)
    {
        IPage page = await studio.VisitAsync();
        await page.EvaluateAsync(
            $$"""
            async () => {
              let order = await (await fetch('/api/demo/tern-island')).json();
              {{change}}
              const answer = await fetch('/api/plans', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(order) });
              location.hash = `#plan=${(await answer.json()).id}`;
            }
            """);
        await page.DrawnAsync();
        await page.PaintEverythingAsync();
        return page;
    }

    // "1 of 53 × 39 in", "Back on the rack: 53 × 39." and "C1 53 × 39 in, remnant, …": the size.
    private static string Size(string text) => Pair().Match(text[Math.Max(0, text.IndexOf("Back on the rack", StringComparison.Ordinal))..]).Value;

    [GeneratedRegex("zone=")]
    private static partial Regex Zoned();

    [GeneratedRegex(@"\d+(?: \d+/\d+)? × \d+(?: \d+/\d+)?(?= in|[;.])")]
    private static partial Regex Pair();
}
