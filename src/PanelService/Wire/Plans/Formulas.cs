using System.Text;

namespace PanelService.Wire.Plans;

/// <summary>
/// Text that a spreadsheet must not take for a formula, by OWASP's advice on CSV injection: an apostrophe before what could
/// begin one, at the cell's start and where a spreadsheet may part it in two: many part at semicolons, by their country.
/// <see cref="Arm"/> takes exactly those apostrophes away again.
/// </summary>
internal static class Formulas
{
    private const char Shield = '\'';
    private const string Leads = "=+-@＝＋－＠\t\r\n\0";
    private const string Parting = ";\t\r\n";

    internal static string Disarm(string text)
    {
        var safe = new StringBuilder(text.Length + 1);
        bool isFirst = true;
        for (int at = 0; at < text.Length; at++)
        {
            if (isFirst && LeadsAt(text, at))
            {
                safe.Append(Shield);
            }

            safe.Append(text[at]);
            isFirst = StaysFirst(isFirst, text[at]);
        }

        return safe.ToString();
    }

    internal static string Arm(string cell)
    {
        var text = new StringBuilder(cell.Length);
        bool isFirst = true;
        for (int at = 0; at < cell.Length; at++)
        {
            if (isFirst && cell[at] == Shield && LeadsAt(cell, at + 1))
            {
                at++;
            }

            text.Append(cell[at]);
            isFirst = StaysFirst(isFirst, cell[at]);
        }

        return text.ToString();
    }

    // Apostrophes that were there before count with what follows them: so that arming knows which one is ours.
    private static bool LeadsAt(string text, int at)
    {
        while (at < text.Length && text[at] == Shield)
        {
            at++;
        }

        return at < text.Length && Leads.Contains(text[at], StringComparison.Ordinal);
    }

    // Blanks and quotes before it do not make a formula harmless.
    private static bool StaysFirst(bool isFirst, char sign) =>
        Parting.Contains(sign, StringComparison.Ordinal) || (isFirst && (sign is ' ' or '"'));
}
