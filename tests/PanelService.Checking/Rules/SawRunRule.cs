using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 6: every cut in exactly one pass, none before the one that makes its workpiece, at its true setting.</summary>
internal static class SawRunRule
{
    public static IEnumerable<Violation> Check(PlanFacts plan)
    {
        var findings = new Findings(Rule.SawRun);
        findings.Expect(
            plan.SawRun.Select(step => step.Step).SequenceEqual(Enumerable.Range(1, plan.SawRun.Count)), "saw run", $"steps are not numbered 1 to {plan.SawRun.Count}");
        foreach (var step in plan.SawRun)
        {
            findings.Expect(step.Tool is "fence" or "sled", $"step {step.Step}", $"tool {step.Tool}");
            findings.Expect(step.Passes.Count > 0, $"step {step.Step}", $"has no pass");
        }

        CheckProof(plan, findings);
        CheckCounts(plan, findings);
        CheckPasses(plan, findings);
        CheckSupplier(plan, findings);
        return findings.All;
    }

    private static void CheckProof(PlanFacts plan, Findings findings)
    {
        var proof = plan.SawProof;
        int settings = plan.SawRun.Select(step => (step.Tool, step.Fence)).Distinct().Count();
        findings.Expect(proof.Settings == settings, "sawProof", $"{proof.Settings} settings are said, the run has {settings}");
        findings.Expect(
            proof.LeastPossible <= settings && proof.LeastPossible >= Math.Min(1, settings), "sawProof", $"at least {proof.LeastPossible} of {settings} settings");
        findings.Expect(
            proof.Proven == (proof.Settings == proof.LeastPossible), "sawProof", $"proven is {proof.Proven} at {proof.Settings} and {proof.LeastPossible}");
    }

    /// <summary>
    /// Every change there is counts, and no run has fewer than it has settings but one. A cut makes no more than two parts of one, so
    /// what a sheet leaves says how few could do; of how few that is said, no less.
    /// </summary>
    private static void CheckCounts(PlanFacts plan, Findings findings)
    {
        var proof = plan.SawProof;
        CheckCount("changes", proof.Changes, Math.Max(0, plan.SawRun.Count - 1), Math.Max(0, proof.Settings - 1), findings);
        CheckCount(
            "cuts",
            proof.Cuts,
            plan.Sheets.Sum(sheet => sheet.Copies * sheet.Cuts.Count(cut => !cut.BySupplier)),
            plan.Sheets.Sum(sheet => sheet.Copies * Math.Max(0, sheet.Pieces.Count + sheet.Offcuts.Count - 1 - sheet.Cuts.Count(cut => cut.BySupplier))),
            findings);
    }

    private static void CheckCount(string of, (long Value, long Least, bool Proven) said, long counted, long least, Findings findings)
    {
        findings.Expect(said.Value == counted, "sawProof", $"{said.Value} {of} are said, the run has {counted}");
        findings.Expect(said.Least <= counted && said.Least >= least, "sawProof", $"at least {said.Least} {of} are said, of {counted}, and {least} are needed");
        findings.Expect(said.Proven == (said.Value == said.Least), "sawProof", $"{of} proven is {said.Proven} at {said.Value} and {said.Least}");
    }

    private static void CheckPasses(PlanFacts plan, Findings findings)
    {
        var cuts = plan.Sheets.SelectMany(sheet => sheet.Cuts.Select(cut => (Key: (sheet.Number, cut.Number), Cut: cut)))
            .DistinctBy(one => one.Key).ToDictionary(one => one.Key, one => one.Cut);
        var makers = plan.Sheets.DistinctBy(sheet => sheet.Number)
            .ToDictionary(sheet => sheet.Number, sheet => CutReplay.Of(sheet, new Findings(Rule.Geometry)).Makers);
        var made = new HashSet<(int Sheet, int Cut)>(cuts.Where(one => one.Value.BySupplier).Select(one => one.Key));
        foreach (var step in plan.SawRun)
        {
            foreach (var pass in step.Passes)
            {
                string where = $"step {step.Step}, sheet {pass.Sheet}, cut {pass.Cut}";
                if (!cuts.TryGetValue(pass, out var cut))
                {
                    findings.Expect(false, where, $"there is no such cut");
                    continue;
                }

                int maker = makers[pass.Sheet].GetValueOrDefault(pass.Cut);
                findings.Expect(!cut.BySupplier, where, $"the supplier makes this cut");
                findings.Expect(maker == 0 || made.Contains((pass.Sheet, maker)), where, $"comes before cut {maker}, which makes its workpiece");
                findings.Expect(made.Add(pass) || cut.BySupplier, where, $"stands in a second pass");
                CheckFence(step, cut, where, findings);
            }
        }

        foreach (var (sheet, cut) in cuts.Keys.Where(key => !made.Contains(key)))
        {
            findings.Expect(false, $"sheet {sheet}, cut {cut}", $"stands in no pass");
        }
    }

    private static void CheckFence(SawStepFacts step, CutFacts cut, string where, Findings findings)
    {
        var (before, after) = CutReplay.Parts(cut);
        findings.Expect(
            step.Fence > 0 && (step.Fence == before || step.Fence == after), where, $"setting {step.Fence} keeps neither part, {before} or {after}");
    }

    private static void CheckSupplier(PlanFacts plan, Findings findings)
    {
        foreach (var sheet in plan.Sheets)
        {
            bool[] bySupplier = [.. sheet.Cuts.OrderBy(cut => cut.Number).Select(cut => cut.BySupplier)];
            findings.Expect(
                !bySupplier.SkipWhile(supplier => supplier).Any(supplier => supplier), sheet.Where, $"a supplier's cut comes after one at the saw");
        }
    }
}
