using System.Text.Json;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Plans;

/// <summary>Weight and stiffness on the wire.</summary>
public sealed class StrengthTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    private const string Order = """
        { "units": "millimetre", "currency": "EUR",
          "panels": [ { "mark": "A", "width": 406.4, "height": 508, "quantity": 2, "pack": 1, "thickness": 3.2 } ],
          "boards": [ { "id": "hb", "kind": "hardboard", "thickness": 3.2, "width": 1220, "height": 2440, "price": 9.50 } ] }
        """;

    // E 4.5 GPa, 1000 kg/m³, 3.2 mm, own weight: 16 × 20 in sags 0.382 mm (Timoshenko's table), in grams 660.6.
    [Fact]
    public async Task Plan_says_what_its_panels_weigh_and_bear()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        JsonElement plan = await client.PlanAsync(Order);

        JsonElement one = plan.GetProperty("strength")[0];
        Assert.Equal(("A", "hb", 2), (one.GetProperty("mark").GetString(), one.GetProperty("board").GetString(), one.GetProperty("count").GetInt32()));
        Assert.InRange(one.GetProperty("sag").GetDouble(), 0.378, 0.386);
        Assert.Equal(660.644m, Math.Round(one.GetProperty("weight").GetDecimal(), 3));
        Assert.Equal("published", one.GetProperty("material").GetProperty("mark").GetString());
        Assert.Equal(1.354667m, one.GetProperty("allowed").GetDecimal());
        Assert.Equal(2 * one.GetProperty("weight").GetDecimal(), plan.GetProperty("weights").GetProperty("batch").GetDecimal(), 5);
        Assert.Equal(one.GetProperty("weight").GetDecimal(), plan.GetProperty("weights").GetProperty("pack").GetDecimal());
    }

    [Fact]
    public async Task Board_may_bring_its_own_figures()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        JsonElement plan = await client.PlanAsync(Order.Replace("\"kind\": \"hardboard\"", "\"density\": 500, \"elasticity\": 9000", StringComparison.Ordinal));

        JsonElement one = plan.GetProperty("strength")[0];
        Assert.InRange(one.GetProperty("sag").GetDouble(), 0.382 / 4 * 0.99, 0.382 / 4 * 1.01);
        Assert.Equal(500, one.GetProperty("material").GetProperty("density").GetInt32());
        Assert.Equal("commonPractice", one.GetProperty("material").GetProperty("mark").GetString());
    }
}
