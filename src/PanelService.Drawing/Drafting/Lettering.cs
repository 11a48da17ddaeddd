using System.Globalization;
using System.Text;
using System.Xml;

namespace PanelService.Drawing.Drafting;

/// <summary>
/// How wide a text will be. The drawing cannot know the reader's font, so a letter is as wide as in the widest of the common
/// sans-serifs (measured on DejaVu Sans, which runs a tenth wider than the usual ones, and Liberation Sans): what fits
/// here fits everywhere. Letters are told apart as finely as that lines are not ended early for being thought wider than they are.
/// </summary>
internal static class Lettering
{
    public const string Family = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

    /// <summary>Width of a text in units of its size.</summary>
    public static double Width(string text)
    {
        double width = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            width += Width(rune);
        }

        return width;
    }

    /// <summary>The text, or as much of it as fits with an ellipsis.</summary>
    public static string Fit(string text, double size, double room)
    {
        if (Width(text) * size <= room)
        {
            return text;
        }

        var kept = new StringBuilder();
        double width = Width(new Rune('…'));
        foreach (Rune rune in text.EnumerateRunes())
        {
            width += Width(rune);
            if (width * size > room)
            {
                break;
            }

            kept.Append(rune);
        }

        return kept.ToString().TrimEnd() + "…";
    }

    /// <summary>A text in lines that fit; what has no space in it is as long as it is.</summary>
    public static IEnumerable<string> Wrapped(string text, double size, double room)
    {
        string line = "";
        foreach (string word in Clean(text).Split(' '))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Width(longer) * size > room)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    /// <summary>The text without what XML cannot carry; line breaks become spaces.</summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Rune.IsControl(rune))
            {
                clean.Append(' ');
            }
            else if (rune.Value > char.MaxValue || XmlConvert.IsXmlChar((char)rune.Value))
            {
                clean.Append(rune);
            }
        }

        return clean.ToString().Trim();
    }

    private static double Width(Rune rune) => rune.Value switch
    {
        ' ' or '\u00a0' or '.' or ',' or ':' or ';' or '\'' or '’' or '·' or '|' or '/' or 'i' or 'j' or 'l' or 'I' => 0.34,
        'f' or 't' or 'r' or '(' or ')' or '[' or ']' or '-' or '!' => 0.42,
        's' or 'c' or 'z' or '?' or '*' or '°' or 'J' => 0.56,
        '×' or '±' or '+' or '=' or '<' or '>' or '#' or 'w' => 0.84,
        'm' or 'M' or 'W' or '%' or '—' or '…' or '→' => 1.0,
        '@' or 'œ' => 1.03,
        'A' or 'B' or 'E' or 'F' or 'K' or 'L' or 'P' or 'S' or 'T' or 'V' or 'X' or 'Y' or 'Z' => 0.69,
        _ when rune.Value >= 0x2E80 => 1.05,
        _ when Rune.GetUnicodeCategory(rune) == UnicodeCategory.UppercaseLetter => 0.79,
        _ => 0.64,
    };
}
