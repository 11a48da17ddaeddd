using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>What stands on a slip, in lines that fit.</summary>
internal static class SlipText
{
    public const double CautionSize = 2.6;
    public const double LineSize = 3;

    private const double CautionRoom = 184;

    // Beside the box to tick.
    private const double PassRoom = 181;

    /// <summary>"Fence 7 15/16 in".</summary>
    public static string Head(SlipEntry entry, LengthUnit unit, SlipWords words)
    {
        string tool = entry.Step.Tool == SawTool.Sled ? words.Sled : words.Fence;
        return $"{tool} {words.Length(entry.Step.Fence, unit)}{(entry.Continued ? $" {words.Continued}" : "")}";
    }

    /// <summary>"Sheet 1, 2 × · cut 4: 24 × 16 → 8 × 16 and 15 7/8 × 16 · left edge, factory", in as many lines as it takes.</summary>
    public static IEnumerable<SlipLine> PassLines(Plan plan, SawPass pass, SlipWords words, double forPictures) =>
        Wrapped(Pass(plan, pass, words), LineSize, PassRoom - forPictures).Select((line, i) => new SlipLine(line, i == 0));

    /// <summary>The cautions in lines that fit the paper; the last caution of all stands in the foot of every page.</summary>
    public static ImmutableArray<string> CautionLines(SawStep step, SlipWords words) =>
    [
        .. step.Cautions.Where(caution => caution.Id != "manual-first")
            .SelectMany(caution => Wrapped(words.Caution(caution), CautionSize, CautionRoom)),
    ];

    /// <summary>A text in lines that fit; what has no space in it is as long as it is.</summary>
    public static IEnumerable<string> Wrapped(string text, double size, double room)
    {
        string line = "";
        foreach (string word in Lettering.Clean(text).Split(' '))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Lettering.Width(longer) * size > room)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    /// <summary>What a cut leaves; zero or less where there is nothing.</summary>
    public static ((Length Width, Length Height) Near, (Length Width, Length Height) Far) Parts(SheetCut cut, Length kerf) => cut.Axis == Axis.X
        ? ((cut.At - cut.X, cut.Height), (cut.X + cut.Width - cut.At - kerf, cut.Height))
        : ((cut.Width, cut.At - cut.Y), (cut.Width, cut.Y + cut.Height - cut.At - kerf));

    private static string Pass(Plan plan, SawPass pass, SlipWords words)
    {
        var sheet = plan.Sheets[pass.Sheet - 1];
        var cut = sheet.Cuts[pass.Cut - 1];
        var (near, far) = Parts(cut, sheet.Kerf);
        string parts = string.Join($" {words.And} ", new[] { near, far }
            .Where(part => part.Width > Length.Zero && part.Height > Length.Zero)
            .Select(part => words.Size(part, plan.Order.Units)));
        string edge = $"{words.Edge(pass.Edge)}{(pass.EdgeBy == EdgeMaker.Factory ? $", {words.Factory}" : "")}";
        return $"{words.Sheet(sheet.Number, sheet.Copies)} · {words.Cut(cut.Number)}: {words.Size((cut.Width, cut.Height), plan.Order.Units)} → {parts} · {edge}";
    }
}
