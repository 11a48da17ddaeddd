using System.Globalization;

namespace PanelService.Planning.Measures;

/// <summary>
/// An amount of money in whole minor units (cents) of the order's currency. <c>default</c> is zero. Adding up is
/// exact; overflow throws. The currency itself stands on the order: amounts of two currencies never meet.
/// </summary>
/// <param name="Minor">Minor units: cents for most currencies, whole units where a currency has none.</param>
public readonly record struct Money(long Minor) : IComparable<Money>
{
    /// <summary>Nothing.</summary>
    public static Money Zero => default;

    /// <summary>Adds.</summary>
    public static Money operator +(Money a, Money b) => new(a.Minor + b.Minor);

    /// <summary>Subtracts; the result may be negative.</summary>
    public static Money operator -(Money a, Money b) => new(a.Minor - b.Minor);

    /// <summary>Multiplies by a count.</summary>
    public static Money operator *(Money a, long count) => new(a.Minor * count);

    /// <summary>Compares.</summary>
    public static bool operator <(Money a, Money b) => a.Minor < b.Minor;

    /// <summary>Compares.</summary>
    public static bool operator >(Money a, Money b) => a.Minor > b.Minor;

    /// <summary>Compares.</summary>
    public static bool operator <=(Money a, Money b) => a.Minor <= b.Minor;

    /// <summary>Compares.</summary>
    public static bool operator >=(Money a, Money b) => a.Minor >= b.Minor;

    /// <summary>This amount as a decimal of a currency's major unit.</summary>
    /// <param name="minorDigits">The currency's minor digits, 0 to 4.</param>
    public decimal In(int minorDigits)
    {
        decimal scale = 1;
        for (int i = 0; i < minorDigits; i++)
        {
            scale *= 10;
        }

        return Minor / scale;
    }

    /// <inheritdoc/>
    public int CompareTo(Money other) => Minor.CompareTo(other.Minor);

    /// <summary>Minor units, for logs and tests.</summary>
    public override string ToString() => Minor.ToString(CultureInfo.InvariantCulture);
}
