using System.Text.Json;
using PanelService.Api.Tests.Hosts;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Api.Tests.Plans;

/// <summary>Parts of a plan on their own, and the plan with its drawings in it.</summary>
public sealed class PlanPartTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    private const string ClothOrder =
        """
        { "units": "inch", "currency": "USD",
          "panels": [ { "width": 8, "height": 10, "quantity": 2, "surface": "cloth" } ],
          "boards": [ { "id": "hb3", "thickness": "1/8", "width": 24, "height": 48, "price": 6.10 } ],
          "cloths": [ { "id": "duck", "width": 54, "sale": { "by": "length", "step": 36, "price": 12 } } ] }
        """;

    [Fact]
    public async Task Create_with_drawings_inline_carries_what_the_addresses_give()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(ClothOrder, "/api/plans?drawings=inline");

        JsonElement plan = await Json.ReadAsync(response);
        foreach (JsonElement layout in plan.GetProperty("sheets").EnumerateArray().Concat(plan.GetProperty("cloth").EnumerateArray()))
        {
            Assert.Equal(await client.GetStringAsync(layout.GetProperty("drawing").GetString()), layout.GetProperty("svg").GetString());
        }

        JsonElement plain = await client.GetJsonAsync(response.Headers.Location!.OriginalString);
        Assert.All(plain.GetProperty("sheets").EnumerateArray(), sheet => Assert.False(sheet.TryGetProperty("svg", out _)));
    }

    [Fact]
    public async Task Create_twice_gives_the_same_plan_byte_for_byte_but_for_its_id()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        string[] answers = [.. new[] { await CreateAsync(client), await CreateAsync(client) }.Select(a => a.Document.Replace(a.Id, "", StringComparison.Ordinal))];

        Assert.Equal(answers[0], answers[1]);
    }

    [Fact]
    public async Task Create_loose_and_bare_lines_show_only_the_fields_that_have_a_value()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        (_, string document) = await CreateAsync(client);

        Assert.DoesNotContain(":null", document, StringComparison.Ordinal);
        Assert.DoesNotContain("savedEach", document, StringComparison.Ordinal);
        Assert.DoesNotContain("\"remnant\"", document, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Get_shopping_list_is_rfc_4180_with_formulas_disarmed()
    {
        using var host = new TestHost((order, _, _, _) => new Planned(SamplePlanner.PlanOf(order) with
        {
            Buy =
            [
                new Purchase("hb3", "Hardboard 1/8, 2 x 4 ft", 2, SaleUnit.Sheet, new Money(610)),
                new Purchase("=1+1", "said \"best\"", 1, SaleUnit.Container, new Money(790)),
            ],
        }));
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage made = await client.PostOrderAsync(SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{made.Headers.Location}/buy.csv", UriKind.Relative));

        Assert.Equal("text/csv", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal("attachment; filename=\"buy.csv\"", response.Content.Headers.ContentDisposition?.ToString());
        Assert.Equal(
            "id,name,quantity,saleUnit,unitPrice,cost,currency\r\n"
            + "hb3,\"Hardboard 1/8, 2 x 4 ft\",2,sheet,6.10,12.20,EUR\r\n"
            + "'=1+1,\"said \"\"best\"\"\",1,container,7.90,7.90,EUR\r\n",
            await response.Content.ReadAsStringAsync());
    }

    private static async Task<(string Id, string Document)> CreateAsync(HttpClient client)
    {
        using HttpResponseMessage response = await client.PostOrderAsync(ClothOrder);
        string document = await response.Content.ReadAsStringAsync();
        using JsonDocument plan = JsonDocument.Parse(document);
        return (plan.RootElement.GetProperty("id").GetString()!, document);
    }
}
