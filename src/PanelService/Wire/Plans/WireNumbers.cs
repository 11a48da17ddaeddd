using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Wire.Plans;

/// <summary>Measures as the wire shows them in one order's units and currency.</summary>
internal sealed class WireNumbers(Order order)
{
    private const int Decimals = 6;

    internal decimal Of(Length length) => Rounded(length.In(order.Units), Decimals);

    internal decimal Of(Area area) => Rounded(area.In(order.Units), Decimals);

    internal decimal Of(Volume volume) => Rounded(volume.In(order.Units), Decimals);

    internal decimal Of(Weight weight) => Rounded(weight.In(order.Units), Decimals);

    /// <summary>A computed length in mm, finer than a step.</summary>
    internal decimal OfMillimetres(double millimetres) =>
        Rounded((decimal)millimetres / Length.From(1, order.Units).Millimetres, Decimals);

    internal decimal Of(Money money) => money.In(order.Currency.MinorDigits);

    internal decimal? Of(Money? money) => money is { } amount ? Of(amount) : null;

    /// <summary>Minor units that need not be whole, rounded to the currency's digits.</summary>
    internal decimal OfMinor(decimal minor)
    {
        decimal rounded = Math.Round(minor, MidpointRounding.AwayFromZero);
        return new Money((long)rounded).In(order.Currency.MinorDigits);
    }

    internal decimal OfSquareMillimetres(long area) => Of(Area.FromSquareSteps((Int128)area * Length.StepsPerMillimetre * Length.StepsPerMillimetre));

    internal static decimal Figure(decimal figure) => Rounded(figure, Decimals);

    internal static decimal? Share(decimal? share) => share is { } part ? Rounded(part, Decimals) : null;

    // Divided by a one with as many zeros as a decimal can carry: drops the trailing zeros a length divided leaves.
    private static decimal Rounded(decimal value, int decimals) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero) / 1.0000000000000000000000000000m;
}
