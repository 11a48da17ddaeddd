using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>
/// Rule 8 for the way goods are bought: every number at the cheapest way of buying at least so many, more than is cut only
/// where that is cheaper, and each shop's charge where something is bought there and comes to too little.
/// </summary>
internal static class ShopRule
{
    public static IEnumerable<Violation> Check(OrderFacts order, PlanFacts plan)
    {
        var findings = new Findings(Rule.Money);
        foreach (var (good, prices, from) in Goods(order))
        {
            CheckCount(plan, good, prices, from, findings);
        }

        foreach (var shop in order.Shops)
        {
            CheckShop(order, plan, shop, findings);
        }

        CheckShares(plan, findings);
        return findings.All;
    }

    private static IEnumerable<((string Id, string Unit) Good, PriceListFacts Prices, (long? Limit, string? Shop) From)> Goods(OrderFacts order) =>
        order.Boards.Values.Where(board => board.Prices.Levels.Count > 0).Select(board => ((board.Id, "sheet"), board.Prices, (board.ForSale, board.Shop)))
            .Concat(order.Cloths.Values.Where(cloth => cloth.Sale is not null)
                .Select(cloth => ((cloth.Id, cloth.Sale!.Unit), cloth.Sale.Prices, (cloth.Sale.Limit, cloth.Shop))))
            .Concat(order.Strips.Values.Where(strip => strip.Prices.Levels.Count > 0)
                .Select(strip => ((strip.Id, "strip"), strip.Prices, (strip.ForSale, strip.Shop))));

    private static void CheckCount(PlanFacts plan, (string Id, string Unit) good, PriceListFacts prices, (long? Limit, string? Shop) from, Findings findings)
    {
        var surplus = plan.Surplus.Where(one => (one.Id, one.SaleUnit) == good).ToArray();
        long listed = plan.Listed(good.Id, good.Unit);
        long cut = listed - surplus.Sum(one => one.Quantity);
        long beyond = Beyond(plan, good, prices, from.Limit);
        findings.Expect(beyond == 0 || (beyond > 0 && from.Shop is not null), good.Id, $"{listed} bought for {cut} cut: not the cheapest way");
        foreach (var one in surplus)
        {
            findings.Expect(one.Quantity >= 1, good.Id, $"{one.Quantity} bought beyond what is cut");
            findings.Expect(one.Cost == one.Quantity * prices.At(listed), good.Id, $"{one.Quantity} beyond what is cut at {one.Cost}");
            findings.Expect(
                one.Reason == "freeDelivery" ? beyond > 0 : one.Reason == "quantityPrice" && prices.Least(cut, from.Limit) < cut * prices.At(cut),
                good.Id,
                $"bought beyond what is cut without a reason");
        }
    }

    /// <summary>How much more is paid for a good than the cheapest way of buying what is cut costs: only a charge is a reason for it.</summary>
    private static long Beyond(PlanFacts plan, (string Id, string Unit) good, PriceListFacts prices, long? limit)
    {
        long listed = plan.Listed(good.Id, good.Unit);
        long cut = listed - plan.Surplus.Where(one => (one.Id, one.SaleUnit) == good).Sum(one => one.Quantity);
        return (listed * prices.At(listed)) - prices.Least(cut, limit);
    }

    private static void CheckShop(OrderFacts order, PlanFacts plan, ShopFacts shop, Findings findings)
    {
        string where = $"shop {shop.Id}";
        long goods = plan.Buy.Where(buy => IsFrom(order, shop, buy)).Sum(buy => buy.Cost);
        long due = goods == 0 || goods >= (shop.FreeFrom ?? long.MaxValue) ? 0 : shop.Charge;
        long listed = plan.Buy.Where(buy => buy.SaleUnit == "delivery" && buy.Id == shop.Id).Sum(buy => buy.Cost);
        findings.Expect(listed == due, where, $"{listed} on the shopping list for a charge of {due}");
        var told = plan.Deliveries.Where(one => one.Shop == shop.Id).ToArray();
        bool right = shop.Charge == 0 || goods == 0 ? told.Length == 0 : told.Length == 1 && told[0].Goods == goods && told[0].Charge == due;
        findings.Expect(right, where, $"its delivery is not one for goods of {goods} charged {due}");
        long onTop = Goods(order).Where(one => one.From.Shop == shop.Id).Sum(one => Beyond(plan, one.Good, one.Prices, one.From.Limit));
        findings.Expect(
            onTop == 0 || (onTop < shop.Charge && due == 0 && goods - onTop < shop.FreeFrom), where, $"{onTop} bought on top without saving the charge");
    }

    private static bool IsFrom(OrderFacts order, ShopFacts shop, BuyFacts buy) => ShopOf(order, buy.Id, buy.SaleUnit) == shop.Id;

    private static string? ShopOf(OrderFacts order, string id, string unit) => unit switch
    {
        "sheet" => order.Boards.GetValueOrDefault(id)?.Shop,
        "step" or "roll" => order.Cloths.GetValueOrDefault(id)?.Shop,
        "container" => (order.Adhesives.GetValueOrDefault(id) ?? order.Primers.GetValueOrDefault(id))?.Shop,
        "strip" => order.Strips.GetValueOrDefault(id)?.Shop,
        _ => null,
    };

    // What shops charge is shared by area, as overheads are.
    private static void CheckShares(PlanFacts plan, Findings findings)
    {
        long charged = plan.Deliveries.Sum(one => one.Charge);
        decimal all = plan.Panels.Sum(Area);
        foreach (var line in plan.Cost.Panels)
        {
            decimal due = plan.Panel(line.Mark) is { } panel && all > 0 ? charged * Area(panel) / all : 0;
            findings.Expect(Math.Abs(line.Parts["delivery"] - due) <= 1m, line.Where, $"delivery {line.Parts["delivery"]} instead of {due}");
        }

        findings.Expect(plan.Cost.Panels.Sum(line => line.Parts["delivery"]) == charged, "cost", $"the lines do not bear the charges of {charged}");
    }

    private static decimal Area(PanelFacts panel) => (decimal)panel.Width * panel.Height * (panel.Made + panel.Bought);
}
