using System.Net;
using System.Text.Json.Nodes;
using PanelService.Checking;
using PanelService.Outside.Tests.Orders;

namespace PanelService.Outside.Tests.Checker;

/// <summary>A bench as the service plans it passes; what is then falsified is found.</summary>
public sealed class BenchFaultTests(Service service) : IClassFixture<Service>
{
    private const string Order = """
        { "units": "inch", "currency": "EUR", "effort": "quick",
          "panels": [ { "mark": "A", "width": 8, "height": 10, "quantity": 7, "surface": "cloth" },
                      { "mark": "R", "width": 5, "height": 7, "quantity": 2, "surface": "cloth", "first": true } ],
          "boards": [ { "id": "hb", "kind": "hardboard", "thickness": "1/8", "width": 48, "height": 48, "price": 8 } ],
          "cloths": [ { "id": "duck", "width": 54, "sale": { "by": "length", "step": 36, "price": 12 } } ],
          "bench": { "pressSpaces": 1, "stackHeight": 4 } }
        """;

    [Theory]
    [InlineData("benchPlan.stacks.0.panels.0.count", "1")]
    [InlineData("benchPlan.stacks.0.panels.0.mark", "\"A\"")]
    [InlineData("benchPlan.schedule.jobs.0.start", "0")]
    [InlineData("benchPlan.schedule.jobs.1.start", "540")]
    [InlineData("benchPlan.schedule.jobs.4.start", "541")]
    [InlineData("benchPlan.schedule.jobs.2.hands", "400")]
    [InlineData("benchPlan.scheduleProof.finish", "1")]
    [InlineData("benchPlan.scheduleProof.leastPossible", "999999")]
    [InlineData("benchPlan.scheduleProof.proven", "null")]
    public async Task Fault_put_into_a_bench_is_found(string path, string value)
    {
        var (status, body) = await service.Plan(Order);
        Assert.Equal(HttpStatusCode.Created, status);
        Assert.Empty(PlanChecker.Check(Order, body));

        var root = JsonNode.Parse(body)!;
        string[] steps = path.Split('.');
        var parent = steps[..^1].Aggregate(root, (at, step) => int.TryParse(step, out int index) ? at[index]! : at[step]!);
        parent[steps[^1]] = value == "null" ? !parent[steps[^1]]!.GetValue<bool>() : JsonNode.Parse(value);

        Assert.Contains(Rule.Bench, PlanChecker.Check(Order, root.ToJsonString()).Select(violation => violation.Rule));
    }
}
