using System.Text.Json;

namespace PanelService.Outside.Tests.Orders;

/// <summary>A bound is true at every effort: none may contradict a plan that another effort finds.</summary>
public sealed class EffortTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task Bound_of_one_effort_is_never_above_the_plan_of_another()
    {
        var faults = new List<string>();
        for (int seed = 2_000; seed < 2_006; seed++)
        {
            string quick = RandomOrder.Of(seed).Json;
            var (quickSpent, quickLeast) = Proof((await service.Plan(quick)).Body);
            var (steadySpent, steadyLeast) = Proof((await service.Plan(quick.Replace("\"effort\":\"quick\"", "\"effort\":\"steady\"", StringComparison.Ordinal))).Body);
            if (quickLeast > steadySpent || steadyLeast > quickSpent)
            {
                faults.Add($"seed {seed}: quick [{quickLeast}, {quickSpent}], steady [{steadyLeast}, {steadySpent}]");
            }
        }

        Assert.Empty(faults);
    }

    private static (decimal Spent, decimal Least) Proof(string plan)
    {
        using var document = JsonDocument.Parse(plan);
        var proof = document.RootElement.GetProperty("proof");
        return (proof.GetProperty("spent").GetDecimal(), proof.GetProperty("leastPossible").GetDecimal());
    }
}
