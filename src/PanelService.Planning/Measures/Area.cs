using System.Globalization;

namespace PanelService.Planning.Measures;

/// <summary>An area in square steps (see <see cref="Length"/>); exact. <c>default</c> is zero.</summary>
public readonly record struct Area : IComparable<Area>
{
    private Area(Int128 squareSteps) => SquareSteps = squareSteps;

    /// <summary>Zero.</summary>
    public static Area Zero => default;

    /// <summary>The area in squares of 3.125 µm.</summary>
    public Int128 SquareSteps { get; }

    /// <summary>The area in square metres.</summary>
    public decimal SquareMetres => (decimal)SquareSteps / (Length.StepsPerMillimetre * Length.StepsPerMillimetre) / 1_000_000m;

    /// <summary>Adds.</summary>
    public static Area operator +(Area a, Area b) => new(a.SquareSteps + b.SquareSteps);

    /// <summary>Subtracts; the result may be negative.</summary>
    public static Area operator -(Area a, Area b) => new(a.SquareSteps - b.SquareSteps);

    /// <summary>Multiplies by a count.</summary>
    public static Area operator *(Area a, long count) => new(a.SquareSteps * count);

    /// <summary>Compares.</summary>
    public static bool operator <(Area a, Area b) => a.SquareSteps < b.SquareSteps;

    /// <summary>Compares.</summary>
    public static bool operator >(Area a, Area b) => a.SquareSteps > b.SquareSteps;

    /// <summary>Compares.</summary>
    public static bool operator <=(Area a, Area b) => a.SquareSteps <= b.SquareSteps;

    /// <summary>Compares.</summary>
    public static bool operator >=(Area a, Area b) => a.SquareSteps >= b.SquareSteps;

    /// <summary>An area of whole square steps.</summary>
    /// <param name="squareSteps">Any number.</param>
    public static Area FromSquareSteps(Int128 squareSteps) => new(squareSteps);

    /// <summary>An area as the wire gives it: in² for <see cref="LengthUnit.Inch"/>, cm² otherwise; to the nearest square step.</summary>
    /// <param name="value">The number, at most 10^12.</param>
    /// <param name="unit">The order's unit.</param>
    public static Area From(decimal value, LengthUnit unit)
    {
        decimal side = unit == LengthUnit.Inch ? Length.StepsPerInch : 10 * Length.StepsPerMillimetre;
        return new((Int128)Math.Round(value * side * side, MidpointRounding.AwayFromZero));
    }

    /// <summary>This area as the wire shows it: in² for <see cref="LengthUnit.Inch"/>, cm² otherwise; unrounded.</summary>
    /// <param name="unit">The order's unit.</param>
    public decimal In(LengthUnit unit)
    {
        decimal side = unit == LengthUnit.Inch ? Length.StepsPerInch : 10 * Length.StepsPerMillimetre;
        return (decimal)SquareSteps / (side * side);
    }

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareSteps.CompareTo(other.SquareSteps);

    /// <summary>Square metres with their unit, for logs and tests.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{SquareMetres:0.######} m²");
}
