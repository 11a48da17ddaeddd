using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// Rule 8 for the work: labour is the hands-on minutes of the schedule at the price of an hour, to the minor unit, each
/// line bearing its minutes' share; and the minutes told of lines, steps and jobs are the same minutes.
/// </summary>
internal static class LabourRule
{
    private const decimal MinutesPerHour = 60;

    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Money);
        if (plan.Bench is not { } bench)
        {
            return findings.All;
        }

        foreach (var panel in plan.Panels)
        {
            decimal due = panel.Made == 0 ? 0 : panel.Made * bench.MinutesEach.GetValueOrDefault(panel.Mark);
            decimal told = bench.HandsOn.GetValueOrDefault(panel.Mark);
            findings.Expect(told == due && (panel.Made == 0 || due > 0), $"line {panel.Mark}", $"{told} hands-on minutes for {panel.Made} panels of {due}");
        }

        decimal minutes = bench.HandsOn.Values.Sum();
        if (bench.Proof is not null)
        {
            minutes = bench.Jobs.Sum(job => job.Minutes);
            findings.Expect(minutes == bench.HandsOn.Values.Sum(), "schedule", $"{minutes} hands-on minutes of jobs for {bench.HandsOn.Values.Sum()} of lines");
        }

        foreach (var job in bench.Jobs.Where(job => job.Panels.Count > 0))
        {
            findings.Expect(job.Hands == Math.Max(1, Math.Ceiling(job.Minutes)), $"job {job.Number}", $"{job.Hands} whole minutes for {job.Minutes}");
        }

        CheckShares(order, plan, bench, minutes, findings);
        return findings.All;
    }

    private static void CheckShares(OrderFacts order, PlanFacts plan, BenchFacts bench, decimal minutes, Findings findings)
    {
        decimal pay = order.LabourPerHour * minutes / MinutesPerHour;
        long labour = plan.Cost.Panels.Sum(line => line.Parts["labour"]);
        findings.Expect(labour == Math.Round(pay, MidpointRounding.AwayFromZero), "cost", $"labour {labour} instead of {pay} for {minutes} minutes");
        foreach (var line in plan.Cost.Panels)
        {
            decimal due = minutes == 0 ? 0 : labour * bench.HandsOn.GetValueOrDefault(line.Mark) / minutes;
            findings.Expect(Math.Abs(line.Parts["labour"] - due) <= 1m, line.Where, $"labour {line.Parts["labour"]} instead of {due}");
        }
    }
}
