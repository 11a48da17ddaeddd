using System.Globalization;

namespace PanelService.Planning.Measures;

/// <summary>
/// Lengths as a painter writes them: "16 1/2", "2' 6\"", "41 cm", "20,5 cm"; and as a tape measure shows them.
/// Reading what <see cref="Format"/> wrote gives the length that was shown.
/// </summary>
public static class LengthText
{
    /// <summary>The mark set behind a figure that is rounded: "16 1/2 in ±".</summary>
    public const string RoundedMark = " ±";

    // A tape in inches shows 64ths at best; one in millimetres is read to a tenth by calliper.
    private const int PartsOfAnInch = 64;
    private const int PartsOfAMillimetre = 10;

    /// <summary>Reads a length.</summary>
    /// <param name="text">A number, a fraction or both, with a unit or without; feet and inches may follow one another.</param>
    /// <param name="unit">The unit of a text that names none.</param>
    /// <returns>The length, or what was expected. Never throws for any text.</returns>
    public static LengthReading Parse(string text, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        return LengthParser.Parse(text, unit);
    }

    /// <summary>
    /// The length with its unit: in inches as a fraction to the nearest 1/64, in millimetres and centimetres to the
    /// nearest 0.1 mm, halves away from zero. What is rounded carries a ± sign.
    /// </summary>
    /// <param name="length">Any length.</param>
    /// <param name="unit">The unit to show it in.</param>
    public static string Format(Length length, LengthUnit unit)
    {
        (string figure, bool exact) = Shown(length, unit);
        return $"{figure} {Abbreviation(unit)}{(exact ? "" : RoundedMark)}";
    }

    /// <summary>As <see cref="Format"/>, without the unit: for drawings that name their unit once.</summary>
    /// <param name="length">Any length.</param>
    /// <param name="unit">The unit to show it in.</param>
    public static string FormatFigure(Length length, LengthUnit unit)
    {
        (string figure, bool exact) = Shown(length, unit);
        return exact ? figure : figure + RoundedMark;
    }

    /// <summary>"in", "cm" or "mm".</summary>
    /// <param name="unit">The unit.</param>
    public static string Abbreviation(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => "in",
        LengthUnit.Centimetre => "cm",
        LengthUnit.Millimetre => "mm",
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };

    private static (string Figure, bool Exact) Shown(Length length, LengthUnit unit) =>
        unit == LengthUnit.Inch ? InInches(length) : InTenths(length, unit);

    private static (string Figure, bool Exact) InInches(Length length)
    {
        long parts = Nearest(length, Length.StepsPerInch / PartsOfAnInch, out bool exact);
        string sign = parts < 0 ? "-" : "";
        (long whole, long rest) = Math.DivRem(Math.Abs(parts), PartsOfAnInch);
        if (rest == 0)
        {
            return (string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}"), exact);
        }

        long common = 1L << System.Numerics.BitOperations.TrailingZeroCount(rest);
        string fraction = string.Create(CultureInfo.InvariantCulture, $"{rest / common}/{PartsOfAnInch / common}");
        return (whole == 0 ? sign + fraction : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole} {fraction}"), exact);
    }

    private static (string Figure, bool Exact) InTenths(Length length, LengthUnit unit)
    {
        long tenths = Nearest(length, Length.StepsPerMillimetre / PartsOfAMillimetre, out bool exact);
        decimal figure = (decimal)tenths / (unit == LengthUnit.Centimetre ? 10 * PartsOfAMillimetre : PartsOfAMillimetre);
        return (figure.ToString("0.##", CultureInfo.InvariantCulture), exact);
    }

    private static long Nearest(Length length, long part, out bool exact)
    {
        exact = length.Steps % part == 0;
        return (long)Math.Round((decimal)length.Steps / part, MidpointRounding.AwayFromZero);
    }
}
