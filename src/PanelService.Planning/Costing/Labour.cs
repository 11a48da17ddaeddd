using System.Collections.Immutable;
using System.Numerics;
using PanelService.Planning.Days;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Costing;

/// <summary>
/// What the work counts as: hands-on minutes of common practice at the price of an hour, shared by time.
/// </summary>
internal static class Labour
{
    /// <summary>What all the work counts as, to the nearest minor unit.</summary>
    public static Money Of(Goods goods)
    {
        decimal minutes = MinutesByLine(goods).Sum(line => (decimal)line.Minutes);
        return new Money((long)Math.Round(goods.Order.LabourPerHour.Minor * minutes / 60, MidpointRounding.AwayFromZero));
    }

    /// <summary>The hands-on minutes of each line that is made.</summary>
    public static ImmutableArray<(string Mark, BigInteger Minutes)> MinutesByLine(Goods goods) =>
        [.. goods.Panels.Where(panel => panel.Made > 0).Select(panel => (panel.Line.Mark, Minutes(panel, goods)))];

    private static BigInteger Minutes(PanelResult panel, Goods goods)
    {
        var line = panel.Line;
        int each = (line.NeedsBoard ? WorkMinutes.Board : 0)
            + (line.NeedsCloth ? WorkMinutes.Cloth : 0)
            + (line.MountsNow ? WorkMinutes.Mount : 0)
            + (BenchMinutes.Seals(line, goods.Liquids) ? WorkMinutes.Seal : 0)
            + (line.Cradle ? WorkMinutes.Brace : 0)
            + (Coats(line, goods) * WorkMinutes.Coat);
        return (BigInteger)each * panel.Made;
    }

    private static int Coats(PanelLine line, Goods goods) => goods.Liquids
        .Where(use => !use.IsAdhesive && use.Shares.Any(share => share.Mark == line.Mark))
        .Sum(use => use.Liquid.Coats * use.Liquid.Faces);
}
