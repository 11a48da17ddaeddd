using System.Globalization;

namespace PanelService.Planning.Measures;

/// <summary>A volume of liquid in millilitres. <c>default</c> is zero.</summary>
/// <param name="Millilitres">The volume in millilitres.</param>
public readonly record struct Volume(decimal Millilitres) : IComparable<Volume>
{
    /// <summary>Millilitres in one US fluid ounce, exact by definition (NIST Handbook 44).</summary>
    public const decimal MillilitresPerFluidOunce = 29.5735295625m;

    /// <summary>Adds.</summary>
    public static Volume operator +(Volume a, Volume b) => new(a.Millilitres + b.Millilitres);

    /// <summary>Subtracts; the result may be negative.</summary>
    public static Volume operator -(Volume a, Volume b) => new(a.Millilitres - b.Millilitres);

    /// <summary>Multiplies by a count.</summary>
    public static Volume operator *(Volume a, long count) => new(a.Millilitres * count);

    /// <summary>Compares.</summary>
    public static bool operator <(Volume a, Volume b) => a.Millilitres < b.Millilitres;

    /// <summary>Compares.</summary>
    public static bool operator >(Volume a, Volume b) => a.Millilitres > b.Millilitres;

    /// <summary>Compares.</summary>
    public static bool operator <=(Volume a, Volume b) => a.Millilitres <= b.Millilitres;

    /// <summary>Compares.</summary>
    public static bool operator >=(Volume a, Volume b) => a.Millilitres >= b.Millilitres;

    /// <summary>The smaller of two.</summary>
    public static Volume Min(Volume a, Volume b) => a <= b ? a : b;

    /// <summary>A volume as the wire gives it: US fl oz for <see cref="LengthUnit.Inch"/>, mL otherwise.</summary>
    /// <param name="value">The number.</param>
    /// <param name="unit">The order's unit.</param>
    public static Volume From(decimal value, LengthUnit unit) =>
        new(unit == LengthUnit.Inch ? value * MillilitresPerFluidOunce : value);

    /// <summary>This volume as the wire shows it: US fl oz for <see cref="LengthUnit.Inch"/>, mL otherwise; unrounded.</summary>
    /// <param name="unit">The order's unit.</param>
    public decimal In(LengthUnit unit) => unit == LengthUnit.Inch ? Millilitres / MillilitresPerFluidOunce : Millilitres;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Millilitres.CompareTo(other.Millilitres);

    /// <summary>Millilitres with their unit, for logs and tests.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Millilitres:0.###} mL");
}
