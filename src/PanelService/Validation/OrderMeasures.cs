using FluentValidation;
using PanelService.Planning.Measures;

namespace PanelService.Validation;

/// <summary>What the fields of an order are measured in; handed to every rule with the order.</summary>
/// <param name="Units">The unit of bare numbers.</param>
/// <param name="Currency">The currency of every amount.</param>
internal sealed record OrderMeasures(LengthUnit Units, Currency Currency)
{
    private const string Key = nameof(OrderMeasures);

    /// <summary>A validation context that carries these measures.</summary>
    internal ValidationContext<T> ContextFor<T>(T request)
    {
        var context = new ValidationContext<T>(request);
        context.RootContextData[Key] = this;
        return context;
    }

    /// <summary>The measures a context carries.</summary>
    internal static OrderMeasures Of(IValidationContext context) => (OrderMeasures)context.RootContextData[Key];
}
