using System.Globalization;
using PanelService.Cutting;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>What stands on the slip, in words.</summary>
internal static class SlipText
{
    public const double CautionSize = 2.6;
    public const double CautionRoom = 184;

    /// <summary>"Fence 7 15/16 in".</summary>
    public static string Head(SlipEntry entry, LengthUnit unit)
    {
        string tool = entry.Step.Tool == SawTool.Sled ? "Sled stop" : "Fence";
        return $"{tool} {LengthText.Format(entry.Step.Fence, unit)}{(entry.Continued ? " (continued)" : "")}";
    }

    /// <summary>"Sheet 1, 2 × · cut 4: 24 × 16 → 8 × 16 and 15 7/8 × 16 · left edge, factory".</summary>
    public static string Pass(Plan plan, SawPass pass)
    {
        var sheet = plan.Sheets[pass.Sheet - 1];
        var cut = sheet.Cuts[pass.Cut - 1];
        var (near, far) = Parts(cut, sheet.Kerf);
        string copies = sheet.Copies == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", {sheet.Copies} ×");
        string parts = string.Join(" and ", new[] { near, far }
            .Where(part => part.Width > Length.Zero && part.Height > Length.Zero)
            .Select(part => Size(part, plan.Order.Units)));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Sheet {sheet.Number}{copies} · cut {cut.Number}: {Size((cut.Width, cut.Height), plan.Order.Units)} → {parts} · {Edge(pass)}");
    }

    /// <summary>The cautions in lines that fit the paper; the last line of all stands in the foot of every page.</summary>
    public static List<string> CautionLines(SlipEntry entry)
    {
        var lines = new List<string>();
        foreach (string words in entry.Cautions.Where(caution => caution.Id != "manual-first").Select(caution => caution.Text))
        {
            lines.AddRange(Wrapped(words));
        }

        return lines;
    }

    private static IEnumerable<string> Wrapped(string words)
    {
        string line = "";
        foreach (string word in words.Split(' '))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (Lettering.Width(longer) * CautionSize > CautionRoom)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    private static string Size((Length Width, Length Height) part, LengthUnit unit) =>
        $"{LengthText.FormatFigure(part.Width, unit)} × {LengthText.FormatFigure(part.Height, unit)}";

    private static string Edge(SawPass pass)
    {
        string edge = pass.Edge switch
        {
            SheetEdge.Left => "left",
            SheetEdge.Right => "right",
            SheetEdge.Bottom => "bottom",
            _ => "top",
        };
        return $"{edge} edge{(pass.EdgeBy == EdgeMaker.Factory ? ", factory" : "")}";
    }

    private static ((Length Width, Length Height) Near, (Length Width, Length Height) Far) Parts(SheetCut cut, Length kerf) => cut.Axis == Axis.X
        ? ((cut.At - cut.X, cut.Height), (cut.X + cut.Width - cut.At - kerf, cut.Height))
        : ((cut.Width, cut.At - cut.Y), (cut.Width, cut.Y + cut.Height - cut.At - kerf));
}
