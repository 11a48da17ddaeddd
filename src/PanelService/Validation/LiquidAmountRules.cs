using System.Globalization;
using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>
/// Whether liquids come in containers that an order of this size could be bought in: a slip in a coverage or a volume
/// shows as millions of bottles. Counted as if every panel that could need the liquid took it.
/// </summary>
internal sealed class LiquidAmountRules : AbstractValidator<OrderRequest>
{
    /// <summary>Sets the rules out.</summary>
    public LiquidAmountRules() => RuleFor(o => o).Custom((order, context) =>
    {
        LengthUnit units = OrderMeasures.Of(context).Units;
        Check(order.Adhesives, "Adhesives", AreaOf(order, Surface.Cloth, units), context);
        Check(order.Primers, "Primers", AreaOf(order, Surface.Primed, units), context);
    });

    private static void Check(
        IReadOnlyList<LiquidRequest?>? liquids, string list, decimal area, ValidationContext<OrderRequest> context)
    {
        for (int liquid = 0; liquid < (liquids?.Count ?? 0); liquid++)
        {
            decimal? needed = Needed(liquids![liquid], area);
            for (int container = 0; needed is not null && container < (liquids[liquid]!.Containers?.Count ?? 0); container++)
            {
                if (liquids[liquid]!.Containers![container] is { Volume: > 0 } one && needed / WireLimits.ContainersBought > one.Volume)
                {
                    context.AddFailure(
                        $"{list}[{liquid}].Containers[{container}].Volume",
                        string.Create(CultureInfo.InvariantCulture, $"This order would take more than {WireLimits.ContainersBought} of these. Check the volume, the coverage and the coats."));
                }
            }
        }
    }

    // Only where every figure is within its own limits; what is not is reported there.
    private static decimal? Needed(LiquidRequest? liquid, decimal area) =>
        liquid is { Coverage: { Area: >= WireLimits.LeastArea and <= WireLimits.CoverageArea, Volume: >= WireLimits.LeastVolume and <= WireLimits.Volume } coverage }
        && (liquid.Coats ?? 1) is >= 1 and <= WireLimits.Coats and var coats
            ? area / coverage.Area.Value * coverage.Volume.Value * coats * (liquid.Faces == 2 ? 2 : 1) * (1 + (Math.Clamp(liquid.Loss ?? 0, 0, 100) / 100))
            : null;

    private static decimal AreaOf(OrderRequest order, Surface surface, LengthUnit units) =>
        (order.Panels ?? []).OfType<PanelRequest>().Where(p => p.Surface == surface && WithinLimits(p))
            .Sum(p => (p.Width!.Value * p.Height!.Value).In(units) * (p.Quantity!.Value + (p.Spares ?? 0)))
        + (order.Wishes ?? []).OfType<WishRequest>().Where(w => w.Surface == surface && WithinLimits(w))
            .Sum(w => (w.Width!.Value * w.Height!.Value).In(units) * w.AtMost!.Value);

    private static bool WithinLimits(PanelRequest panel) =>
        IsSide(panel.Width) && IsSide(panel.Height) && IsCount(panel.Quantity) && IsCount(panel.Spares ?? 0);

    private static bool WithinLimits(WishRequest wish) => IsSide(wish.Width) && IsSide(wish.Height) && IsCount(wish.AtMost);

    private static bool IsSide(Length? side) => side is { } s && s >= WireLimits.Panel && s <= WireLimits.Side;

    private static bool IsCount(int? count) => count is >= 0 and <= WireLimits.Quantity;
}
