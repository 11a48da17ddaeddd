using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// Rule 5: what is spent is what the goods cost; the bound is not above it, nor above a plain plan made here; and
/// "proven" means that both are equal.
/// </summary>
internal static class ProofRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Proof);
        long boards = Goods.Boards(order, plan, onHand: null) + Goods.Beyond(plan, "sheet");
        long cloth = Goods.Cloth(order, plan, onHand: null) + Goods.Beyond(plan, "step", "roll");
        CheckOne("boardProof", plan.BoardProof, findings);
        CheckOne("clothProof", plan.ClothProof, findings);
        CheckOne("proof", plan.Proof, findings);
        findings.Expect(plan.BoardProof.Spent == boards, "boardProof", $"spent {plan.BoardProof.Spent}, but the boards cost {boards}");
        findings.Expect(plan.ClothProof.Spent == cloth, "clothProof", $"spent {plan.ClothProof.Spent}, but the cloth costs {cloth}");
        if (plan.StripProof is { } strips)
        {
            CheckOne("stripProof", strips, findings);
            long spent = Goods.Strips(order, plan, onHand: null) + Goods.Beyond(plan, "strip");
            findings.Expect(strips.Spent == spent, "stripProof", $"spent {strips.Spent}, but the strips cost {spent}");
        }

        findings.Expect(
            plan.Proof.LeastPossible <= plan.Proof.Spent, "proof", $"at least {plan.Proof.LeastPossible} of {plan.Proof.Spent}");
        CheckWhole(order, plan, findings);
        CheckPlain(order, plan, findings);
        return findings.All;
    }

    private static void CheckOne(string where, ProofFacts proof, Findings findings)
    {
        findings.Expect(proof.LeastPossible <= proof.Spent, where, $"at least {proof.LeastPossible}, yet {proof.Spent} is spent");
        findings.Expect(proof.LeastPossible >= 0, where, $"a bound below zero");
        findings.Expect(proof.Proven == (proof.Spent == proof.LeastPossible), where, $"proven is {proof.Proven} at {proof.Spent} and {proof.LeastPossible}");
    }

    private static void CheckWhole(OrderFacts order, PlanFacts plan, Findings findings)
    {
        var (least, most) = Goods.OnHandUsed(order, plan);
        long spent = plan.Proof.Spent;
        findings.Expect(
            spent >= plan.Cost.Cash + least && spent <= plan.Cost.Cash + most, "proof", $"spent {spent} is not cash {plan.Cost.Cash} and on-hand goods used {least}");
    }

    private static void CheckPlain(OrderFacts order, PlanFacts plan, Findings findings)
    {
        if (PlainPlan.Cost(order, plan) is { } plain)
        {
            findings.Expect(
                plan.BoardProof.LeastPossible <= plain, "boardProof", $"no plan is said to cost less than {plan.BoardProof.LeastPossible}, but a plain one costs {plain}");
        }
    }
}
