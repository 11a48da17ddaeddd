using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>Everything the service may remark has a French text on the page, found by its id; ids are read out of the source.</summary>
[Collection(StudioGroup.Name)]
public sealed partial class RemarkTests(Studio studio)
{
    private static readonly string[] Sources = [.. Directory.EnumerateFiles(Path.Combine(Root(), "src"), "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    // One of each way in which an id is written: where one of these is not found, the reading of the source is at fault.
    [Theory]
    [InlineData("brace-or-thicker")]
    [InlineData("primer-short")]
    [InlineData("adhesive-short")]
    [InlineData("strips-missing")]
    [InlineData("units-assumed")]
    [InlineData("on-hand-left-out")]
    [InlineData("dust")]
    [InlineData("manual-first")]
    [InlineData("ventilation")]
    [InlineData("one-sided")]
    public void Ids_are_found_in_every_way_they_are_written(string id) => Assert.Contains(id, Remarks().Concat(CareNotes()));

    [BrowserFact]
    public async Task Every_caution_warning_and_remark_has_a_French_text()
    {
        IPage page = await studio.BareAsync();

        string[] english = await page.EvaluateAsync<string[]>(
            "async (ids) => { const { default: french } = await import('/texts/fr.js'); return ids.filter((id) => french.said({ id, text: 'said in English' }) === 'said in English'); }", Remarks());
        string[] careless = await page.EvaluateAsync<string[]>(
            """
            async (ids) => {
              const [{ default: french }, { default: english }] = await Promise.all([import('/texts/fr.js'), import('/texts/en.js')]);
              return ids.filter((id) => !french.bench.care[id] || !english.bench.care[id] || french.bench.care[id] === english.bench.care[id]);
            }
            """,
            CareNotes());

        Assert.Empty(english);
        Assert.Empty(careless);
    }

    // French usage: a sign of two parts stands off its word, and never begins a line.
    [BrowserFact]
    public async Task French_signs_hold_to_their_words()
    {
        IPage page = await studio.BareAsync();

        string[] loose = await page.EvaluateAsync<string[]>(
            """
            async (ids) => {
              const { default: french } = await import('/texts/fr.js');
              const texts = (value) => (typeof value === 'string' ? [value] : value && typeof value === 'object' ? Object.values(value).flatMap(texts) : []);
              return [...texts(french), ...ids.map((id) => french.said({ id, text: '', here: '8 in' })), french.fault('"wide" is no length. ')].filter((text) => / [:;?!»]|« /.test(text));
            }
            """,
            Remarks());

        Assert.Empty(loose);
    }

    // What a board is called is the painter's own, whatever it is like.
    [BrowserTheory]
    [InlineData("Offcut from the rack, 0.5 thick, 58 × 70.5 cm, from the rack", "Offcut from the rack, 0,5 d’épaisseur, 58 × 70,5 cm, du casier")]
    [InlineData("Cotton duck, 80 wide, 120 cm long, remnant r3 from the rack", "Cotton duck, 80 de large, 120 cm de long, coupon r3 du casier")]
    [InlineData("Hardboard, bought, 1/8 thick, 24 × 48 in, bought", "Hardboard, bought, 1/8 d’épaisseur, 24 × 48 in, achetée")]
    [InlineData("187 labels find no room", "187 repères sans place")]
    public async Task A_drawing_s_material_is_said_in_French_but_not_its_name(string drawn, string french)
    {
        IPage page = await studio.BareAsync();

        Assert.Equal(french, await page.EvaluateAsync<string>("async (text) => (await import('/texts/fr.js')).default.drawn(text)", drawn));
    }

    [BrowserFact]
    public async Task French_has_no_text_for_a_remark_that_is_no_more()
    {
        IPage page = await studio.BareAsync();
        string source = await page.EvaluateAsync<string>("async () => (await fetch('/texts/fr.js')).text()");
        string table = source[source.IndexOf("const SERVICE", StringComparison.Ordinal)..source.IndexOf("const DRAWN", StringComparison.Ordinal)];

        Assert.Empty(Key().Matches(table).Select(match => match.Groups[1].Value).Except(Remarks()));
    }

    private static string[] Remarks() => Found(Warned(), Raised(), Chosen(), Answered());

    private static string[] CareNotes() => Found(Noted());

    private static string[] Found(params Regex[] ways) =>
        [.. Sources.SelectMany(source => ways.SelectMany(way => way.Matches(source))).SelectMany(match => match.Groups.Values.Skip(1)).Select(group => group.Value).Distinct().Order(StringComparer.Ordinal)];

    private static string Root()
    {
        DirectoryInfo here = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(here.FullName, "PanelService.sln")))
        {
            here = here.Parent ?? throw new DirectoryNotFoundException("These tests read the source tree.");
        }

        return here.FullName;
    }

    // new Warning("id", …
    [GeneratedRegex("""new Warning\(\s*"([a-z-]+)",""")]
    private static partial Regex Warned();

    // Warning Text { get; } = new("id", …; Warning Missing(…) => new("id", …; remarks.Add(new("id", …
    [GeneratedRegex("""(?:Warning \w+ \{ get; \} = new|Warning \w+\([^{;]*\) => new|remarks\.Add\(new)\(\s*"([a-z-]+)",""")]
    private static partial Regex Raised();

    // string id = … ? "id" : "id";
    [GeneratedRegex("""string id = \w+ \? "([a-z-]+)" : "([a-z-]+)";""")]
    private static partial Regex Chosen();

    // ["id"] = "id"
    [GeneratedRegex("""\["id"\] = "([a-z-]+)",""")]
    private static partial Regex Answered();

    [GeneratedRegex("""new CareNote\(\s*"([a-z-]+)",""")]
    private static partial Regex Noted();

    [GeneratedRegex("""^  '?([a-z-]+)'?: '""", RegexOptions.Multiline)]
    private static partial Regex Key();
}
