using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// The bench: every mounted panel is in one stack of its own size, what is needed first is laid first, and the schedule
/// keeps precedence, hands, press and working hours; its end is the one told, and not before its bound.
/// </summary>
internal static class BenchRule
{
    private const long DayLength = 1440;

    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Bench);
        if (plan.Bench is not { Proof: { } proof } bench)
        {
            return findings.All;
        }

        CheckStacks(order, plan, bench, findings);
        var jobs = bench.Jobs.ToDictionary(job => job.Number);
        foreach (var job in bench.Jobs)
        {
            CheckJob(order, job, jobs, findings);
        }

        CheckMost(order.Hands, [.. bench.Jobs.Select(job => (job.Start, job.Start + job.Hands))], "hands", findings);
        CheckMost(order.PressSpaces, [.. bench.Jobs.Where(job => job.Press).Select(job => (job.Start, job.Until))], "press", findings);
        CheckFirst(order, bench, findings);
        long end = bench.Jobs.Select(job => job.Until).DefaultIfEmpty(0).Max();
        findings.Expect(proof.Finish == end, "schedule", $"ends at {end}, not at {proof.Finish}");
        findings.Expect(proof.Least <= proof.Finish, "schedule", $"no schedule is said to end before {proof.Least}, yet this one ends at {proof.Finish}");
        findings.Expect(proof.Proven == (proof.Least == proof.Finish), "schedule", $"proven is {proof.Proven}");
        return findings.All;
    }

    private static void CheckStacks(OrderFacts order, PlanFacts plan, BenchFacts bench, Findings findings)
    {
        foreach (var line in order.Lines.Where(line => line.Surface == "cloth"))
        {
            long made = line.NeedsAdhesive ? plan.Panel(line.Mark)?.Made ?? 0 : 0;
            long stacked = bench.Stacks.SelectMany(stack => stack).Where(part => part.Mark == line.Mark).Sum(part => part.Count);
            long glued = bench.Jobs.Where(job => job.Task == "glue").SelectMany(job => job.Panels).Where(part => part.Mark == line.Mark).Sum(part => part.Count);
            findings.Expect(stacked == made, $"line {line.Mark}", $"{stacked} in stacks for {made} to be mounted");
            findings.Expect(glued == made, $"line {line.Mark}", $"{glued} glued for {made} to be mounted");
        }

        foreach (var stack in bench.Stacks)
        {
            var sizes = stack.Select(part => order.Line(part.Mark)).OfType<LineFacts>().Select(line => (Math.Min(line.Width, line.Height), Math.Max(line.Width, line.Height)));
            findings.Expect(sizes.Distinct().Count() == 1, "stacks", $"panels of different sizes under one weight");
        }
    }

    private static void CheckJob(OrderFacts order, JobFacts job, Dictionary<int, JobFacts> jobs, Findings findings)
    {
        string where = $"job {job.Number}";
        findings.Expect(job.Start >= 0 && job.Hands >= 1 && job.Wait >= 0, where, $"from {job.Start}, {job.Hands} and {job.Wait} minutes");
        findings.Expect(
            job.After.All(before => jobs[before].Until <= job.Start), where, $"begins at {job.Start}, before what it waits for is over");
        findings.Expect(
            job.AfterHands.All(before => jobs[before].Start + jobs[before].Hands <= job.Start), where, $"begins at {job.Start}, before what goes first is laid");
        if (order.Day is var (from, minutes))
        {
            // Hours that reach past midnight belong to the day they began on.
            bool within = new[] { job.Start / DayLength, (job.Start / DayLength) - 1 }.Any(day =>
                job.Start >= (day * DayLength) + from && job.Start + job.Hands <= (day * DayLength) + from + minutes);
            findings.Expect(within, where, $"from {job.Start} for {job.Hands} minutes is outside working hours");
        }
    }

    private static void CheckMost(long most, (long From, long To)[] times, string where, Findings findings)
    {
        foreach (var (from, _) in times)
        {
            int atOnce = times.Count(other => other.From <= from && other.To > from);
            findings.Expect(atOnce <= most, where, $"{atOnce} at once at {from}, of {most}");
        }
    }

    private static void CheckFirst(OrderFacts order, BenchFacts bench, Findings findings)
    {
        var glued = bench.Jobs.Where(job => job.Task == "glue").ToLookup(job => job.Panels.Any(part => order.Line(part.Mark)?.First == true));
        if (glued[true].Any() && glued[false].Any())
        {
            findings.Expect(
                glued[true].Max(job => job.Start) <= glued[false].Min(job => job.Start), "press", $"something else is laid before what is needed first");
        }
    }
}
