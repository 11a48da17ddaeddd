using PanelService.Planning.Orders;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>Which goods an order cannot do without: those it leaves out are missed only where a line needs them.</summary>
internal static class GoodsNeeded
{
    /// <summary>Whether some line is cut from board.</summary>
    internal static bool Boards(OrderRequest order) => Lines(order).Any(line => line.Surface != Surface.Loose);

    /// <summary>Whether some line needs cloth.</summary>
    internal static bool Cloths(OrderRequest order) => Lines(order).Any(line => line.Surface is Surface.Cloth or Surface.Loose);

    /// <summary>The lines of an order that are there at all.</summary>
    internal static IEnumerable<PanelRequest> Lines(OrderRequest order) => (order.Panels ?? []).OfType<PanelRequest>();
}
