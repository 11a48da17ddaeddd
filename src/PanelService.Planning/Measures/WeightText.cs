using System.Globalization;
using System.Text.RegularExpressions;

namespace PanelService.Planning.Measures;

/// <summary>Weights as they are written.</summary>
public static partial class WeightText
{
    private const decimal Most = 1_000_000_000;

    /// <summary>Reads "20 lb", "9 kg", "9000 g", or a bare number; a comma may stand for the decimal point.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unit">The unit of lengths: a bare number is of lb beside inches, else of g.</param>
    /// <returns>The weight; null where the text is none, or is absurdly large.</returns>
    public static Weight? Parse(string text, LengthUnit unit)
    {
        var match = Pattern().Match(text);
        if (!match.Success
            || !decimal.TryParse(match.Groups[1].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            || value > Most)
        {
            return null;
        }

        return match.Groups[2].Value switch
        {
            "lb" => new Weight(value * Weight.GramsPerPound),
            "kg" => new Weight(value * 1000),
            "g" => new Weight(value),
            _ => Weight.From(value, unit),
        };
    }

    [GeneratedRegex(@"^\s*(\d+(?:[.,]\d+)?)\s*(lb|kg|g)?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
