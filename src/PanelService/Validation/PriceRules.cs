using System.Globalization;
using FluentValidation;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for one lower price.</summary>
internal sealed class PriceStepRules : AbstractValidator<PriceStepRequest>
{
    /// <summary>Sets the rules out.</summary>
    public PriceStepRules()
    {
        RuleFor(p => p.Count).Needed("from how many on this is the price of each");
        RuleFor(p => p.Count).Count(2, WireLimits.Stock);
        RuleFor(p => p.Price).Needed("the price of each");
        RuleFor(p => p.Price).Money();
    }
}

/// <summary>What holds for one shop.</summary>
internal sealed class ShopRules : AbstractValidator<ShopRequest>
{
    /// <summary>Sets the rules out.</summary>
    public ShopRules()
    {
        RuleFor(s => s.Id).Needed("a name for the shop within this order, such as \"yard\"");
        RuleFor(s => s.Id).Word(WireLimits.IdLength);
        RuleFor(s => s.Name).Title(WireLimits.NameLength);
        RuleFor(s => s.Charge).Money();
        RuleFor(s => s.FreeFrom).Money();
    }
}

/// <summary>What holds for tax.</summary>
internal sealed class TaxRules : AbstractValidator<TaxRequest>
{
    /// <summary>Sets the rules out.</summary>
    public TaxRules()
    {
        RuleFor(t => t.Percent).Needed("the percentage, such as 20");
        RuleFor(t => t.Percent).Amount(0, WireLimits.TaxPercent);
    }
}

/// <summary>Rules of a good's prices as a whole.</summary>
internal static class PriceFromRules
{
    /// <summary>Counts rise from entry to entry and prices fall, the first below the price of one.</summary>
    internal static void Rising<T>(
        this AbstractValidator<T> rules, Func<T, decimal?> price, System.Linq.Expressions.Expression<Func<T, IReadOnlyList<PriceStepRequest?>?>> from)
    {
        rules.RuleFor(from).AtMostItems(WireLimits.PriceSteps);
        rules.RuleFor(from).Custom((steps, context) =>
        {
            decimal? before = price(context.InstanceToValidate);
            int? count = null;
            for (int i = 0; i < (steps?.Count ?? 0); i++)
            {
                Check(steps![i], i, count, before, context);
                (count, before) = (steps[i]?.Count ?? count, steps[i]?.Price ?? before);
            }
        });
    }

    private static void Check<T>(PriceStepRequest? step, int index, int? count, decimal? before, ValidationContext<T> context)
    {
        string path = $"{context.PropertyPath}[{index}]";
        if (step?.Count <= count)
        {
            Fail(context, $"{path}.Count", string.Create(CultureInfo.InvariantCulture, $"Must be more than {count}: the counts rise from entry to entry."));
        }

        if (step?.Price >= before)
        {
            Fail(context, $"{path}.Price", string.Create(CultureInfo.InvariantCulture, $"Must be less than {before}: larger numbers cost less each."));
        }
    }

    // The context's own way of adding a failure would put the property's path before it a second time.
    private static void Fail<T>(ValidationContext<T> context, string path, string message) =>
        context.AddFailure(new FluentValidation.Results.ValidationFailure(path, message));
}
