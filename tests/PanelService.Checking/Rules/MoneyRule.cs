using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 8: the sums, exact to the minor unit where they are exact, within their rounding where they are rounded.</summary>
internal static class MoneyRule
{
    private static readonly string[] NotGoods = ["labour", "overheads", "consumables", "tools"];

    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Money);
        foreach (var buy in plan.Buy)
        {
            findings.Expect(buy.Cost == buy.UnitPrice * buy.Quantity, $"shopping list, {buy.Id}", $"{buy.Quantity} at {buy.UnitPrice} is not {buy.Cost}");
        }

        CheckIdentities(order, plan, findings);
        CheckWholes(order, plan, findings);
        foreach (var line in plan.Cost.Panels)
        {
            CheckLine(order, plan, line, findings);
        }

        CheckSaved(plan.Cost, findings);
        return findings.All.Concat(SharesRule.Check(order, plan)).Concat(WearRule.Check(order, plan)).Concat(ShopRule.Check(order, plan)).Concat(LabourRule.Check(order, plan)).Concat(BudgetRule.Check(order, plan));
    }

    private static long Sum(PlanFacts plan, params string[] parts) =>
        plan.Cost.Panels.Sum(line => parts.Sum(part => line.Parts[part]));

    private static void CheckIdentities(OrderFacts order, PlanFacts plan, Findings findings)
    {
        var cost = plan.Cost;
        findings.Expect(cost.Cash == plan.Buy.Sum(buy => buy.Cost), "cost", $"cash {cost.Cash} is not the sum of the shopping list");
        findings.Expect(cost.Used == cost.Panels.Sum(line => line.Total), "cost", $"used {cost.Used} is not the sum of the lines");
        var (least, most) = Goods.OnHandUsed(order, plan);
        long right = cost.Used - Sum(plan, NotGoods) + cost.BackOnRack;
        findings.Expect(
            right >= cost.Cash + least && right <= cost.Cash + most, "cost", $"cash {cost.Cash} + on-hand goods used {least} is not used goods + back on rack {right}");
    }

    private static void CheckWholes(OrderFacts order, PlanFacts plan, Findings findings)
    {
        findings.Expect(Sum(plan, "overheads") == order.Overheads, "cost", $"overheads {Sum(plan, "overheads")} instead of {order.Overheads}");
        findings.Expect(order.LabourPerHour > 0 || Sum(plan, "labour") == 0, "cost", $"labour counts where none is paid");
        foreach (var line in plan.Cost.Panels)
        {
            long ready = (plan.Panel(line.Mark)?.Bought ?? 0) * (order.Line(line.Mark)?.ShopPrice ?? 0);
            findings.Expect(line.Parts["ready"] == ready, line.Where, $"ready-made {line.Parts["ready"]} instead of {ready}");
        }
    }

    private static void CheckLine(OrderFacts order, PlanFacts plan, LineCostFacts line, Findings findings)
    {
        findings.Expect(line.Parts.Values.Sum() == line.Total, line.Where, $"its parts are not its total {line.Total}");
        findings.Expect(line.Parts.Values.All(part => part >= 0), line.Where, $"a part below zero");
        findings.Expect(
            line.Quantity > 0 && Math.Abs(line.Each - ((decimal)line.Total / line.Quantity)) <= 0.5m, line.Where, $"each {line.Each} is not {line.Total} / {line.Quantity}");
        long? shop = order.Line(line.Mark)?.ShopPrice;
        findings.Expect(line.ShopPrice == shop, line.Where, $"shop price {line.ShopPrice} instead of {shop}");
        findings.Expect((line.SavedEach is null) == (shop is null), line.Where, $"a saving needs a shop price, and a shop price gives one");
        if (shop is { } price && line.SavedEach is { } saved)
        {
            findings.Expect(Math.Abs(saved - (price - line.Each)) <= 1m, line.Where, $"saved {saved} is not {price} less {line.Each}");
            findings.Expect(
                price == 0 || (line.SavedShare is { } share && Math.Abs(share - (saved / price)) <= 0.006m), line.Where, $"saved share {line.SavedShare} is not {saved} / {price}");
        }

        CheckByArea(order, plan, line, findings);
    }

    // The pencil's figure is checked where it can only mean one thing: one bought board for the whole line.
    private static void CheckByArea(OrderFacts order, PlanFacts plan, LineCostFacts line, Findings findings)
    {
        decimal parts = line.ByArea.Where(part => part.Key != "each").Sum(part => part.Value);
        findings.Expect(
            Math.Abs(parts - line.ByArea.GetValueOrDefault("each")) <= 2.5m, line.Where, $"by area: the parts {parts} are not the whole");
        var sheets = plan.Sheets.Where(sheet => sheet.Pieces.Any(piece => piece.Mark == line.Mark)).ToArray();
        if (order.Line(line.Mark) is { } asked && plan.Panel(line.Mark) is { Bought: 0 }
            && sheets.Length > 0 && sheets.All(sheet => !sheet.OnHand) && sheets.Select(sheet => sheet.Board).Distinct().Count() == 1)
        {
            decimal board = Goods.Each(order, plan, sheets[0]) * (decimal)asked.Area / (decimal)sheets[0].Box.Area;
            findings.Expect(
                Math.Abs(board - line.ByArea.GetValueOrDefault("board")) <= 1m, line.Where, $"by area: board {line.ByArea.GetValueOrDefault("board")} instead of {board}");
        }
    }

    private static void CheckSaved(CostFacts cost, Findings findings)
    {
        var compared = cost.Panels.Where(line => line.ShopPrice is not null).ToArray();
        if (compared.Length == 0)
        {
            findings.Expect(cost.SavedTotal is null or 0, "cost", $"savings without a shop price");
            return;
        }

        decimal shop = compared.Sum(line => (decimal)line.ShopPrice!.Value * line.Quantity);
        decimal saved = shop - compared.Sum(line => (decimal)line.Total);
        findings.Expect(
            cost.SavedTotal is { } total && Math.Abs(total - saved) <= 0.5m + compared.Sum(line => 0.5m * line.Quantity), "cost", $"saved {cost.SavedTotal} instead of {saved}");
        findings.Expect(
            shop == 0 || (cost.SavedShare is { } share && Math.Abs(share - (saved / shop)) <= 0.006m), "cost", $"saved share {cost.SavedShare} is not {saved} / {shop}");
    }
}
