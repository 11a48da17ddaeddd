using System.Collections.Immutable;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>A sheet on the supplier's slip, or what of a long one goes on here.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Cuts">Its first cuts that stand in this entry, in lines with a box to tick at each cut's first.</param>
/// <param name="Parts">What comes out in the end, in lines; said with the last cuts.</param>
internal sealed record SupplierEntry(SheetLayout Sheet, ImmutableArray<SlipLine> Cuts, ImmutableArray<string> Parts)
{
    public const double HeadHeight = 10;
    public const double LineHeight = 5;
    public const double PictureHeight = 62;
    public const double PictureWidth = 62;

    private const double Room = SlipSheet.Width - 11 - PictureWidth;
    private const int CutsInOne = 24;

    // What is trimmed off is not worth naming.
    private static readonly Length Strip = Length.FromInches(1);

    /// <summary>Height on paper, in millimetres.</summary>
    public double Height => Math.Max(PictureHeight + 4, HeadHeight + ((Cuts.Length + Parts.Length) * LineHeight) + 4) + 4;

    /// <summary>The entries of a plan.</summary>
    public static IEnumerable<SupplierEntry> Of(Plan plan, SlipWords words) => plan.Sheets
        .Where(sheet => sheet.Cuts.Any(cut => cut.BySupplier))
        .SelectMany(sheet => Of(plan, sheet, words));

    private static IEnumerable<SupplierEntry> Of(Plan plan, SheetLayout sheet, SlipWords words)
    {
        var unit = plan.Order.Units;
        SheetCut[][] chunks = [.. sheet.Cuts.Where(cut => cut.BySupplier).Chunk(CutsInOne)];
        string kerf = words.Length(sheet.Cuts[0].SupplierKerf!.Value, unit);
        string parts = string.Join("; ", SupplierParts.Of(sheet)
            .Where(part => Length.Min(part.Width, part.Height) >= Strip)
            .GroupBy(part => words.Size((part.Width, part.Height), unit))
            .Select(group => group.Count() == 1 ? group.Key : FormattableString.Invariant($"{group.Count()} × ({group.Key})")));
        for (int i = 0; i < chunks.Length; i++)
        {
            bool last = i == chunks.Length - 1;
            yield return new SupplierEntry(
                sheet,
                [.. chunks[i].SelectMany(cut => Lettering.Wrapped(Line(cut, unit, words), SlipText.LineSize, Room).Select((line, k) => new SlipLine(line, k == 0)))],
                last ? [.. Lettering.Wrapped(words.Parts(parts), SlipText.LineSize, Room), .. Lettering.Wrapped(words.Kerf(kerf), SlipText.LineSize, Room)] : []);
        }
    }

    /// <summary>"1. 48 × 96: 47 7/8 in from the top edge".</summary>
    private static string Line(SheetCut cut, LengthUnit unit, SlipWords words)
    {
        bool across = cut.Axis == Cutting.Axis.X;
        string distance = words.Length(cut.At - (across ? cut.X : cut.Y), unit);
        string measured = words.Measured(distance, across ? SheetEdge.Left : SheetEdge.Top);
        return FormattableString.Invariant($"{cut.Number}. {words.Size((cut.Width, cut.Height), unit)}{words.Colon}{measured}");
    }
}

/// <summary>What the supplier's cuts leave of a sheet.</summary>
internal static class SupplierParts
{
    /// <summary>The parts, in the order in which the cuts leave them.</summary>
    public static IReadOnlyList<(Length X, Length Y, Length Width, Length Height)> Of(SheetLayout sheet)
    {
        var parts = new List<(Length X, Length Y, Length Width, Length Height)> { (Length.Zero, Length.Zero, sheet.Board.Width, sheet.Board.Height) };
        foreach (var cut in sheet.Cuts.Where(cut => cut.BySupplier).OrderBy(cut => cut.Number))
        {
            parts.Remove((cut.X, cut.Y, cut.Width, cut.Height));
            var (near, far) = SlipText.Parts(cut, cut.SupplierKerf!.Value);
            var beyond = cut.At + cut.SupplierKerf.Value;
            parts.Add((cut.X, cut.Y, near.Width, near.Height));
            parts.Add(cut.Axis == Cutting.Axis.X ? (beyond, cut.Y, far.Width, far.Height) : (cut.X, beyond, far.Width, far.Height));
        }

        return [.. parts.Where(part => part.Width > Length.Zero && part.Height > Length.Zero)];
    }
}
