using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Sizes;

/// <summary>The sizes that lines may be cut to, by line.</summary>
internal static class CutSizes
{
    private static readonly Length _least = Length.FromSteps(1);

    /// <summary>As they hang.</summary>
    public static ImmutableArray<CutSize> Nominal(Order order) =>
        [.. order.Panels.Select(line => new CutSize(line.Width, line.Height))];

    /// <summary>The smallest the order allows.</summary>
    public static ImmutableArray<CutSize> Smallest(Order order) =>
        [.. order.Panels.Select(line => Smallest(line, order.Saw.Undersize))];

    /// <summary>The smallest a line may be cut to.</summary>
    /// <param name="line">The line.</param>
    /// <param name="undersize">How much less than nominal it may measure each way.</param>
    public static CutSize Smallest(PanelLine line, Length undersize) =>
        new(Length.Max(_least, line.Width - undersize), Length.Max(_least, line.Height - undersize));
}
