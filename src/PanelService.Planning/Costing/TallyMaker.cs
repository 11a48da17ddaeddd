using System.Collections.Immutable;
using System.Numerics;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>
/// The tally: what every line truly costs, to the minor unit, and what is kept for later. Every amount is parted by
/// largest remainder, so that nothing is lost or made by rounding.
/// </summary>
internal static class TallyMaker
{
    /// <summary>Adds up a batch.</summary>
    /// <param name="goods">What it uses.</param>
    /// <param name="buy">Its shopping list.</param>
    public static Tally Make(Goods goods, ImmutableArray<Purchase> buy)
    {
        var ledger = new CostLedger();
        ShareMaterials(goods, ledger);
        ShareReady(goods, ledger);
        ShareDeliveries(goods, ledger);
        ShareWork(goods, ledger);
        var (consumables, tools) = Wear.Share(goods, ledger);
        var lines = goods.Panels.Select(panel => Line(panel, goods, ledger)).ToImmutableArray();
        var (saved, share) = Savings(lines);
        return new Tally
        {
            Cash = Sum(buy.Select(purchase => purchase.Cost)),
            OnHandUsed = OnHandUsed(goods),
            Used = ledger.Used,
            BackOnRack = ledger.BackOnRack,
            Lines = lines,
            SavedTotal = saved,
            SavedShare = share,
            Waste = WasteCounter.Count(goods),
            Consumables = consumables,
            Tools = tools,
        };
    }

    private static void ShareMaterials(Goods goods, CostLedger ledger)
    {
        foreach (var sheet in goods.Sheets)
        {
            ledger.ShareMaterial(CostPart.Board, sheet.CostEach * sheet.Copies, MaterialShares.Of(sheet));
        }

        foreach (var cloth in goods.Cloth)
        {
            ledger.ShareMaterial(CostPart.Cloth, cloth.CostEach * cloth.Copies, MaterialShares.Of(cloth));
        }

        foreach (var strip in goods.Strips)
        {
            ledger.ShareMaterial(CostPart.Strips, strip.CostEach * strip.Copies, MaterialShares.Of(strip));
        }

        foreach (var liquid in goods.Liquids)
        {
            LiquidShares.Share(liquid, ledger);
        }
    }

    private static void ShareReady(Goods goods, CostLedger ledger)
    {
        foreach (var panel in goods.Panels.Where(panel => panel.Bought > 0))
        {
            ledger.Add(panel.Line.Mark, CostPart.Ready, (panel.Line.ShopPrice ?? Money.Zero) * panel.Bought);
        }
    }

    // What is bought beyond what is cut goes back on the rack whole.
    private static void ShareDeliveries(Goods goods, CostLedger ledger)
    {
        ledger.Keep(Sum(goods.Surplus.Select(surplus => surplus.Cost)));
        ledger.Share(CostPart.Delivery, Sum(goods.Deliveries.Select(delivery => delivery.Charge)), ByArea(goods));
    }

    private static ImmutableArray<(string Mark, BigInteger Weight)> ByArea(Goods goods) =>
        [.. goods.Panels.Select(panel => (panel.Line.Mark, (BigInteger)(panel.Line.Area * (panel.Made + panel.Bought)).SquareSteps))];

    private static void ShareWork(Goods goods, CostLedger ledger)
    {
        ledger.Share(CostPart.Labour, Labour.Of(goods), Labour.Shares(goods));
        ledger.Share(
            CostPart.Overheads,
            Sum(goods.Order.Overheads.Select(overhead => overhead.Cost)),
            ByArea(goods));
    }

    private static LineCost Line(PanelResult panel, Goods goods, CostLedger ledger)
    {
        string mark = panel.Line.Mark;
        return new LineCost
        {
            Mark = mark,
            Quantity = panel.Line.Quantity,
            Board = ledger[mark, CostPart.Board],
            Cloth = ledger[mark, CostPart.Cloth],
            Adhesive = ledger[mark, CostPart.Adhesive],
            Primer = ledger[mark, CostPart.Primer],
            Strips = ledger[mark, CostPart.Strips],
            Ready = ledger[mark, CostPart.Ready],
            Delivery = ledger[mark, CostPart.Delivery],
            Labour = ledger[mark, CostPart.Labour],
            Overheads = ledger[mark, CostPart.Overheads],
            Consumables = ledger[mark, CostPart.Consumables],
            Tools = ledger[mark, CostPart.Tools],
            ByArea = AreaCosts.Of(panel, goods),
            ShopPrice = panel.Line.ShopPrice,
        };
    }

    private static (Money? Saved, decimal? Share) Savings(ImmutableArray<LineCost> lines)
    {
        var priced = lines.Where(line => line.ShopPrice is not null).ToList();
        if (priced.Count == 0)
        {
            return (null, null);
        }

        var shop = Sum(priced.Select(line => line.ShopPrice!.Value * line.Quantity));
        var saved = shop - Sum(priced.Select(line => line.Total));
        return (saved, shop > Money.Zero ? (decimal)saved.Minor / shop.Minor : null);
    }

    private static Money OnHandUsed(Goods goods) =>
        Sum(goods.Sheets.Where(sheet => sheet.Source == Source.OnHand).Select(sheet => sheet.CostEach * sheet.Copies))
        + Sum(goods.Cloth.Where(cloth => cloth.Source == Source.OnHand).Select(cloth => cloth.CostEach * cloth.Copies))
        + Sum(goods.Strips.Where(strip => strip.Source == Source.OnHand).Select(strip => strip.CostEach * strip.Copies))
        + Sum(goods.Liquids.Select(liquid => liquid.OnHandCost));

    private static Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate(Money.Zero, (sum, amount) => sum + amount);
}
