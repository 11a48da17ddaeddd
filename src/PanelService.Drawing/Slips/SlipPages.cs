using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>Shares a run's entries out over pages that fit on either paper.</summary>
internal static class SlipPages
{
    public const double Top = 30;

    // The lower of the two papers, less head and foot.
    private const double Room = 279.4 - Top - 18;
    private const int PassesInOne = 12;

    public static List<ImmutableArray<SlipEntry>> Of(Plan plan, SlipWords words) =>
        Shared(plan.SawRun.SelectMany(step => EntriesOf(plan, step, words)), entry => entry.Height);

    /// <summary>Shares anything with a height out over pages; one page where there is nothing.</summary>
    public static List<ImmutableArray<T>> Shared<T>(IEnumerable<T> entries, Func<T, double> height)
    {
        var pages = new List<ImmutableArray<T>>();
        var page = ImmutableArray.CreateBuilder<T>();
        double used = 0;
        foreach (var entry in entries)
        {
            if (page.Count > 0 && used + height(entry) > Room)
            {
                pages.Add(page.ToImmutable());
                page.Clear();
                used = 0;
            }

            page.Add(entry);
            used += height(entry);
        }

        pages.Add(page.ToImmutable());
        return pages;
    }

    private static IEnumerable<SlipEntry> EntriesOf(Plan plan, SawStep step, SlipWords words) =>
        step.Passes.Chunk(PassesInOne).Select((passes, i) => new SlipEntry(
            step,
            [.. passes],
            i > 0,
            [.. passes.SelectMany(pass => SlipText.PassLines(plan, pass, words, SlipEntry.ForPictures(passes)))],
            i > 0 ? [] : SlipText.CautionLines(step, words)));
}
