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

    private static readonly string Paid = Order.Replace("\"effort\"", "\"labour\": { \"perHour\": 31.70 }, \"effort\"", StringComparison.Ordinal);

    [Theory]
    [InlineData("benchPlan.handsOn.0.minutes", "1")]
    [InlineData("benchPlan.steps.0.steps.0.minutes", "99")]
    [InlineData("benchPlan.schedule.jobs.1.minutes", "7")]
    [InlineData("cost.panels.0.labour", "1.00")]
    public async Task Labour_that_is_not_the_schedules_is_found(string path, string value) =>
        Assert.Contains(Rule.Money, (await Falsified(Paid, path, value)).Select(violation => violation.Rule));

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
    public async Task Fault_put_into_a_bench_is_found(string path, string value) =>
        Assert.Contains(Rule.Bench, (await Falsified(Order, path, value)).Select(violation => violation.Rule));

    private async Task<IEnumerable<Violation>> Falsified(string order, string path, string value)
    {
        var (status, body) = await service.Plan(order);
        Assert.Equal(HttpStatusCode.Created, status);
        Assert.Empty(PlanChecker.Check(order, body));

        var root = JsonNode.Parse(body)!;
        string[] steps = path.Split('.');
        var parent = steps[..^1].Aggregate(root, (at, step) => int.TryParse(step, out int index) ? at[index]! : at[step]!);
        parent[steps[^1]] = value == "null" ? !parent[steps[^1]]!.GetValue<bool>() : JsonNode.Parse(value);

        return PlanChecker.Check(order, root.ToJsonString());
    }
}
