using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Rule 4: goods exist, serve what they are used for, and are not used beyond what there is or is for sale.</summary>
internal static class SupplyRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Supply);
        foreach (var sheet in plan.Sheets)
        {
            CheckSheet(order, plan, sheet, findings);
        }

        foreach (var board in order.Boards.Values)
        {
            CheckBoard(board, plan, findings);
        }

        foreach (var panel in plan.Panels)
        {
            CheckThicknesses(order, plan, panel, findings);
        }

        CheckBuy(order, plan, findings);
        return findings.All.Concat(ClothSupply.Check(order, plan)).Concat(LiquidSupply.Check(order, plan)).Concat(StripSupply.Check(order, plan));
    }

    private static void CheckSheet(OrderFacts order, PlanFacts plan, SheetFacts sheet, Findings findings)
    {
        findings.Expect(sheet.Copies >= 1, sheet.Where, $"{sheet.Copies} copies");
        if (!order.Boards.TryGetValue(sheet.Board, out var board))
        {
            findings.Expect(false, sheet.Where, $"board {sheet.Board} is not in the order");
            return;
        }

        findings.Expect(
            sheet.Box.Width == board.Width && sheet.Box.Height == board.Height, sheet.Where, $"does not measure as its board does");
        foreach (string mark in sheet.Pieces.Select(piece => piece.Mark).Distinct())
        {
            findings.Expect(
                order.Line(mark) is not { } line || board.Serves(line), sheet.Where, $"board {board.Id} may not serve {mark} (kind or thickness)");
        }
    }

    private static void CheckBoard(BoardFacts board, PlanFacts plan, Findings findings)
    {
        long onHand = plan.Sheets.Where(sheet => sheet.Board == board.Id && sheet.OnHand).Sum(sheet => sheet.Copies);
        long bought = plan.Sheets.Where(sheet => sheet.Board == board.Id && !sheet.OnHand).Sum(sheet => sheet.Copies);
        findings.Expect(onHand <= board.OnHand, $"board {board.Id}", $"{onHand} used of {board.OnHand} on hand");
        long listed = plan.Listed(board.Id, "sheet");
        findings.Expect(listed <= (board.ForSale ?? long.MaxValue), $"board {board.Id}", $"{listed} bought of {board.ForSale} for sale");
        findings.Expect(listed == bought + plan.Beyond(board.Id, "sheet"), $"board {board.Id}", $"{listed} on the shopping list for {bought} bought");
    }

    private static void CheckThicknesses(OrderFacts order, PlanFacts plan, PanelFacts panel, Findings findings)
    {
        long near = Units.Millimetres(0.5m);
        long[] used = [.. plan.Sheets
            .Where(sheet => sheet.Pieces.Any(piece => piece.Mark == panel.Mark) && order.Boards.ContainsKey(sheet.Board))
            .Select(sheet => order.Boards[sheet.Board].Thickness).Distinct()];
        findings.Expect(
            used.All(one => panel.Thicknesses.Any(told => Math.Abs(told - one) <= near))
            && panel.Thicknesses.All(told => used.Any(one => Math.Abs(told - one) <= near)),
            $"line {panel.Mark}",
            $"its thicknesses are not those of its boards");
    }

    private static void CheckBuy(OrderFacts order, PlanFacts plan, Findings findings)
    {
        foreach (var buy in plan.Buy)
        {
            string where = $"shopping list, {buy.Id}";
            findings.Expect(buy.Quantity >= 1, where, $"quantity {buy.Quantity}");
            long?[] prices = buy.SaleUnit switch
            {
                "sheet" => [order.Boards.GetValueOrDefault(buy.Id)?.Prices.At(buy.Quantity)],
                "step" or "roll" => [order.Cloths.GetValueOrDefault(buy.Id)?.Sale?.Prices.At(buy.Quantity)],
                "strip" => [order.Strips.GetValueOrDefault(buy.Id)?.Prices.At(buy.Quantity)],
                "panel" => [order.Line(buy.Id)?.ShopPrice],
                "delivery" => [.. order.Shops.Where(shop => shop.Id == buy.Id).Select(shop => (long?)shop.Charge)],
                "container" => [.. order.Adhesives.Values.Concat(order.Primers.Values)
                    .Where(liquid => liquid.Id == buy.Id).SelectMany(liquid => liquid.Containers).Select(one => (long?)one.Prices.At(buy.Quantity))],
                _ => [buy.UnitPrice],
            };
            findings.Expect(prices.Contains(buy.UnitPrice), where, $"unit price {buy.UnitPrice} is not the order's");
        }

        foreach (var panel in plan.Panels)
        {
            long listed = plan.Buy.Where(buy => buy.SaleUnit == "panel" && buy.Id == panel.Mark).Sum(buy => buy.Quantity);
            findings.Expect(listed == panel.Bought, $"line {panel.Mark}", $"{listed} ready-made on the shopping list for {panel.Bought} bought");
        }
    }
}
