using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>Shares a run's entries out over pages that fit on either paper.</summary>
internal static class SlipPages
{
    public const double Top = 30;

    // The lower of the two papers, less head and foot.
    private const double Room = 279.4 - Top - 18;
    private const int PassesInOne = 18;

    public static List<ImmutableArray<SlipEntry>> Of(Plan plan)
    {
        var pages = new List<ImmutableArray<SlipEntry>>();
        var page = ImmutableArray.CreateBuilder<SlipEntry>();
        double used = 0;
        foreach (var entry in plan.SawRun.SelectMany(EntriesOf))
        {
            double height = entry.Height(SlipText.CautionLines(entry).Count);
            if (page.Count > 0 && used + height > Room)
            {
                pages.Add(page.ToImmutable());
                page.Clear();
                used = 0;
            }

            page.Add(entry);
            used += height;
        }

        pages.Add(page.ToImmutable());
        return pages;
    }

    private static IEnumerable<SlipEntry> EntriesOf(SawStep step) =>
        step.Passes.Chunk(PassesInOne).Select((passes, i) => new SlipEntry(step, [.. passes], i > 0));
}
