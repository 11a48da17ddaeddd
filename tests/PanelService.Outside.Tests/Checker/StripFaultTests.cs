using System.Net;
using System.Text.Json.Nodes;
using PanelService.Checking;
using PanelService.Outside.Tests.Orders;

namespace PanelService.Outside.Tests.Checker;

/// <summary>A plan with cradles, as the service makes it, passes; what is then falsified is found.</summary>
public sealed class StripFaultTests(Service service) : IClassFixture<Service>
{
    private const string Order = """
        { "units": "inch", "currency": "EUR", "effort": "quick",
          "panels": [ { "mark": "A", "width": 16, "height": 20, "quantity": 3, "thickness": "1/8", "cradle": true },
                      { "mark": "B", "width": 12, "height": 16, "quantity": 2, "cradle": true } ],
          "boards": [ { "id": "hb", "kind": "hardboard", "thickness": "1/8", "width": 48, "height": 96, "price": 14 } ],
          "strips": [ { "id": "8ft", "length": "8 ft", "price": 4.20, "priceFrom": [ { "count": 3, "price": 3.90 } ], "shop": "mill" }, { "id": "rest", "length": 40, "forSale": 0, "onHand": 2, "value": 0.30 } ],
          "shops": [ { "id": "mill", "charge": 2.50, "freeFrom": 200 } ] }
        """;

    [Theory]
    [InlineData(Rule.Supply, "strips.0.copies", "9")]
    [InlineData(Rule.Supply, "strips.0.pieces.0.length", "19")]
    [InlineData(Rule.Supply, "strips.0.pieces.1.at", "19.5")]
    [InlineData(Rule.Supply, "strips.0.pieces.0.mark", "\"B\"")]
    [InlineData(Rule.Supply, "strips.0.rest", "1")]
    [InlineData(Rule.Supply, "strips.0.strip", "\"9ft\"")]
    [InlineData(Rule.Money, "deliveries.0.charge", "0")]
    [InlineData(Rule.Proof, "stripProof.spent", "0.30")]
    [InlineData(Rule.Proof, "stripProof.leastPossible", "99")]
    [InlineData(Rule.Money, "cost.panels.0.strips", "0.01")]
    public async Task Fault_put_into_a_plan_with_cradles_is_found_by_its_rule(Rule rule, string path, string value)
    {
        await FindsAsync(Order, rule, path, value);
    }

    // A asks for nothing and sags too much; B is said to have none.
    [Theory]
    [InlineData(Rule.Supply, "strips.0.copies", "9")]
    [InlineData(Rule.Supply, "strips.0.pieces.0.length", "19")]
    [InlineData(Rule.Supply, "strength.0.cradle.made", "false")]
    [InlineData(Rule.Supply, "strips.0.pieces.0.mark", "\"B\"")]
    public async Task Fault_put_into_a_plan_that_braces_is_found_by_its_rule(Rule rule, string path, string value) => await FindsAsync(
        Order.Replace("\"thickness\": \"1/8\", \"cradle\": true", "\"thickness\": \"1/8\"", StringComparison.Ordinal)
            .Replace("\"cradle\": true", "\"cradle\": false", StringComparison.Ordinal)
            .Replace("\"strips\": [", "\"strength\": { \"brace\": true }, \"strips\": [", StringComparison.Ordinal),
        rule,
        path,
        value);

    private async Task FindsAsync(string order, Rule rule, string path, string value)
    {
        var (status, body) = await service.Plan(order);
        Assert.Equal(HttpStatusCode.Created, status);
        Assert.Empty(PlanChecker.Check(order, body));

        var root = JsonNode.Parse(body)!;
        string[] steps = path.Split('.');
        var parent = steps[..^1].Aggregate(root, (at, step) => int.TryParse(step, out int index) ? at[index]! : at[step]!);
        parent[steps[^1]] = JsonNode.Parse(value);

        Assert.Contains(rule, PlanChecker.Check(order, root.ToJsonString()).Select(violation => violation.Rule));
    }
}
