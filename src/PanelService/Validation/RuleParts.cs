using System.Globalization;
using FluentValidation;
using PanelService.Planning.Measures;

namespace PanelService.Validation;

/// <summary>The rules that many fields share. What is null is left out, and only <see cref="Needed"/> minds.</summary>
internal static class RuleParts
{
    /// <summary>The field must be there.</summary>
    internal static void Needed<T, TField>(this IRuleBuilder<T, TField> rule, string expected) =>
        rule.Must(field => field is not null).WithMessage($"Required: {expected}.");

    /// <summary>A length above 0.</summary>
    internal static void Size<T>(this IRuleBuilder<T, Length?> rule, Length most) =>
        rule.Fault(size => size is { } s && (s <= Length.Zero || s > most)
            ? $"Must be a length above 0 and at most {Shown(most)}; this is {s}."
            : null);

    /// <summary>A length within bounds, both included.</summary>
    internal static void Size<T>(this IRuleBuilder<T, Length?> rule, Length least, Length most) =>
        rule.Fault(size => size is { } s && (s < least || s > most)
            ? $"Must be a length from {Shown(least)} to {Shown(most)}; this is {s}."
            : null);

    /// <summary>A length of 0 or more.</summary>
    internal static void Allowance<T>(this IRuleBuilder<T, Length?> rule, Length most) =>
        rule.Fault(size => size is { } s && (s < Length.Zero || s > most)
            ? $"Must be a length from 0 to {Shown(most)}; this is {s}."
            : null);

    /// <summary>A whole number within bounds, both included.</summary>
    internal static void Count<T>(this IRuleBuilder<T, int?> rule, int least, int most) =>
        rule.Fault(count => count < least || count > most
            ? string.Create(CultureInfo.InvariantCulture, $"Must be a whole number from {least} to {most}; this is {count}.")
            : null);

    /// <summary>A number within bounds, both included.</summary>
    internal static void Amount<T>(this IRuleBuilder<T, decimal?> rule, decimal least, decimal most) =>
        rule.Fault(amount => amount < least || amount > most
            ? string.Create(CultureInfo.InvariantCulture, $"Must be a number from {least} to {most}; this is {amount}.")
            : null);

    /// <summary>Text that is not empty and not too long.</summary>
    internal static void Word<T>(this IRuleBuilder<T, string?> rule, int longest) =>
        rule.Fault(text => text is not null && (text.Length == 0 || text.Length > longest)
            ? $"Must be text of 1 to {longest} characters; this has {text.Length}."
            : null);

    /// <summary>Text that may be empty but not too long.</summary>
    internal static void Title<T>(this IRuleBuilder<T, string?> rule, int longest) =>
        rule.Fault(text => text?.Length > longest ? $"Must be text of at most {longest} characters; this has {text.Length}." : null);

    /// <summary>A list of bounded length.</summary>
    internal static void AtMostItems<T, TItem>(this IRuleBuilder<T, IReadOnlyList<TItem>?> rule, int most) =>
        rule.Fault(list => list?.Count > most ? $"Must have at most {most} entries; this has {list.Count}." : null);

    /// <summary>Money: 0 or more, with at most the currency's minor digits.</summary>
    internal static void Money<T>(this IRuleBuilder<T, decimal?> rule) =>
        rule.Custom((amount, context) =>
        {
            if (amount is { } a && MoneyFault(a, OrderMeasures.Of(context).Currency) is { } fault)
            {
                context.AddFailure(fault);
            }
        });

    /// <summary>A rule that says itself what is wrong; null where nothing is.</summary>
    internal static void Fault<T, TField>(this IRuleBuilder<T, TField> rule, Func<TField, string?> fault) =>
        rule.Custom((field, context) =>
        {
            if (fault(field) is { } message)
            {
                context.AddFailure(message);
            }
        });

    private static string? MoneyFault(decimal amount, Currency currency)
    {
        decimal scale = MoneyScale.Of(currency);
        if (amount < 0 || amount > WireLimits.MoneyMinor / scale)
        {
            return string.Create(CultureInfo.InvariantCulture, $"Must be an amount from 0 to {WireLimits.MoneyMinor / scale}; this is {amount}.");
        }

        return amount * scale == decimal.Truncate(amount * scale)
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{currency.Code} has {currency.MinorDigits} decimal digits; {amount} has more.");
    }

    private static string Shown(Length most) =>
        most.Millimetres >= 1000
            ? string.Create(CultureInfo.InvariantCulture, $"{most.Millimetres / 1000:0.##} m")
            : most.ToString();
}
