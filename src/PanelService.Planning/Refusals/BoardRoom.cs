using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Refusals;

/// <summary>Whether a line's panel can be cut from any board of an order, alone on it, within what saw, person and car can handle.</summary>
internal static class BoardRoom
{
    /// <summary>Whether some board serves.</summary>
    public static bool HasAny(PanelLine line, Order order)
    {
        var size = CutSizes.Smallest(line, order.Saw.Undersize);
        return BoardStock.AllOf(order).Any(stock =>
            Holds(stock, line, size, turned: false, order.Saw.Kerf) || Holds(stock, line, size, turned: true, order.Saw.Kerf));
    }

    /// <summary>The same with nothing said of what can be handled.</summary>
    public static bool HasAnyUnlimited(PanelLine line, Order order) => HasAny(line, order with { Saw = Unlimited(order.Saw) });

    /// <summary>The saw with nothing said of what can be handled.</summary>
    public static SawSettings Unlimited(SawSettings saw) => saw with { FenceReach = null, HeaviestGrams = null, Largest = null, Carry = null };

    private static bool Holds(BoardStock stock, PanelLine line, CutSize size, bool turned, Length kerf) =>
        BoardFit.TurningOn(line, stock.Board).HasFlag(turned ? Turning.Turned : Turning.Upright)
        && stock.LetsOut(size.Width, size.Height)
        && SheetCutter.TryCut(new PieceBlock(0, turned), stock.ToFrame(kerf), [(size.Width.Steps, size.Height.Steps)]) is not null;
}
