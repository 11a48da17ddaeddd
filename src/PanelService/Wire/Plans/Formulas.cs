using System.Text;

namespace PanelService.Wire.Plans;

/// <summary>
/// Text that a spreadsheet must not take for a formula, by OWASP's advice on CSV injection: an apostrophe before what could
/// begin one. The writer sees to a field's first sign; this sees to what its list cannot hold (full-width signs, NUL), and to
/// what becomes a first sign where the spreadsheet parts cells at semicolons, tabs or line ends, as many do by their country.
/// </summary>
internal static class Formulas
{
    private const string Leads = "=+-@" + NotInItsList;
    private const string NotInItsList = "＝＋－＠\0";
    private const string Parting = ";\t\r\n";

    internal static string Disarm(string text)
    {
        var safe = new StringBuilder(text.Length + 1);
        bool isFirst = text.Length > 0 && NotInItsList.Contains(text[0], StringComparison.Ordinal);
        foreach (char sign in text)
        {
            if (isFirst && Leads.Contains(sign, StringComparison.Ordinal))
            {
                safe.Append('\'');
            }

            safe.Append(sign);

            // Blanks and quotes before it do not make a formula harmless.
            isFirst = Parting.Contains(sign, StringComparison.Ordinal) || (isFirst && (sign is ' ' or '"'));
        }

        return safe.ToString();
    }
}
