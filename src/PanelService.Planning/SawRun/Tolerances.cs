using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.SawRun;

/// <summary>
/// Worst sizes by chain of cuts: a part at the fence is off by one setting's error, what is left over by one more than
/// its workpiece. All cuts run along or square to the sheet's edges, so a panel leans no more than the sheet does.
/// </summary>
internal static class Tolerances
{
    /// <summary>Of every line and wish that is cut.</summary>
    /// <param name="order">The order.</param>
    /// <param name="panels">What gave every panel its sizes.</param>
    public static ImmutableArray<PanelTolerance> Of(Order order, IEnumerable<SizedPanel> panels)
    {
        var setting = order.Units == LengthUnit.Inch ? SawPractice.FenceErrorInch : SawPractice.FenceErrorMetric;
        var nominal = order.Panels.Select(line => (line.Mark, line.Width, line.Height))
            .Concat(order.Wishes.Select(wish => (wish.Mark, wish.Width, wish.Height)))
            .ToDictionary(line => line.Mark, line => (line.Width, line.Height), StringComparer.Ordinal);
        return
        [
            .. panels.GroupBy(panel => panel.Mark, StringComparer.Ordinal)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => Of(group.Key, [.. group], nominal[group.Key], setting)),
        ];
    }

    private static PanelTolerance Of(
        string mark, ImmutableArray<SizedPanel> panels, (Length Width, Length Height) nominal, Length setting)
    {
        var (width, widthError) = Worst(panels, PanelSide.Width, setting);
        var (height, heightError) = Worst(panels, PanelSide.Height, setting);
        return new PanelTolerance(
            mark,
            widthError,
            heightError,
            Length.Nearest(Length.Max(width, height).Steps * SawPractice.OutOfSquareShare),
            width + widthError <= nominal.Width && height + heightError <= nominal.Height,
            nominal.Width - width + widthError <= SawPractice.FrameLip && nominal.Height - height + heightError <= SawPractice.FrameLip);
    }

    private static (Length Size, Length Error) Worst(ImmutableArray<SizedPanel> panels, PanelSide side, Length setting)
    {
        var sides = panels.Where(panel => panel.Side == side).ToList();
        return (sides[0].Size, setting * sides.Max(panel => panel.By.Errors));
    }
}
