using System.Text.Json;
using PanelService.Checking.Reading;
using PanelService.Checking.Rules;

namespace PanelService.Checking;

/// <summary>
/// Holds a plan against the nine rules, from the two documents alone: what was sent and what came back. It knows
/// nothing of the service's code and shares none with it; lengths are whole steps of 3.125 µm, money whole minor units.
/// </summary>
public static class PlanChecker
{
    /// <summary>Checks rules 1 to 8.</summary>
    /// <param name="orderJson">The order as sent, with its goods (saved supplies are not known here).</param>
    /// <param name="planJson">The plan as answered.</param>
    /// <returns>Everything that breaks a rule; empty: nothing does.</returns>
    public static IReadOnlyList<Violation> Check(string orderJson, string planJson)
    {
        using var order = JsonDocument.Parse(orderJson);
        using var plan = JsonDocument.Parse(planJson);
        try
        {
            var facts = OrderReader.Read(order.RootElement, plan.RootElement);
            return Check(facts, new PlanReader(facts.Units, facts.Kerf).Read(plan.RootElement));
        }
        catch (Exception wrong) when (wrong is KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException)
        {
            return [new Violation(Rule.Document, "document", wrong.Message)];
        }
    }

    /// <summary>Checks rule 9 on two answers to the same order.</summary>
    /// <param name="first">One plan.</param>
    /// <param name="second">The other.</param>
    /// <returns>Where they differ; empty: nowhere, or one was stopped early.</returns>
    public static IReadOnlyList<Violation> CheckRepeated(string first, string second)
    {
        using var one = JsonDocument.Parse(first);
        using var other = JsonDocument.Parse(second);
        return Stopped(one.RootElement) || Stopped(other.RootElement)
            ? []
            : [.. RepeatableRule.Check(first, Id(one.RootElement), second, Id(other.RootElement))];
    }

    private static List<Violation> Check(OrderFacts order, PlanFacts plan) =>
    [
        .. GeometryRule.Check(order, plan),
        .. DemandRule.Check(order, plan),
        .. SizeRule.Check(order, plan),
        .. SupplyRule.Check(order, plan),
        .. ProofRule.Check(order, plan),
        .. SawRunRule.Check(plan),
        .. HandlingRule.Check(order, plan),
        .. ClothRule.Check(order, plan),
        .. MoneyRule.Check(order, plan),
        .. BenchRule.Check(order, plan),
    ];

    private static bool Stopped(JsonElement plan) => plan.Flag("stoppedEarly", false);

    private static string Id(JsonElement plan) => plan.GetProperty("id").GetString()!;
}
