using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Orders;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>The pieces of cloth a line asks for, as they are cut, in steps of length.</summary>
/// <param name="LineNumber">Its line.</param>
/// <param name="Line">The line itself.</param>
/// <param name="Width">Along the panel's width, margins included.</param>
/// <param name="Height">Along the panel's height, margins included.</param>
/// <param name="Count">How many.</param>
internal sealed record ClothPieces(int LineNumber, PanelLine Line, long Width, long Height, int Count)
{
    /// <summary>All pieces asked for.</summary>
    /// <param name="order">The order.</param>
    /// <param name="request">How many of each line at what size.</param>
    public static ImmutableArray<ClothPieces> Of(Order order, CutRequest request) =>
    [
        .. request.Lines.Where(i => order.Panels[i].NeedsCloth).Select(i =>
        {
            var size = ClothFit.WithMargins(request.Sizes[i], order.Bench);
            return new ClothPieces(i, order.Panels[i], size.Width.Steps, size.Height.Steps, request.Counts[i]);
        }),
    ];

    /// <summary>The ways one may lie across a width of cloth: its extents across and along.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="usable">The usable width.</param>
    public IEnumerable<(long Across, long Along)> WaysOn(ClothSupply cloth, long usable)
    {
        var turning = ClothFit.TurningOn(Line, cloth);
        if (turning.HasFlag(Turning.Upright) && Width <= usable)
        {
            yield return (Width, Height);
        }

        if (turning.HasFlag(Turning.Turned) && Width != Height && Height <= usable)
        {
            yield return (Height, Width);
        }
    }
}
