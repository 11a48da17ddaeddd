using System.Globalization;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>Lengths as a tape shows them: inches to the nearest 1/64 with a ± where that is not exact, else decimals.</summary>
internal static class TapeText
{
    private const long StepsPer64th = Length.StepsPerInch / 64;

    public static string Of(Length length, LengthUnit unit) => unit == LengthUnit.Inch
        ? Inches(length.Steps)
        : length.In(unit).ToString("0.##", CultureInfo.InvariantCulture);

    public static string Size(Length width, Length height, LengthUnit unit) => $"{Of(width, unit)} × {Of(height, unit)}";

    /// <summary>"in", "cm" or "mm".</summary>
    public static string Symbol(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => "in",
        LengthUnit.Centimetre => "cm",
        _ => "mm",
    };

    private static string Inches(long steps)
    {
        long sixtyFourths = (steps + (StepsPer64th / 2)) / StepsPer64th;
        string sign = sixtyFourths * StepsPer64th == steps ? "" : "±";
        (long whole, long part) = Math.DivRem(sixtyFourths, 64);
        if (part == 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}");
        }

        long below = 64;
        while (part % 2 == 0)
        {
            part /= 2;
            below /= 2;
        }

        string fraction = string.Create(CultureInfo.InvariantCulture, $"{part}/{below}");
        return whole == 0 ? sign + fraction : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole} {fraction}");
    }
}
