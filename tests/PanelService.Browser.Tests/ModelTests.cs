using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>The page's pure modules, run where they run: in the browser.</summary>
[Collection(StudioGroup.Name)]
public sealed class ModelTests(Studio studio)
{
    [BrowserTheory]
    [InlineData("12 8x10 linen", "12|8|10|cloth|linen")]
    [InlineData("4 16 x 20 primed", "4|16|20|primed|")]
    [InlineData("8x10 × 3", "3|8|10||")]
    [InlineData("3 x 8x10", "3|8|10||")]
    [InlineData("12 8 1/2 x 11 1/4 cotton @ 7.40", "12|8 1/2|11 1/4|cloth|cotton|7.40")]
    [InlineData("20,5 x 30 cm", "1|20,5 cm|30 cm||")]
    [InlineData("12\t8\t10\tlinen", "12|8|10|cloth|linen")]
    [InlineData("6F × 3", "3|33 cm|41 cm||")]
    [InlineData("2 A4 bare", "2|210 mm|297 mm|bare|")]
    [InlineData("some of the large ones", "")]
    [InlineData("12x 8x10", "12|8|10||")]
    [InlineData("12 × 8 × 10", "12|8|10||")]
    [InlineData("3 1/2 x 5 x 2", "2|3 1/2|5||")]
    [InlineData("8 x 10 in x 3", "3|8|10||")]
    [InlineData("12 8x10x3", "")]
    [InlineData("2 1' 6\" x 2' bare", "2|18|24|bare|")]
    [InlineData("4 2 x 3 ft", "4|24|36||")]
    [InlineData("8 x 10 on 3/16 plywood", "1|8|10|||3/16")]
    [InlineData("5 9x12 1/4 ply", "5|9|12|||1/4")]
    [InlineData("5 9x12 1/4\" ply", "5|9|12|||1/4 in")]
    [InlineData("3 8x10 on 3 mm hardboard", "3|8|10|||3 mm")]
    [InlineData("8x10 15 oz linen", "1|8|10|cloth|linen")]
    [InlineData("20cm x 30", "1|20 cm|30 cm||")]
    [InlineData("12 8 1/2 by 11", "12|8 1/2|11||")]
    [InlineData("8½ × 11¼", "1|8 1/2|11 1/4||")]
    [InlineData("-3 8x10", "")]
    [InlineData("3 -8x10", "")]
    [InlineData("2.5 8x10", "")]
    [InlineData("12 8x10 4 16x20", "")]
    public async Task A_line_as_on_paper_is_read(string written, string read)
    {
        IPage page = await studio.BareAsync();

        string got = await page.EvaluateAsync<string>(
            """
            async (text) => {
              const { readLines } = await import('/model/read-lines.js');
              const { seriesOf, formatByName } = await import('/model/formats.js');
              const all = seriesOf(await (await fetch('/api/formats')).json());
              const [{ line }] = readLines(text, 'inch', (name) => formatByName(all, name, 'inch'));
              return line ? [line.quantity, line.width, line.height, line.surface ?? '', line.cloth ?? '', ...[line.thickness, line.shopPrice].filter(Boolean)].join('|') : '';
            }
            """,
            written);

        Assert.Equal(read, got);
    }

    // A comma between figures is a decimal one, unless a size of its own follows it.
    [BrowserTheory]
    [InlineData("12 8x10,4 16x20", "12 8 10|4 16 20")]
    [InlineData("12 20,5x30,4 16x20,3 5x7", "12 20,5 30|4 16 20|3 5 7")]
    [InlineData("2 20,5 x 30,5", "2 20,5 30,5")]
    public async Task Lines_are_told_apart_at_their_commas(string written, string read)
    {
        IPage page = await studio.BareAsync();

        string got = await page.EvaluateAsync<string>(
            "async (text) => (await import('/model/read-lines.js')).readLines(text, 'inch', () => null).map(({ line }) => (line ? `${line.quantity} ${line.width} ${line.height}` : '')).join('|')",
            written);

        Assert.Equal(read, got);
    }

    // An inch is 25.4 mm by definition (NIST SP 811, appendix B).
    [BrowserTheory]
    [InlineData("16 1/2", 419.1)]
    [InlineData("16-1/2", 419.1)]
    [InlineData("2' 6\"", 762)]
    [InlineData("20,5 cm", 205)]
    [InlineData("3 yd", 2743.2)]
    public async Task A_length_previews_at_its_true_size(string written, double millimetres)
    {
        IPage page = await studio.BareAsync();

        double got = await page.EvaluateAsync<double>("async (text) => (await import('/model/measures.js')).readLength(text, 'inch')", written);

        Assert.Equal(millimetres, got, 6);
    }

