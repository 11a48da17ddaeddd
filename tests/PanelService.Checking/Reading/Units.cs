using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace PanelService.Checking.Reading;

/// <summary>
/// Turns the documents' numbers into whole steps and whole minor units. Written for the checker alone: an inch is
/// 25.4 mm and a US fluid ounce 29.5735295625 mL by definition (NIST Handbook 44), a step is 3.125 µm.
/// </summary>
internal sealed partial class Units
{
    private const decimal StepMicrometres = 3.125m;

    private static readonly Dictionary<string, decimal> Micrometres = new(StringComparer.OrdinalIgnoreCase)
    {
        ["millimetre"] = 1000m,
        ["centimetre"] = 10_000m,
        ["inch"] = 25_400m,
        ["mm"] = 1000m,
        ["cm"] = 10_000m,
        ["m"] = 1_000_000m,
        ["in"] = 25_400m,
        ["\""] = 25_400m,
        ["ft"] = 304_800m,
        ["'"] = 304_800m,
        ["yd"] = 914_400m,
    };

    // ISO 4217 minor digits other than 2, of the currencies used in the checks.
    private static readonly Dictionary<string, int> MinorDigits = new()
    {
        ["JPY"] = 0,
        ["KRW"] = 0,
        ["ISK"] = 0,
        ["CLP"] = 0,
        ["VND"] = 0,
        ["XAF"] = 0,
        ["XOF"] = 0,
        ["KWD"] = 3,
        ["BHD"] = 3,
        ["JOD"] = 3,
        ["TND"] = 3,
        ["OMR"] = 3,
    };

    private readonly decimal stepsPerUnit;
    private readonly decimal minorPerMajor;

    public Units(string unit, string currency)
    {
        IsInch = unit == "inch";
        stepsPerUnit = Micrometres[unit] / StepMicrometres;
        int digits = MinorDigits.GetValueOrDefault(currency, 2);
        minorPerMajor = Enumerable.Repeat(10m, digits).Aggregate(1m, (a, b) => a * b);
    }

    /// <summary>Whether areas are in² and volumes fl oz.</summary>
    public bool IsInch { get; }

    /// <summary>Square steps in one of the document's units of area.</summary>
    public decimal SquareStepsPerArea => IsInch ? 8128m * 8128m : 3200m * 3200m;

    /// <summary>Whole steps of so many inches.</summary>
    public static long Inches(decimal inches) => Round(inches * 25_400m / StepMicrometres);

    /// <summary>Whole steps of so many millimetres.</summary>
    public static long Millimetres(decimal millimetres) => Round(millimetres * 1000m / StepMicrometres);

    /// <summary>A length of an order: a number in its units, or text.</summary>
    public long OrderLength(JsonElement value) => value.ValueKind == JsonValueKind.Number
        ? Round(value.GetDecimal() * stepsPerUnit)
        : Round(TextMicrometres(value.GetString()!) / StepMicrometres);

    /// <summary>A length of a plan: a number in its units that is a whole step to six decimals.</summary>
    public long PlanLength(JsonElement value)
    {
        decimal number = value.GetDecimal();
        long steps = Round(number * stepsPerUnit);
        return Math.Abs(number - (steps / stepsPerUnit)) <= 0.000_000_6m
            ? steps
            : throw new FormatException($"{number.ToString(CultureInfo.InvariantCulture)} is no whole number of steps.");
    }

    /// <summary>An amount in whole minor units.</summary>
    public long Money(JsonElement value)
    {
        decimal minor = value.GetDecimal() * minorPerMajor;
        return decimal.IsInteger(minor)
            ? (long)minor
            : throw new FormatException($"{value.GetRawText()} has more digits than its currency.");
    }

    /// <summary>Percent of tax on top of prices.</summary>
    public decimal TaxPercent { get; init; }

    /// <summary>A price in whole minor units with its tax, halves up.</summary>
    public long TaxedMoney(JsonElement value) => Round(Money(value) * (1 + (TaxPercent / 100)));

    /// <summary>An amount in minor units, rounded or not.</summary>
    public decimal RoughMoney(JsonElement value) => value.GetDecimal() * minorPerMajor;

    private static long Round(decimal value) => (long)Math.Round(value, MidpointRounding.AwayFromZero);

    private decimal TextMicrometres(string text)
    {
        var match = LengthText().Match(text.Replace(',', '.'));
        if (!match.Success)
        {
            throw new FormatException($"\"{text}\" is no length.");
        }

        var numbers = match.Groups["number"].Captures;
        var units = match.Groups["unit"].Captures;
        return numbers.Select((number, i) =>
            Number(number.Value) * (units[i].Length == 0 ? stepsPerUnit * StepMicrometres : Micrometres[units[i].Value])).Sum();
    }

    private static decimal Number(string text) => text.Split(' ', '-').Sum(part =>
    {
        decimal[] fraction = [.. part.Split('/').Select(p => decimal.Parse(p, CultureInfo.InvariantCulture))];
        return fraction.Length == 1 ? fraction[0] : fraction[0] / fraction[1];
    });

    [GeneratedRegex("""^\s*(?:(?<number>\d+/\d+|\d+(?:\.\d+)?(?:[ -]\d+/\d+)?)\s*(?<unit>mm|cm|m|inch|in|ft|yd|"|'|)\s*)+$""", RegexOptions.IgnoreCase)]
    private static partial Regex LengthText();
}
