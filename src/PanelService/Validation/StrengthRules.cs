using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Wire.Orders;

namespace PanelService.Validation;

/// <summary>What holds for what panels must bear and for how cradles are made.</summary>
internal sealed class StrengthRules : AbstractValidator<StrengthRequest>
{
    private const decimal MostGrams = 50_000;

    /// <summary>Sets the rules out.</summary>
    public StrengthRules()
    {
        RuleFor(s => s.Load).Custom((load, context) =>
        {
            LengthUnit units = OrderMeasures.Of(context).Units;
            decimal most = Math.Floor(new Weight(MostGrams).In(units));
            if (load < 0 || load > most)
            {
                context.AddFailure($"Must be a weight from 0 to {most} {(units == LengthUnit.Inch ? "lb" : "g")}; this is {load}.");
            }
        });
        RuleFor(s => s.Limit).Amount(10, 10_000);
        RuleFor(s => s.Faces).Humidities("at the back and at the front, such as [50, 65]");
        RuleFor(s => s.Humidity).Humidities("the driest and the dampest, such as [35, 80]");
        RuleFor(s => s.Humidity).Fault(pair => pair is [{ } dry, { } damp] && dry > damp ? "The driest must not be damper than the dampest." : null);
        RuleFor(s => s.Temperature).Amount(0, 50);
        RuleFor(s => s.BraceFrom).Size(WireLimits.Side);
        RuleFor(s => s.StripWidth).Size(WireLimits.Margin);
        RuleFor(s => s.StripDepth).Size(WireLimits.Margin);
        RuleFor(s => s.CradleInset).Allowance(WireLimits.Margin);
        RuleFor(s => s.SmallestStrip).Size(WireLimits.Side);
    }
}

/// <summary>Rules of what is measured in percent.</summary>
internal static class PercentRules
{
    private const decimal DampestAir = 99;

    /// <summary>Two relative humidities.</summary>
    internal static void Humidities<T>(this IRuleBuilder<T, IReadOnlyList<decimal?>?> rule, string what) =>
        rule.Fault(pair => pair is not null && !(pair.Count == 2 && pair.All(percent => percent is null or (>= 0 and <= DampestAir)))
            ? $"Must be two relative humidities in percent, each from 0 to {DampestAir}: {what}."
            : null);
}
