using System.Net;
using System.Text.Json;
using System.Xml.Linq;
using PanelService.Checking;

namespace PanelService.Outside.Tests.Orders;

/// <summary>The demo orders, as they lie in the repository, through the whole service.</summary>
public sealed class DemoOrderTests(Service service) : IClassFixture<Service>
{
    /// <summary>The demo orders' names.</summary>
    public static TheoryData<string> Names() => [.. Files()];

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "demo-data");

    private static string[] Files() =>
        [.. Directory.GetFiles(Folder, "*.json").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    [Fact]
    public void There_are_three_demo_orders() =>
        Assert.Equal(["lighthouse-studio", "ropewalk-workshop", "tern-island"], Files());

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Plan_of_a_demo_order_keeps_every_rule_and_its_parts_are_there(string name)
    {
        string order = await File.ReadAllTextAsync(Path.Combine(Folder, $"{name}.json"));

        var (status, body) = await service.Plan(order);

        Assert.Equal((HttpStatusCode.Created, ""), (status, string.Join('\n', PlanChecker.Check(order, body))));
        using var plan = JsonDocument.Parse(body);
        await HasDrawings(plan.RootElement.GetProperty("sheets"));
        await HasDrawings(plan.RootElement.GetProperty("cloth"));
        Assert.Equal(plan.RootElement.GetProperty("cost").GetRawText(), await service.Get($"/api/plans/{plan.RootElement.GetProperty("id").GetString()}/cost"));
    }

    private async Task HasDrawings(JsonElement layouts)
    {
        Assert.NotEqual(0, layouts.GetArrayLength());
        foreach (var layout in layouts.EnumerateArray())
        {
            Assert.Equal("svg", XDocument.Parse(await service.Get(layout.GetProperty("drawing").GetString()!)).Root!.Name.LocalName);
        }
    }
}
