using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>A page of the slip beside the saw.</summary>
internal static class SlipPage
{
    private const double HeadSize = 8;

    public static string Render(
        Plan plan, (LabelPaper Paper, SlipWords Words) print, (int Number, int Of) page, ImmutableArray<SlipEntry> entries)
    {
        var (paper, words) = print;
        string batch = Lettering.Clean(plan.Order.Title);
        string summary = plan.SawRun.IsEmpty ? words.NothingSawn : words.Summary(plan.SawProof);
        return SlipSheet.Render(
            "saw-slip",
            paper,
            (batch.Length == 0 ? words.SawRun : batch, words.Page(words.SawRun, page.Number, page.Of), summary, words.Foot),
            Entries(plan, entries, SlipSheet.LeftOn(paper), words));
    }

    private static List<XElement> Entries(Plan plan, ImmutableArray<SlipEntry> entries, double left, SlipWords words)
    {
        var drawn = new List<XElement>();
        double top = SlipPages.Top;
        foreach (var entry in entries)
        {
            drawn.Add(Entry(plan, entry, (left, top), words));
            top += entry.Height;
        }

        return drawn;
    }

    private static XElement Entry(Plan plan, SlipEntry entry, (double Left, double Top) at, SlipWords words)
    {
        var (left, top) = at;
        double forPictures = SlipEntry.ForPictures(entry.Passes);
        var group = Ink.Group(
            "step",
            new XAttribute("data-step", entry.Step.Step),
            SlipSheet.Rule(left, top - 1),
            SlipSheet.Tick(left, top + 1.5, 6),
            SlipSheet.Text(entry.Step.Step.ToString(CultureInfo.InvariantCulture), left + 15, top + 7.5, HeadSize, 8, SlipSheet.Bold, ("text-anchor", "end")),
            SlipSheet.Text(SlipText.Head(entry, plan.Order.Units, words), left + 20, top + 7.5, HeadSize, SlipSheet.Width - 20 - forPictures, SlipSheet.Bold));
        double y = top + SlipEntry.HeadHeight + 2.5;
        foreach (var line in entry.Lines)
        {
            group.Add(line.IsFirst ? SlipSheet.Tick(left + 4, y - 2.4, 2.6) : null, SlipSheet.Text(line.Text, left + 9, y, SlipText.LineSize, SlipSheet.Width - 9 - forPictures));
            y += SlipEntry.LineHeight;
        }

        group.Add(entry.Drawn.Select((sheet, i) => SlipPicture.Draw(
            plan.Sheets[sheet - 1],
            [.. entry.Passes.Where(pass => pass.Sheet == sheet).Select(pass => pass.Cut)],
            new Box(left + SlipSheet.Width - forPictures + 2 + (i * (SlipEntry.PictureWidth + 1)), top + 1, SlipEntry.PictureWidth, SlipEntry.PictureHeight - 2))));
        y = Math.Max(y, top + SlipEntry.PictureHeight + 2);
        foreach (string line in entry.Cautions)
        {
            group.Add(SlipSheet.Text(line, left + 3, y, SlipText.CautionSize, SlipSheet.Width - 3));
            y += SlipEntry.CautionHeight;
        }

        return group;
    }
}
