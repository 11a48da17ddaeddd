using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 2: the pieces of a mark number what is made; made and bought are what was ordered.</summary>
internal static class DemandRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Demand);
        CheckLines(order, plan, findings);
        foreach (var panel in plan.Panels)
        {
            if (order.Line(panel.Mark) is { } line)
            {
                CheckPanel(line, panel, findings);
                CheckPieces(line, panel, plan, findings);
            }
        }

        foreach (var mark in AllPieces(plan).Select(piece => piece.Mark).Distinct().Where(mark => plan.Panel(mark) is null))
        {
            findings.Expect(false, $"mark {mark}", $"pieces of a mark that is no line of the plan");
        }

        return findings.All;
    }

    private static void CheckLines(OrderFacts order, PlanFacts plan, Findings findings)
    {
        string[] lines = [.. order.Lines.Where(line => !line.IsWish).Select(line => line.Mark)];
        string[] wishes = [.. order.Lines.Where(line => line.IsWish).Select(line => line.Mark)];
        string[] told = [.. plan.Panels.Select(panel => panel.Mark)];
        findings.Expect(told.Distinct().Count() == told.Length, "panels", $"a mark stands twice");
        findings.Expect(told.Take(lines.Length).SequenceEqual(lines), "panels", $"are not the order's lines in their order");
        findings.Expect(
            told.Skip(lines.Length).All(wishes.Contains), "panels", $"hold a mark that is neither line nor wish");
        findings.Expect(
            plan.Panels.Skip(lines.Length).All(wish => wish.Made > 0), "panels", $"hold a wish that is not made");
        findings.Expect(plan.Cost.Panels.Select(line => line.Mark).SequenceEqual(told), "cost", $"its lines are not those of the plan");
        findings.Expect(
            plan.Cost.Panels.Select(line => line.Quantity).SequenceEqual(plan.Panels.Select(panel => panel.Quantity)), "cost", $"its quantities are not those of the plan");
    }

    private static void CheckPanel(LineFacts line, PanelFacts panel, Findings findings)
    {
        string where = $"line {panel.Mark}";
        findings.Expect(panel.Surface == line.Surface, where, $"surface {panel.Surface} instead of {line.Surface}");
        findings.Expect(panel.Bought == 0 || line.MayBuy, where, $"{panel.Bought} bought, which the order does not allow");
        if (line.IsWish)
        {
            findings.Expect(panel.Made <= line.Wanted, where, $"{panel.Made} made of a wish for at most {line.Wanted}");
            findings.Expect(panel.Quantity == panel.Made && panel.Spares == 0, where, $"a wish's quantity is what is made");
            return;
        }

        findings.Expect(panel.Quantity == line.Quantity, where, $"quantity {panel.Quantity} instead of {line.Quantity}");
        findings.Expect(panel.Spares == line.Wanted - line.Quantity, where, $"spares {panel.Spares} instead of {line.Wanted - line.Quantity}");
        findings.Expect(panel.Made >= 0 && panel.Bought >= 0, where, $"a count below zero");
        findings.Expect(panel.Made + panel.Bought == line.Wanted, where, $"made {panel.Made} + bought {panel.Bought} is not {line.Wanted}");
    }

    private static void CheckPieces(LineFacts line, PanelFacts panel, PlanFacts plan, Findings findings)
    {
        string where = $"line {panel.Mark}";
        long onSheets = plan.Sheets.Sum(sheet => sheet.Copies * sheet.Pieces.Count(piece => piece.Mark == panel.Mark));
        long onCloth = plan.Cloth.Sum(cloth => cloth.Copies * cloth.Pieces.Count(piece => piece.Mark == panel.Mark));
        findings.Expect(onSheets == (line.NeedsBoard ? panel.Made : 0), where, $"{onSheets} pieces of board for {panel.Made} made");
        findings.Expect(onCloth == (line.NeedsCloth ? panel.Made : 0), where, $"{onCloth} pieces of cloth for {panel.Made} made");
    }

    private static IEnumerable<PieceFacts> AllPieces(PlanFacts plan) =>
        plan.Sheets.SelectMany(sheet => sheet.Pieces).Concat(plan.Cloth.SelectMany(cloth => cloth.Pieces));
}
