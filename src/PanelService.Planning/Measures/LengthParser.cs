using System.Globalization;
using System.Text.RegularExpressions;

namespace PanelService.Planning.Measures;

/// <summary>
/// Reads a length in two passes: signs that mean the same are made one (<see cref="LengthSigns"/>), then terms of a
/// figure and a unit are taken off the front, each unit smaller than the one before. Everything is added up as an
/// exact number of steps and rounded once.
/// </summary>
internal static partial class LengthParser
{
    // Longer text is no length; the limits also keep every sum within decimal's exact range.
    private const int LongestText = 40;
    private const int MostDigits = 12;

    private static readonly Dictionary<string, NamedUnit> Units = NamedUnit.ByName();

    internal static LengthReading Parse(string text, LengthUnit unit)
    {
        if (text.Length > LongestText)
        {
            return new LengthNotRead($"A length of more than {LongestText} characters cannot be read. {Expected(unit)}");
        }

        string plain = LengthSigns.Plain(text);
        return plain switch
        {
            "" => new LengthNotRead($"An empty text is no length. {Expected(unit)}"),
            ['-', ..] => new LengthNotRead($"\"{text}\": a length cannot be less than 0. {Expected(unit)}"),
            _ => ReadTerms(text, plain, unit),
        };
    }

    private static LengthReading ReadTerms(string text, string plain, LengthUnit unit)
    {
        decimal steps = 0;
        NamedUnit? last = null;
        bool bare = false;
        int at = 0;
        while (at < plain.Length)
        {
            Match term = Term().Match(plain, at);
            if (!term.Success || bare)
            {
                return Unread(text, unit);
            }

            string name = term.Groups["unit"].Value;
            bare = name.Length == 0;
            NamedUnit? named = bare ? Unnamed(last, unit) : Units.GetValueOrDefault(name);
            string? fault = FaultIn(term, name, named, last);
            if (fault is not null)
            {
                return new LengthNotRead($"\"{text}\": {fault} {Expected(unit)}");
            }

            steps += Steps(term, named!.Steps);
            last = named;
            at = term.Index + term.Length;
        }

        return new LengthRead(Length.Nearest(steps));
    }

    private static string? FaultIn(Match term, string name, NamedUnit? named, NamedUnit? last)
    {
        if (named is null)
        {
            return name.Length == 0
                ? "a second figure needs its unit."
                : $"\"{name}\" is no unit known here; known are mm, cm, m, in, ft and yd.";
        }

        if (last is not null && (last.Metric != named.Metric || last.Steps <= named.Steps))
        {
            return "units that follow one another must grow smaller, as feet and inches do.";
        }

        return DigitFault(term);
    }

    private static string? DigitFault(Match term)
    {
        bool tooLong = term.Groups["figure"].Value.Count(char.IsAsciiDigit) > MostDigits;
        bool zero = term.Groups["lower"] is { Success: true } lower && lower.Value.All(c => c == '0');
        return tooLong ? "too many digits." : zero ? "the lower number of a fraction cannot be 0." : null;
    }

    // Feet are followed by inches even where nothing says so: 2' 6. Otherwise a figure without a unit stands alone.
    private static NamedUnit? Unnamed(NamedUnit? last, LengthUnit unit) => last switch
    {
        null => NamedUnit.Of(unit),
        { IsFoot: true } => NamedUnit.Of(LengthUnit.Inch),
        _ => null,
    };

    // Multiplied before it is divided, so that a fraction that falls on half a step is seen to.
    private static decimal Steps(Match term, decimal stepsOfUnit)
    {
        if (!term.Groups["lower"].Success)
        {
            return Number(term.Groups["decimal"].Value.Replace(',', '.')) * stepsOfUnit;
        }

        decimal whole = term.Groups["whole"].Success ? Number(term.Groups["whole"].Value) : 0;
        decimal lower = Number(term.Groups["lower"].Value);
        return ((whole * lower) + Number(term.Groups["upper"].Value)) * stepsOfUnit / lower;
    }

    private static decimal Number(string digits) =>
        decimal.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static LengthNotRead Unread(string text, LengthUnit unit) =>
        new($"\"{text}\" is no length. {Expected(unit)}");

    private static string Expected(LengthUnit unit) =>
        $"Expected a number of {LengthText.Abbreviation(unit)} such as 16.5, or text such as \"16 1/2\", \"41 cm\", \"410 mm\", \"8 in\", \"2 ft 6 in\".";

    [GeneratedRegex(
        @"\G\s*-?\s*(?<figure>(?:(?<whole>[0-9]+)(?:\s+|\s*-\s*))?(?<upper>[0-9]+)\s*/\s*(?<lower>[0-9]+)|(?<decimal>[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+))\s*(?<unit>[a-z]+|['""])?\.?\s*",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant)]
    private static partial Regex Term();
}
