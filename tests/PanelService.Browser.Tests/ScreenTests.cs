using System.Text.Json;
using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>What stands where: on a phone large enough to read, beside nothing it belongs not to, and where the hands are next.</summary>
[Collection(StudioGroup.Name)]
public sealed class ScreenTests(Studio studio)
{
    private const double LeastLetter = 6.5;
    private const double LeastInline = 7.9;
    private const double LeastOnChart = 10;

    // The smallest text of a drawing as it stands on the screen, in CSS pixels.
    private const string Smallest =
        """
        (svg) => {
          const { width } = svg.getBoundingClientRect();
          const scale = width / svg.viewBox.baseVal.width;
          return Math.min(...[...svg.querySelectorAll('text')].map((text) => parseFloat(getComputedStyle(text).fontSize) * scale));
        }
        """;

    [BrowserTheory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task A_board_with_a_long_name_is_chosen_within_the_room_there_is(int width)
    {
        IPage page = await studio.VisitAsync(width);
        await page.Locator(".good summary").First.ClickAsync();
        await page.Locator("[data-path=\"boards[0].name\"]").FillAsync("Tempered hardboard of the smooth sort on both faces, 1/8 in, half a sheet of 2 by 4 ft, from the yard by the bridge");

        JsonElement boxes = await page.EvaluateAsync<JsonElement>(
            """
            () => Object.fromEntries([['choice', '#yield-board'], ['button', '.yield button'], ['place', '.yield']].map(([name, at]) => [name, document.querySelector(at).getBoundingClientRect().toJSON()]))
            """);

        double At(string box, string side) => boxes.GetProperty(box).GetProperty(side).GetDouble();
        Assert.True(At("choice", "right") <= At("place", "right") + 0.5, "The choice is wider than its place.");
        Assert.True(At("choice", "right") <= At("button", "left") || At("choice", "bottom") <= At("button", "top"), "The choice runs under the button.");
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task At_the_saw_a_phone_shows_the_sheet_as_wide_as_its_screen()
    {
        IPage page = await studio.VisitAsync(390, 844);
        await page.PlanAsync();
        await page.Locator(".stand-button").ClickAsync();
        ILocator sheet = page.Locator(".stand-sheets svg").First;

        Assert.InRange(await sheet.EvaluateAsync<double>("(svg) => svg.getBoundingClientRect().width"), 370, 390);
        Assert.True(await sheet.EvaluateAsync<double>(Smallest) > LeastLetter, "The figures on the sheet are too small.");
        Assert.False(await page.EvaluateAsync<bool>("() => { const step = document.querySelector('.stand-step'); return step.scrollWidth > step.clientWidth; }"), "The step has to be scrolled sideways.");
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task On_a_small_phone_every_letter_of_a_drawing_can_be_read_and_the_keyboard_moves_along_it()
    {
        IPage page = await studio.VisitAsync(360, 740);
        await page.PlanAsync();
        ILocator places = page.Locator(":is(.sheets, .cloths) .drawing-place");

        Assert.NotEqual(0, await places.CountAsync());
        foreach (ILocator place in await places.AllAsync())
        {
            Assert.InRange(await place.Locator("svg").EvaluateAsync<double>(Smallest), LeastInline, 20);
            Assert.Equal(0, await place.EvaluateAsync<int>("(place) => place.tabIndex"));
        }

        Assert.False(await page.OverflowsAsync());
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task The_days_as_bars_are_read_on_a_phone_by_moving_along_them()
    {
        IPage page = await studio.VisitAsync(390, 844);
        await page.PlanAsync();
        ILocator chart = page.Locator(".together .drawing-place");

        Assert.True(await chart.Locator("svg").EvaluateAsync<double>(Smallest) > LeastOnChart, "The bars' words are too small.");
        Assert.True(await chart.EvaluateAsync<bool>("(place) => place.scrollWidth > place.clientWidth && place.tabIndex === 0"), "The bars cannot be moved along.");
        Assert.False(await page.OverflowsAsync());
        await page.Context.CloseAsync();
    }

    // The browser writes every refusal into its console in red, and a plan that is not made yet is nothing to be alarmed at.
    [BrowserFact]
    public async Task A_plan_not_made_yet_is_shown_without_a_refusal()
    {
        IPage page = await studio.VisitAsync();
        var refused = new List<string>();
        page.Response += (_, response) =>
        {
            if (response.Status >= 400)
            {
                refused.Add(response.Url);
            }
        };
        IResponse listed = await page.RunAndWaitForResponseAsync(() => page.PlanAsync(), response => response.Url.Contains("/api/plans?take=", StringComparison.Ordinal));
        await listed.FinishedAsync();

        // Booked and taken back, so that what was asked for before is answered.
        await page.Locator(".made .book").ClickAsync();
        await page.GetByText("It was not: take the booking back").ClickAsync();
        await page.Locator(".made .book").WaitForAsync();

        Assert.Empty(refused);
        await page.Context.CloseAsync();
    }

    [BrowserTheory]
    [InlineData("Another board", "boards[1].name")]
    [InlineData("Another cloth", "cloths[1].name")]
    [InlineData("Another size", "panels[4].width")]
    [InlineData("Add a wish", "wishes[0].width")]
    public async Task What_is_added_is_written_in_next(string button, string field)
    {
        IPage page = await studio.VisitAsync();

        await page.GetByText(button, new() { Exact = true }).ClickAsync();

        Assert.Equal(field, await page.EvaluateAsync<string>("() => document.activeElement.dataset.path"));
        await page.Context.CloseAsync();
    }

    // The example has 10, 6, 5 and 3: what is no number of panels is not counted.
    [BrowserTheory]
    [InlineData("2.5", "14 panels")]
    [InlineData("-3", "14 panels")]
    [InlineData("12", "26 panels")]
    public async Task The_bar_counts_whole_panels_alone(string quantity, string said)
    {
        IPage page = await studio.VisitAsync();

        await page.Locator("[data-path=\"panels[0].quantity\"]").FillAsync(quantity);

        await Assertions.Expect(page.Locator(".act-said")).ToHaveTextAsync(said);
        await page.Context.CloseAsync();
    }

    // Beside the sheets the run is a third of the page: what did not fit stood there cut off, with no bar to move it by.
    [BrowserTheory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task How_true_the_panels_come_out_is_read_whole(int width)
    {
        IPage page = await studio.VisitAsync(width);
        await page.PlanAsync();

        await page.Locator(".tolerances summary").ClickAsync();

        Assert.True(await page.EvaluateAsync<bool>("() => document.querySelector('.tolerances table').getBoundingClientRect().right <= document.querySelector('.run').getBoundingClientRect().right"), "The table is wider than its place.");
        Assert.DoesNotContain("±", await page.Locator(".tolerances td[data-column=\"Out of square\"]").First.InnerTextAsync(), StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [BrowserTheory]
    [InlineData(1280)]
    [InlineData(800)]
    public async Task Cloth_is_drawn_as_large_as_on_paper_where_there_is_room(int width)
    {
        IPage page = await studio.VisitAsync(width);
        await page.PlanAsync();

        double[] shown = await page.EvaluateAsync<double[]>("() => { const svg = document.querySelector('.cloths svg.drawing'); return [svg.getBoundingClientRect().width, parseFloat(svg.getAttribute('width')) * 96 / 25.4, document.querySelector('.cloths').clientWidth]; }");

        Assert.Equal(Math.Min(shown[1], shown[2]), shown[0], 1.0);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task What_few_need_of_a_good_stands_under_its_fields()
    {
        IPage page = await studio.VisitAsync();
        await page.Locator(".good summary").First.ClickAsync();

        double[] left = await page.EvaluateAsync<double[]>("() => ['.good .fields .field', '.good .few > summary'].map((at) => document.querySelector(at).getBoundingClientRect().left)");

        Assert.Equal(left[0], left[1], 1.0);
        await page.Context.CloseAsync();
    }
}
