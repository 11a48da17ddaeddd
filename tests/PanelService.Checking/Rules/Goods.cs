using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>What the goods of a plan cost by the order's own prices, in minor units.</summary>
internal static class Goods
{
    /// <summary>What one copy of a sheet costs.</summary>
    public static long Each(OrderFacts order, PlanFacts plan, SheetFacts sheet) => order.Boards.TryGetValue(sheet.Board, out var board)
        ? sheet.OnHand ? board.Value : board.Prices.At(plan.Listed(board.Id, "sheet"))
        : 0;

    /// <summary>What one copy of a cloth costs.</summary>
    public static long Each(OrderFacts order, PlanFacts plan, ClothLayoutFacts layout)
    {
        if (!order.Cloths.TryGetValue(layout.Cloth, out var cloth))
        {
            return 0;
        }

        if (layout.Remnant is { } id)
        {
            return cloth.Remnants.GetValueOrDefault(id)?.Value ?? 0;
        }

        return cloth.Sale is { } sale
            ? sale.Prices.At(plan.Listed(cloth.Id, sale.Unit)) * (sale.ByRoll ? 1 : layout.Box.Height / sale.Length)
            : 0;
    }

    /// <summary>All boards, or only those on hand, or only those bought.</summary>
    public static long Boards(OrderFacts order, PlanFacts plan, bool? onHand) => plan.Sheets
        .Where(sheet => onHand is null || sheet.OnHand == onHand).Sum(sheet => sheet.Copies * Each(order, plan, sheet));

    /// <summary>All cloth, or only that on hand, or only that bought.</summary>
    public static long Cloth(OrderFacts order, PlanFacts plan, bool? onHand) => plan.Cloth
        .Where(layout => onHand is null || layout.OnHand == onHand).Sum(layout => layout.Copies * Each(order, plan, layout));

    /// <summary>What is bought of some goods beyond what is cut.</summary>
    public static long Beyond(PlanFacts plan, params string[] units) =>
        plan.Surplus.Where(one => units.Contains(one.SaleUnit)).Sum(one => one.Cost);

    /// <summary>What one copy of a strip costs.</summary>
    public static long Each(OrderFacts order, PlanFacts plan, StripFacts strip) => order.Strips.TryGetValue(strip.Strip, out var good)
        ? strip.OnHand ? good.Value : good.Prices.At(plan.Listed(good.Id, "strip"))
        : 0;

    /// <summary>All strips, or only those on hand, or only those bought.</summary>
    public static long Strips(OrderFacts order, PlanFacts plan, bool? onHand) => plan.Strips
        .Where(strip => onHand is null || strip.OnHand == onHand).Sum(strip => strip.Copies * Each(order, plan, strip));

    /// <summary>Value of the on-hand goods used, least and most: a liquid's share may be rounded either way.</summary>
    public static (long Least, long Most) OnHandUsed(OrderFacts order, PlanFacts plan)
    {
        long whole = Boards(order, plan, onHand: true) + Cloth(order, plan, onHand: true) + Strips(order, plan, onHand: true);
        decimal[] shares = [.. plan.Liquids.Select(use => FromHand(order, use)).Where(share => share > 0)];
        return (whole + shares.Sum(share => (long)Math.Floor(share)), whole + shares.Sum(share => (long)Math.Ceiling(share)));
    }

    /// <summary>What a liquid used from hand counts as, unrounded.</summary>
    public static decimal FromHand(OrderFacts order, LiquidUseFacts use)
    {
        var liquid = order.Adhesives.GetValueOrDefault(use.Id) ?? order.Primers.GetValueOrDefault(use.Id);
        return liquid is { OnHand: > 0 } ? liquid.Value * Math.Round(use.FromHand / liquid.OnHand, 6) : 0;
    }
}
