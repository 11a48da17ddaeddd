using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// Rule 8, who bears what: a kept leftover its area's share of what its sheet cost, the panels of a sheet the rest by
/// area; liquids on hand at their value, the bought pool at its average price. Each within one minor unit per layout
/// or liquid, which is what rounding can move.
/// </summary>
internal static class SharesRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Money);
        Layout[] boards = [.. plan.Sheets.Select(sheet => new Layout(sheet.Copies, Goods.Each(order, plan, sheet), sheet.Box, sheet.Pieces, sheet.Offcuts))];
        Layout[] cloths = [.. plan.Cloth.Select(cloth => new Layout(cloth.Copies, Goods.Each(order, plan, cloth), cloth.Box, cloth.Pieces, cloth.Offcuts))];
        Layout[] strips = [.. plan.Strips.Select(strip => AsLayout(order, plan, strip))];
        decimal back = boards.Concat(cloths).Concat(strips).Sum(layout => layout.Kept) + plan.Liquids.Sum(LeftOfPool)
            + plan.Surplus.Sum(one => one.Cost);
        decimal rounding = boards.Length + cloths.Length + strips.Length + plan.Liquids.Count + 1;
        findings.Expect(
            Math.Abs(plan.Cost.BackOnRack - back) <= rounding, "cost", $"back on rack {plan.Cost.BackOnRack} instead of {back}");
        foreach (var line in plan.Cost.Panels)
        {
            CheckPart(line, "board", boards, findings);
            CheckPart(line, "cloth", cloths, findings);
            CheckPart(line, "strips", strips, findings);
        }

        CheckLiquids(order, plan, order.Adhesives, "adhesive", findings);
        CheckLiquids(order, plan, order.Primers, "primer", findings);
        return findings.All;
    }

    // A strip is as wide everywhere: a step wide will do.
    private static Layout AsLayout(OrderFacts order, PlanFacts plan, StripFacts strip) => new(
        strip.Copies,
        Goods.Each(order, plan, strip),
        new Box(0, 0, strip.Length, 1),
        [.. strip.Pieces.Select(piece => new PieceFacts(piece.Mark, new Box(piece.At, 0, piece.Length, 1), false))],
        [new OffcutFacts(new Box(strip.Length - strip.Rest, 0, strip.Rest, 1), strip.Kept)]);

    private static void CheckPart(LineCostFacts line, string part, Layout[] layouts, Findings findings)
    {
        decimal due = layouts.Sum(layout => layout.BorneBy(line.Mark));
        int rounded = layouts.Count(layout => layout.Pieces.Any(piece => piece.Mark == line.Mark));
        findings.Expect(Math.Abs(line.Parts[part] - due) <= rounded + 1, line.Where, $"{part} {line.Parts[part]} instead of {due}");
    }

    private static decimal LeftOfPool(LiquidUseFacts use)
    {
        decimal volume = use.Bought.Sum(one => one.Volume * one.Count);
        decimal price = use.Bought.Sum(one => one.Price * one.Count);
        return volume == 0 ? 0 : price * (volume - (use.Needed - use.FromHand)) / volume;
    }

    private static void CheckLiquids(
        OrderFacts order, PlanFacts plan, IReadOnlyDictionary<string, LiquidFacts> liquids, string part, Findings findings)
    {
        var uses = plan.Liquids.Where(use => liquids.ContainsKey(use.Id)).ToArray();
        decimal due = uses.Sum(use => Goods.FromHand(order, use) + use.Bought.Sum(one => one.Price * one.Count) - LeftOfPool(use));
        long told = plan.Cost.Panels.Sum(line => line.Parts[part]);
        findings.Expect(Math.Abs(told - due) <= uses.Length + 0.5m, "cost", $"{part} {told} instead of {due}");
    }

    private sealed record Layout(
        long Copies, long Each, Box Box, IReadOnlyList<PieceFacts> Pieces, IReadOnlyList<OffcutFacts> Offcuts)
    {
        public decimal Kept => Copies * Each * (decimal)Sum(Offcuts.Where(offcut => offcut.Kept).Select(offcut => offcut.Box)) / (decimal)Box.Area;

        public decimal BorneBy(string mark)
        {
            var all = Sum(Pieces.Select(piece => piece.Box));
            var own = Sum(Pieces.Where(piece => piece.Mark == mark).Select(piece => piece.Box));
            return all == 0 ? 0 : ((Copies * Each) - Kept) * (decimal)own / (decimal)all;
        }

        private static Int128 Sum(IEnumerable<Box> boxes) => boxes.Aggregate((Int128)0, (sum, box) => sum + box.Area);
    }
}
