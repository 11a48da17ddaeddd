using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>What stands on a slip, in lines that fit.</summary>
internal static class SlipText
{
    public const double CautionSize = 2.7;
    public const double LineSize = 3.4;

    private const double CautionRoom = 184;

    // Beside the box to tick.
    private const double PassRoom = 181;

    /// <summary>"Fence 7 15/16 in".</summary>
    public static string Head(SlipEntry entry, LengthUnit unit, SlipWords words)
    {
        string tool = entry.Step.Tool == SawTool.Sled ? words.Sled : words.Fence;
        return $"{tool} {words.Length(entry.Step.Fence, unit)}{(entry.Continued ? $" {words.Continued}" : "")}";
    }

    /// <summary>A step's passes, those together at which a like workpiece is cut in the same way.</summary>
    public static IEnumerable<ImmutableArray<SawPass>> Alike(Plan plan, SawStep step) => step.Passes
        .GroupBy(pass =>
        {
            var sheet = plan.Sheets[pass.Sheet - 1];
            var cut = sheet.Cuts[pass.Cut - 1];
            return (Parts(cut, sheet.Kerf), cut.Width, cut.Height, pass.Edge, pass.EdgeBy);
        })
        .Select(group => group.ToImmutableArray());

    /// <summary>"Sheet 1, 2 × · cut 4: 24 × 16 → 8 × 16 and 15 7/8 × 16 · left edge, factory", in as many lines as it takes.</summary>
    public static IEnumerable<SlipLine> PassLines(Plan plan, ImmutableArray<SawPass> alike, SlipWords words, double forPictures) =>
        Lettering.Wrapped(Pass(plan, alike, words), LineSize, PassRoom - forPictures).Select((line, i) => new SlipLine(line, i == 0));

    /// <summary>
    /// The cautions in lines that fit the paper: in full, or the danger alone where the page has said the rest further up. The last
    /// caution of all stands in the foot of every page.
    /// </summary>
    public static ImmutableArray<string> CautionLines(SawStep step, SlipWords words, IReadOnlySet<string> said)
    {
        var own = step.Cautions.Where(caution => caution.Id != "manual-first").ToLookup(caution => said.Contains(caution.Id));
        string again = string.Join(" · ", own[true].Select(words.Danger));
        return
        [
            .. own[false].SelectMany(caution => Lettering.Wrapped(words.Caution(caution), CautionSize, CautionRoom)),
            .. again.Length > 0 ? Lettering.Wrapped(again, CautionSize, CautionRoom) : [],
        ];
    }

    /// <summary>What a cut leaves; zero or less where there is nothing.</summary>
    public static ((Length Width, Length Height) Near, (Length Width, Length Height) Far) Parts(SheetCut cut, Length kerf) => cut.Axis == Axis.X
        ? ((cut.At - cut.X, cut.Height), (cut.X + cut.Width - cut.At - kerf, cut.Height))
        : ((cut.Width, cut.At - cut.Y), (cut.Width, cut.Y + cut.Height - cut.At - kerf));

    private static string Pass(Plan plan, ImmutableArray<SawPass> alike, SlipWords words)
    {
        var sheet = plan.Sheets[alike[0].Sheet - 1];
        var cut = sheet.Cuts[alike[0].Cut - 1];
        var (near, far) = Parts(cut, sheet.Kerf);
        string parts = string.Join($" {words.And} ", new[] { near, far }
            .Where(part => part.Width > Length.Zero && part.Height > Length.Zero)
            .Select(part => words.Size(part, plan.Order.Units)));
        string edge = $"{words.Edge(alike[0].Edge)}{(alike[0].EdgeBy == EdgeMaker.Factory ? $", {words.Factory}" : "")}";
        string which = string.Join("; ", alike.GroupBy(pass => pass.Cut).Select(group =>
            $"{words.Sheet([.. group.Select(pass => (pass.Sheet, plan.Sheets[pass.Sheet - 1].Copies))])} · {words.Cut(group.Key)}"));
        return $"{which}{words.Colon}{words.Size((cut.Width, cut.Height), plan.Order.Units)} → {parts} · {edge}";
    }
}
