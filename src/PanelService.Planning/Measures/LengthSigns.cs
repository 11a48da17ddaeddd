using System.Text;

namespace PanelService.Planning.Measures;

/// <summary>Makes signs that mean the same one sign: primes and quotes, dashes, spaces, fraction characters.</summary>
internal static class LengthSigns
{
    private const string Primes = "\u2032\u2018\u2019\u00B4`";
    private const string DoublePrimes = "\u2033\u201C\u201D";
    private const string Dashes = "\u2010\u2011\u2012\u2013\u2014\u2212";
    private const string Slashes = "\u2044\u2215";

    // Each fraction character with what it stands for; the space keeps 16½ from becoming 161/2.
    private const string Fractions =
        "\u00BC1/4 \u00BD1/2 \u00BE3/4 \u21501/7 \u21511/9 \u21521/10 \u21531/3 \u21542/3 \u21551/5 \u21562/5 "
        + "\u21573/5 \u21584/5 \u21591/6 \u215A5/6 \u215B1/8 \u215C3/8 \u215D5/8 \u215E7/8";

    private static readonly Dictionary<char, string> Signs = Table();

    /// <summary>The text in lower case with plain signs, trimmed, without the mark of a rounded figure behind it.</summary>
    internal static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            if (Signs.TryGetValue(c, out string? sign))
            {
                plain.Append(sign);
            }
            else
            {
                plain.Append(char.IsWhiteSpace(c) ? ' ' : char.ToLowerInvariant(c));
            }
        }

        string trimmed = plain.Replace("''", "\"").ToString().Trim();
        return trimmed is [.. var shown, '±'] ? shown.TrimEnd() : trimmed;
    }

    private static Dictionary<char, string> Table()
    {
        var table = Fractions.Split(' ').ToDictionary(f => f[0], f => " " + f[1..]);
        foreach ((string signs, string plain) in new[] { (Primes, "'"), (DoublePrimes, "\""), (Dashes, "-"), (Slashes, "/") })
        {
            foreach (char sign in signs)
            {
                table.Add(sign, plain);
            }
        }

        return table;
    }
}
