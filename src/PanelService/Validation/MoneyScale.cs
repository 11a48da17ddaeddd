using PanelService.Planning.Measures;

namespace PanelService.Validation;

/// <summary>Amounts as the wire gives them, to and from whole minor units.</summary>
internal static class MoneyScale
{
    /// <summary>Minor units in one of a currency's major unit.</summary>
    internal static decimal Of(Currency currency)
    {
        decimal scale = 1;
        for (int digit = 0; digit < currency.MinorDigits; digit++)
        {
            scale *= 10;
        }

        return scale;
    }

    /// <summary>An amount that has been checked to be whole minor units.</summary>
    internal static Money Read(decimal? amount, Currency currency) => new((long)((amount ?? 0) * Of(currency)));
}
