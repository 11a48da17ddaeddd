using System.Collections.Immutable;
using System.Numerics;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>
/// What the work wears out, and what it bears of the tools. A sheet's saw cuts are borne by the panels cut from it, by
/// area, as its waste is; so are a cloth's cuts, and each mounted panel's trimming is its own.
/// </summary>
internal static class Wear
{
    private const decimal MillimetresPerMetre = 1000;
    private const decimal MillimetresPerFoot = 304.8m;

    // Shares of a cut are fractions of a step; as weights they count in 2^-40 of one.
    private const int WeightBits = 40;

    /// <summary>Puts consumables and tools down to the lines.</summary>
    /// <param name="goods">What the batch uses.</param>
    /// <param name="ledger">Where it is put down.</param>
    /// <returns>What was used of each.</returns>
    public static (ImmutableArray<ConsumableUse> Consumables, ImmutableArray<ToolUse> Tools) Share(Goods goods, CostLedger ledger)
    {
        var consumables = goods.Order.Consumables.Select(one => Used(one, goods)).ToImmutableArray();
        foreach (var use in consumables)
        {
            ledger.Share(CostPart.Consumables, use.Cost, Weights(use.Consumable.Per, goods));
        }

        int made = goods.Panels.Sum(panel => panel.Made);
        var tools = goods.Order.Tools.Select(tool => Borne(tool, made)).ToImmutableArray();
        foreach (var use in tools)
        {
            ledger.Share(CostPart.Tools, use.Cost, Weights(WornBy.Panel, goods));
        }

        return (consumables, tools);
    }

    private static ConsumableUse Used(Consumable one, Goods goods)
    {
        decimal amount = one.Per switch
        {
            WornBy.SawMetre => SawCut(goods).Millimetres / MillimetresPerMetre,
            WornBy.SawFoot => SawCut(goods).Millimetres / MillimetresPerFoot,
            WornBy.ClothMetre => ClothCut(goods).Millimetres / MillimetresPerMetre,
            WornBy.ClothFoot => ClothCut(goods).Millimetres / MillimetresPerFoot,
            _ => goods.Panels.Sum(panel => panel.Made),
        };
        return new ConsumableUse(one, amount, Rounded(one.Price.Minor * amount / one.Lasts));
    }

    private static ToolUse Borne(Tool tool, int made)
    {
        int panels = Math.Min(made, tool.SpreadOver);
        return new ToolUse(tool, panels, Rounded((decimal)tool.Price.Minor * panels / tool.SpreadOver));
    }

    private static Length SawCut(Goods goods) => Sum(goods.Sheets.Select(sheet => sheet.CutLength * sheet.Copies));

    private static Length ClothCut(Goods goods) =>
        Sum(goods.Cloth.Select(cloth => cloth.CutLength * cloth.Copies)) + Sum(goods.Panels.Select(TrimOf));

    private static Length TrimOf(PanelResult panel) => panel.Line.MountsNow
        ? (panel.CutWidth + panel.CutHeight) * 2 * panel.Made
        : Length.Zero;

    private static ImmutableArray<(string Mark, BigInteger Weight)> Weights(WornBy per, Goods goods)
    {
        Func<PanelResult, BigInteger> weight = per switch
        {
            WornBy.SawMetre or WornBy.SawFoot => panel => OfCuts(panel, goods.Sheets.Select(sheet => (sheet.CutLength * sheet.Copies, sheet.Pieces))),
            WornBy.ClothMetre or WornBy.ClothFoot => panel => OfCuts(panel, goods.Cloth.Select(cloth => (cloth.CutLength * cloth.Copies, cloth.Pieces)))
                + ((BigInteger)TrimOf(panel).Steps << WeightBits),
            _ => panel => panel.Made,
        };
        return [.. goods.Panels.Select(panel => (panel.Line.Mark, weight(panel)))];
    }

    private static BigInteger OfCuts(PanelResult panel, IEnumerable<(Length Cut, ImmutableArray<PlacedPanel> Pieces)> layouts) =>
        layouts.Aggregate(BigInteger.Zero, (sum, layout) =>
        {
            var own = AreaOf(layout.Pieces.Where(piece => piece.Mark == panel.Line.Mark));
            return own.IsZero ? sum : sum + (((BigInteger)layout.Cut.Steps << WeightBits) * own / AreaOf(layout.Pieces));
        });

    private static BigInteger AreaOf(IEnumerable<PlacedPanel> pieces) =>
        pieces.Aggregate(BigInteger.Zero, (sum, piece) => sum + (BigInteger)(piece.Width * piece.Height).SquareSteps);

    private static Length Sum(IEnumerable<Length> lengths) => lengths.Aggregate(Length.Zero, (sum, length) => sum + length);

    private static Money Rounded(decimal minor) => new((long)Math.Round(minor, MidpointRounding.AwayFromZero));
}