    // As the slip at the saw has it: what goes on the rack is not measured finer than it was cut.
    [BrowserTheory]
    [InlineData(583.65, "millimetre", "583.7")]
    [InlineData(58.365, "centimetre", "58.37")]
    [InlineData(297, "millimetre", "297")]
    public async Task A_millimetre_is_shown_to_a_tenth(double length, string unit, string shown)
    {
        IPage page = await studio.BareAsync();

        Assert.Equal(shown, await page.EvaluateAsync<string>("async ([value, unit]) => (await import('/model/measures.js')).showLength(value, unit)", new object[] { length, unit }));
    }

    [BrowserTheory]
    [InlineData(7.9375, "7 15/16")]
    [InlineData(0.125, "1/8")]
    [InlineData(24, "24")]
    [InlineData(0.333333, "21/64 ±")]
    public async Task An_inch_reads_as_on_a_tape(double inches, string shown)
    {
        IPage page = await studio.BareAsync();

        Assert.Equal(shown, await page.EvaluateAsync<string>("async (value) => (await import('/model/measures.js')).showLength(value, 'inch')", inches));
    }

    [BrowserFact]
    public async Task Every_language_says_everything()
    {
        IPage page = await studio.BareAsync();

        string[] missing = await page.EvaluateAsync<string[]>(
            """
            async () => {
              const keys = (texts, path) => Object.entries(texts).flatMap(([name, text]) => (text && typeof text === 'object' ? keys(text, `${path}${name}.`) : [`${path}${name}: ${typeof text}`]));
              const { LANGUAGES } = await import('/texts/index.js');
              const all = await Promise.all(LANGUAGES.map(async ([code]) => [code, keys((await import(`/texts/${code}.js`)).default, '')]));
              const [, english] = all[0];
              return all.flatMap(([code, own]) => [...english.filter((key) => !own.includes(key)), ...own.filter((key) => !english.includes(key))].map((key) => `${code} ${key}`));
            }
            """);

        Assert.Empty(missing);
    }

    [BrowserTheory]
    [InlineData("8")]
    [InlineData("32")]
    [InlineData("3.8")]
    [InlineData("0.4")]
    [InlineData("236.5")]
    [InlineData("80")]
    public async Task Another_unit_and_back_leaves_every_figure_as_it_was(string figure)
    {
        IPage page = await studio.BareAsync();

        string[] got = await page.EvaluateAsync<string[]>(
            """
            async (figure) => {
              const { changeUnits, emptyOrder } = await import('/model/order.js');
              const order = { ...emptyOrder(), saw: { heaviest: figure }, bench: { pressure: figure }, strength: { load: figure },
                adhesives: [{ onHand: figure, coverage: { area: figure, volume: figure }, containers: [{ volume: figure }] }] };
              ['millimetre', 'inch', 'centimetre', 'inch'].forEach((unit) => changeUnits(order, unit));
              const [{ onHand, coverage, containers }] = order.adhesives;
              return [order.saw.heaviest, order.bench.pressure, order.strength.load, onHand, coverage.area, coverage.volume, containers[0].volume];
            }
            """,
            figure);

        Assert.All(got, one => Assert.Equal(figure, one));
    }

    [BrowserFact]
    public async Task A_length_with_a_unit_of_its_own_is_told_with_that_alone()
    {
        IPage page = await studio.VisitAsync();

        await page.GetByLabel("Sizes in").SelectOptionAsync("millimetre");

        Assert.Equal("10 in", await page.Locator("input[data-path=\"panels[0].height\"]").InputValueAsync());
        Assert.DoesNotContain("mm", await page.Locator(".line .unit").AllTextContentsAsync());
        string goods = string.Join('|', await page.Locator(".good .said").AllTextContentsAsync());
        Assert.Contains("24 in × 48 in, 1/8 in thick", goods, StringComparison.Ordinal);
        Assert.Contains("54 in wide", goods, StringComparison.Ordinal);
        Assert.DoesNotContain("in mm", goods, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [BrowserFact]
    public async Task Another_unit_changes_no_amount()
    {
        IPage page = await studio.VisitAsync();
        ILocator width = page.Locator("input[data-path=\"panels[0].width\"]");
        ILocator volume = page.Locator("input[data-path=\"adhesives[0].containers[0].volume\"]");
        await page.Locator(".shelf-of-goods", new() { HasText = "Glue" }).Locator("summary").First.ClickAsync();
        await Assertions.Expect(volume).ToHaveValueAsync("8");

        await page.GetByLabel("Sizes in").SelectOptionAsync("centimetre");

        // 8 US fl oz are 236.588 mL (NIST Handbook 44, appendix C: 1 fl oz = 29.573 53 mL).
        Assert.Equal("8 in", await width.InputValueAsync());
        Assert.Equal("236.588", await volume.InputValueAsync());
        await page.Context.CloseAsync();
    }
}
