using System.Globalization;

namespace PanelService.Planning.Measures;

/// <summary>
/// A length: a whole number of 3.125 µm steps, the largest step of which both 1/64 in (127 steps) and 0.1 mm
/// (32 steps) are whole multiples. <c>default</c> is zero. Arithmetic is exact; overflow throws.
/// </summary>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Steps in one millimetre: 320.</summary>
    public const long StepsPerMillimetre = 320;

    /// <summary>Steps in one inch: 8128 (25.4 mm exactly).</summary>
    public const long StepsPerInch = 8128;

    private Length(long steps) => Steps = steps;

    /// <summary>Zero.</summary>
    public static Length Zero => default;

    /// <summary>The length in steps of 3.125 µm.</summary>
    public long Steps { get; }

    /// <summary>This length in millimetres, exactly (a step is a decimal fraction of a millimetre).</summary>
    public decimal Millimetres => (decimal)Steps / StepsPerMillimetre;

    /// <summary>This length in inches, to the precision of <see cref="decimal"/>.</summary>
    public decimal Inches => (decimal)Steps / StepsPerInch;

    /// <summary>Adds.</summary>
    public static Length operator +(Length a, Length b) => new(a.Steps + b.Steps);

    /// <summary>Subtracts; the result may be negative.</summary>
    public static Length operator -(Length a, Length b) => new(a.Steps - b.Steps);

    /// <summary>Multiplies by a count.</summary>
    public static Length operator *(Length a, long count) => new(a.Steps * count);

    /// <summary>The area of a rectangle.</summary>
    public static Area operator *(Length a, Length b) => Area.FromSquareSteps((Int128)a.Steps * b.Steps);

    /// <summary>Compares.</summary>
    public static bool operator <(Length a, Length b) => a.Steps < b.Steps;

    /// <summary>Compares.</summary>
    public static bool operator >(Length a, Length b) => a.Steps > b.Steps;

    /// <summary>Compares.</summary>
    public static bool operator <=(Length a, Length b) => a.Steps <= b.Steps;

    /// <summary>Compares.</summary>
    public static bool operator >=(Length a, Length b) => a.Steps >= b.Steps;

    /// <summary>A length of whole steps.</summary>
    /// <param name="steps">Any number of steps.</param>
    public static Length FromSteps(long steps) => new(steps);

    /// <summary>A number of a unit, rounded to the nearest step, halves away from zero (<see cref="Nearest"/>: the one door for rounding).</summary>
    /// <param name="value">The number.</param>
    /// <param name="unit">Its unit.</param>
    /// <exception cref="OverflowException">The length does not fit.</exception>
    public static Length From(decimal value, LengthUnit unit) =>
        Nearest(value * StepsPer(unit));

    /// <summary>The length nearest to a number of steps, halves away from zero.</summary>
    /// <param name="steps">Steps, whole or not.</param>
    /// <exception cref="OverflowException">The length does not fit.</exception>
    public static Length Nearest(decimal steps) => new((long)Math.Round(steps, MidpointRounding.AwayFromZero));

    /// <summary>A number of inches, rounded to the nearest step.</summary>
    /// <param name="value">Inches.</param>
    public static Length FromInches(decimal value) => From(value, LengthUnit.Inch);

    /// <summary>A number of millimetres, rounded to the nearest step.</summary>
    /// <param name="value">Millimetres.</param>
    public static Length FromMillimetres(decimal value) => From(value, LengthUnit.Millimetre);

    /// <summary>The smaller of two.</summary>
    public static Length Min(Length a, Length b) => a <= b ? a : b;

    /// <summary>The larger of two.</summary>
    public static Length Max(Length a, Length b) => a >= b ? a : b;

    /// <summary>This length as a number of a unit, unrounded.</summary>
    /// <param name="unit">The unit wanted.</param>
    public decimal In(LengthUnit unit) => (decimal)Steps / StepsPer(unit);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Steps.CompareTo(other.Steps);

    /// <summary>Millimetres with their unit, for logs and tests.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Millimetres:0.######} mm");

    private static long StepsPer(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => StepsPerInch,
        LengthUnit.Centimetre => 10 * StepsPerMillimetre,
        LengthUnit.Millimetre => StepsPerMillimetre,
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };
}
