using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Drafting;

/// <summary>Sentences that more than one drawing says.</summary>
internal static class Wording
{
    /// <summary>"8 × 10", as a tape shows it.</summary>
    public static string Size(Length width, Length height, LengthUnit unit) =>
        $"{LengthText.FormatFigure(width, unit)} × {LengthText.FormatFigure(height, unit)}";

    public static string Copies(int copies) => copies == 1
        ? "cut one like this"
        : string.Create(CultureInfo.InvariantCulture, $"cut {copies} like this");

    /// <summary>The drawing in words, for who cannot see it.</summary>
    public static string Describe(string head, ImmutableArray<DraftKey> keys, ImmutableArray<Offcut> offcuts, LengthUnit unit)
    {
        string pieces = string.Join("; ", keys.Select(key => $"{key.Mark}, {key.Text}"));
        List<Offcut> kept = [.. offcuts.Where(offcut => offcut.Kept)];
        string back = kept.Count == 0
            ? "Nothing goes back on the rack."
            : $"Back on the rack: {string.Join("; ", kept.Select(offcut => Wording.Size(offcut.Width, offcut.Height, unit)))}.";
        return $"{head} Pieces: {pieces}. {back} Sizes in {LengthText.Abbreviation(unit)}.";
    }
}
