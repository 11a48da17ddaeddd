using System.Collections.Immutable;
using System.Numerics;
using PanelService.Planning.Days;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Costing;

/// <summary>
/// What the work counts as: the hands-on minutes of the bench plan, as its schedule has them, at the price of an hour,
/// shared by time. The errand has none: who buys ready-made panels goes to the shop too.
/// </summary>
internal static class Labour
{
    // Minutes come in quarters; shares are parted by whole numbers.
    private const int PartsOfMinute = 100;

    /// <summary>What all the work counts as, to the nearest minor unit.</summary>
    public static Money Of(Goods goods)
    {
        decimal minutes = MinutesByLine(goods).Sum(line => line.Minutes);
        return new Money((long)Math.Round(goods.Order.LabourPerHour.Minor * minutes / 60, MidpointRounding.AwayFromZero));
    }

    /// <summary>The hands-on minutes of each line that is made.</summary>
    public static ImmutableArray<(string Mark, decimal Minutes)> MinutesByLine(Goods goods) =>
        [.. goods.Panels.Where(panel => panel.Made > 0).Select(panel => (panel.Line.Mark, Minutes(panel, goods)))];

    /// <summary>Each line's share, in proportion to its minutes.</summary>
    public static ImmutableArray<(string Mark, BigInteger Weight)> Shares(Goods goods) =>
        [.. MinutesByLine(goods).Select(line => (line.Mark, (BigInteger)(line.Minutes * PartsOfMinute)))];

    private static decimal Minutes(PanelResult panel, Goods goods) =>
        BenchMinutes.Steps(goods.Order, panel.Line, goods.Liquids).Sum(step => step.Minutes) * panel.Made;
}
