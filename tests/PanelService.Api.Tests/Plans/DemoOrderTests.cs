using System.Text.Json;
using System.Xml.Linq;
using PanelService.Api.Tests.Hosts;
using PanelService.Checking;

namespace PanelService.Api.Tests.Plans;

/// <summary>The happy way: sent as a script would send it, the answer held to the contract's rules. Of all demo orders it is held in PanelService.Outside.Tests.</summary>
public sealed class DemoOrderTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    [Theory]
    [InlineData("tern-island")]
    public async Task Create_demo_order_is_planned_by_the_contracts_rules_and_its_parts_are_there(string name)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string order = await client.GetStringAsync($"/api/demo/{name}");

        using HttpResponseMessage response = await client.PostOrderAsync(order);

        string answer = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.Created, answer);
        Assert.Equal("", string.Join(Environment.NewLine, PlanChecker.Check(order, answer)));
        JsonElement plan = await Json.ReadAsync(response);
        await HasDrawings(client, plan.GetProperty("sheets"));
        await HasDrawings(client, plan.GetProperty("cloth"));
        JsonElement cost = await client.GetJsonAsync($"{response.Headers.Location}/cost");
        Assert.Equal(plan.GetProperty("cost").GetRawText(), cost.GetRawText());
    }

    [Fact]
    public async Task List_demo_orders_names_those_that_can_be_had()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        JsonElement names = await client.GetJsonAsync("/api/demo");

        Assert.Equal(["lighthouse-studio", "ropewalk-workshop", "tern-island"], names.EnumerateArray().Select(n => n.GetString()));
    }

    private static async Task HasDrawings(HttpClient client, JsonElement layouts)
    {
        Assert.NotEqual(0, layouts.GetArrayLength());
        foreach (JsonElement layout in layouts.EnumerateArray())
        {
            using HttpResponseMessage drawing = await client.GetAsync(new Uri(layout.GetProperty("drawing").GetString()!, UriKind.Relative));
            Assert.Equal("image/svg+xml", drawing.Content.Headers.ContentType?.MediaType);
            Assert.Equal("svg", XDocument.Parse(await drawing.Content.ReadAsStringAsync()).Root!.Name.LocalName);
        }
    }
}
