using System.Globalization;
using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>
/// Whether cloth is sold in steps that an order of this size could be bought in: a slip in a step shows as milliards of them,
/// more than are counted. Reckoned as if every panel that could need the cloth took a length of its own.
/// </summary>
internal sealed class ClothAmountRules : AbstractValidator<OrderRequest>
{
    private static readonly Length _margin = new BenchSettings().MarginSides;

    /// <summary>Sets the rules out.</summary>
    public ClothAmountRules() => RuleFor(o => o).Custom((order, context) =>
    {
        for (int cloth = 0; cloth < (order.Cloths?.Count ?? 0); cloth++)
        {
            if (order.Cloths![cloth]?.Sale?.Step is { } step && step > Length.Zero && StepsOf(order, step) > WireLimits.ClothSteps)
            {
                context.AddFailure(
                    $"Cloths[{cloth}].Sale.Step",
                    string.Create(CultureInfo.InvariantCulture, $"This order might take more than {WireLimits.ClothSteps} of these. Check the step and the panels."));
            }
        }
    });

    // Only of lines whose figures are within their own limits; what is not is reported there.
    private static Int128 StepsOf(OrderRequest order, Length step)
    {
        long margins = 2 * MarginOf(order).Steps;
        Int128 steps = 0;
        foreach (PanelRequest panel in (order.Panels ?? []).OfType<PanelRequest>().Where(p => p.Surface is Surface.Cloth or Surface.Loose))
        {
            if (panel is { Width: { } width, Height: { } height, Quantity: { } quantity })
            {
                long along = Length.Max(width, height).Steps + margins;
                steps += (Int128)((along / step.Steps) + 1) * (quantity + (long)(panel.Spares ?? 0));
            }
        }

        return steps;
    }

    private static Length MarginOf(OrderRequest order) => order.Bench?.Margin is { } margin
        ? new[] { margin.Sides, margin.Ends, margin.Right ?? margin.Sides, margin.Bottom ?? margin.Ends }.Max()
        : _margin;
}
