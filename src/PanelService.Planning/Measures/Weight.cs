using System.Globalization;

namespace PanelService.Planning.Measures;

/// <summary>A weight in grams. <c>default</c> is nothing.</summary>
/// <param name="Grams">The weight in grams.</param>
public readonly record struct Weight(decimal Grams)
{
    /// <summary>Grams in one pound, exact by definition (NIST SP 811).</summary>
    public const decimal GramsPerPound = 453.59237m;

    /// <summary>Adds.</summary>
    public static Weight operator +(Weight a, Weight b) => new(a.Grams + b.Grams);

    /// <summary>Multiplies by a count.</summary>
    public static Weight operator *(Weight a, long count) => new(a.Grams * count);

    /// <summary>A weight as the wire gives it: lb for <see cref="LengthUnit.Inch"/>, g otherwise.</summary>
    /// <param name="value">The number.</param>
    /// <param name="unit">The order's unit.</param>
    public static Weight From(decimal value, LengthUnit unit) => new(unit == LengthUnit.Inch ? value * GramsPerPound : value);

    /// <summary>This weight as the wire shows it: lb for <see cref="LengthUnit.Inch"/>, g otherwise; unrounded.</summary>
    /// <param name="unit">The order's unit.</param>
    public decimal In(LengthUnit unit) => unit == LengthUnit.Inch ? Grams / GramsPerPound : Grams;

    /// <summary>Grams with their unit, for logs and tests.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Grams:0.##} g");
}
