using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 8 for an order with a budget: the cash stays within it, and the worth told is that of what is made.</summary>
internal static class BudgetRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Money);
        if (order.Budget is not { } budget)
        {
            findings.Expect(plan.Budget is null, "budget", $"told where none is set");
            return findings.All;
        }

        if (plan.Budget is not { } told)
        {
            findings.Expect(false, "budget", $"not told of");
            return findings.All;
        }

        findings.Expect(plan.Cost.Cash <= budget, "budget", $"{plan.Cost.Cash} is spent of {budget}");
        findings.Expect(told.Lines.Count == order.Asked.Count, "budget", $"{told.Lines.Count} lines of {order.Asked.Count}");
        bool byArea = order.Asked.Any(line => line.Worth is null);
        decimal worth = 0;
        foreach (var line in order.Asked)
        {
            long made = plan.Panel(line.Mark)?.Made ?? 0;
            findings.Expect(told.Lines.Contains((line.Mark, line.Quantity, made)), "budget", $"{made} made of {line.Quantity} of {line.Mark} is not told");
            findings.Expect(made <= line.Quantity, "budget", $"{made} made of {line.Quantity} of {line.Mark}");
            worth += made * (byArea ? line.Area : line.Worth!.Value);
        }

        findings.Expect(Math.Abs(told.Worth - worth) <= 0.001m * (worth + 1), "budget", $"worth {told.Worth} instead of {worth}");
        findings.Expect(told.MostPossible >= told.Worth && told.Proven == (told.MostPossible == told.Worth), "budget", $"at most {told.MostPossible}, proven {told.Proven}, for a worth of {told.Worth}");
        return findings.All;
    }
}
