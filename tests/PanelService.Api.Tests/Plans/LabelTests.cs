using System.Text.Json;
using System.Xml.Linq;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Plans;

/// <summary>Labels over the wire; what is on them is held in the drawing's own tests.</summary>
public sealed class LabelTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    [Theory]
    [InlineData("", "210mm", "297mm")]
    [InlineData("?paper=a4", "210mm", "297mm")]
    [InlineData("?paper=letter&page=1", "215.9mm", "279.4mm")]
    [InlineData("?paper=letter&grid=3x10&date=2026-12-01", "215.9mm", "279.4mm")]
    [InlineData("?grid=3x8", "210mm", "297mm")]
    public async Task Labels_are_svg_in_the_papers_millimetres(string query, string width, string height)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/labels.svg{query}", UriKind.Relative));

        XElement root = XDocument.Parse(await response.Content.ReadAsStringAsync()).Root!;
        Assert.Equal("image/svg+xml", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal("1", response.Headers.GetValues("Page-Count").Single());
        Assert.Equal((width, height), ((string?)root.Attribute("width"), (string?)root.Attribute("height")));
        Assert.Equal(2, root.Elements().Count(e => (string?)e.Attribute("class") == "label panel"));
    }

    [Theory]
    [InlineData("", "210mm")]
    [InlineData("?paper=letter&page=1", "215.9mm")]
    public async Task Saw_slip_is_svg_in_the_papers_millimetres(string query, string width)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/saw-run.svg{query}", UriKind.Relative));
        using HttpResponseMessage beyond = await client.GetAsync(new Uri($"{address}/saw-run.svg?page=99", UriKind.Relative));

        XElement root = XDocument.Parse(await response.Content.ReadAsStringAsync()).Root!;
        Assert.Equal("image/svg+xml", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal((width, "drawing saw-slip"), ((string?)root.Attribute("width"), (string?)root.Attribute("class")));
        Assert.Equal(System.Net.HttpStatusCode.NotFound, beyond.StatusCode);
    }

    [Fact]
    public async Task Labels_of_more_than_a_page_are_asked_for_page_by_page()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, Json.With(SampleOrders.Smallest, "panels[0].quantity", "13"));

        using HttpResponseMessage second = await client.GetAsync(new Uri($"{address}/labels.svg?page=2", UriKind.Relative));
        using HttpResponseMessage beyond = await client.GetAsync(new Uri($"{address}/labels.svg?page=9", UriKind.Relative));

        Assert.Equal("2", second.Headers.GetValues("Page-Count").Single());
        Assert.Contains("A 13/13", await second.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        await Json.ReadProblemAsync(beyond, 404, "/problems/no-such-part");
    }

    [Theory]
    [InlineData("paper=a5", "paper")]
    [InlineData("paper=", "paper")]
    [InlineData("grid=9x9", "grid")]
    [InlineData("grid=3x10", "grid")]
    [InlineData("date=soon", "date")]
    [InlineData("lang=de", "lang")]
    [InlineData("page=0", "page")]
    [InlineData("page=-1", "page")]
    [InlineData("page=two", "page")]
    [InlineData("page=99999999999", "page")]
    public async Task Labels_on_what_there_is_not_are_400_naming_it(string query, string field)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/labels.svg?{query}", UriKind.Relative));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Equal([field], problem.GetProperty("errors").EnumerateObject().Select(error => error.Name));
    }

    [Theory]
    [InlineData("?lang=fr", "en", "panneau nu")]
    [InlineData("", "fr-CA, en;q=0.5", "panneau nu")]
    [InlineData("?lang=en", "fr", "bare board")]
    [InlineData("", "de", "bare board")]
    public async Task Labels_speak_the_language_asked_for_else_the_browsers(string query, string accepts, string words)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);
        client.DefaultRequestHeaders.Add("Accept-Language", accepts);

        string svg = await client.GetStringAsync(new Uri($"{address}/labels.svg{query}", UriKind.Relative));

        Assert.Contains(words, svg, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Labels_of_no_plan_are_404()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        using HttpResponseMessage response = await client.GetAsync(new Uri("/api/plans/none/labels.svg", UriKind.Relative));

        await Json.ReadProblemAsync(response, 404, "/problems/no-such-plan");
    }

    private static async Task<string> CreateAsync(HttpClient client, string order)
    {
        using HttpResponseMessage made = await client.PostOrderAsync(order);
        return made.Headers.Location!.OriginalString;
    }
}
