using System.Globalization;

namespace PanelService.Wire.Orders;

/// <summary>Names given out where the request has none; never one that stands in the request.</summary>
internal static class Marks
{
    /// <summary>A, B, … Z, AA, AB … for each null, in order.</summary>
    internal static string[] GiveOut(IReadOnlyList<string?> given) => Fill(given, Letters);

    /// <summary>r1, r2, … for each null, in order.</summary>
    internal static string[] GiveOutNumbered(IReadOnlyList<string?> given, string prefix) =>
        Fill(given, index => string.Create(CultureInfo.InvariantCulture, $"{prefix}{index + 1}"));

    private static string[] Fill(IReadOnlyList<string?> given, Func<int, string> name)
    {
        HashSet<string> taken = [.. given.OfType<string>()];
        int next = 0;
        string NextFree()
        {
            string free;
            do
            {
                free = name(next++);
            }
            while (taken.Contains(free));
            return free;
        }

        return [.. given.Select(mark => mark ?? NextFree())];
    }

    private static string Letters(int index)
    {
        string letters = "";
        for (int rest = index; rest >= 0; rest = (rest / 26) - 1)
        {
            letters = (char)('A' + (rest % 26)) + letters;
        }

        return letters;
    }
}
