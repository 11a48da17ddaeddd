using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>Shares a run's entries out over pages that fit on either paper.</summary>
internal static class SlipPages
{
    public const double Top = 30;

    // The lower of the two papers, less head and foot.
    private const double Room = 279.4 - Top - 18;
    private const int LinesInOne = 10;

    /// <summary>The pages of a run. What a caution asks is said in full where it first comes up on a page.</summary>
    public static List<ImmutableArray<SlipEntry>> Of(Plan plan, SlipWords words)
    {
        var pages = new List<ImmutableArray<SlipEntry>>();
        var page = ImmutableArray.CreateBuilder<SlipEntry>();
        var said = new HashSet<string>();
        double used = 0;
        foreach (var (step, alike, continued) in plan.SawRun.SelectMany(step => PartsOf(plan, step)))
        {
            var entry = EntryOf(plan, step, (alike, continued), (words, said));
            if (page.Count > 0 && used + entry.Height > Room)
            {
                pages.Add(page.ToImmutable());
                page.Clear();
                said.Clear();
                used = 0;
                entry = EntryOf(plan, step, (alike, continued), (words, said));
            }

            page.Add(entry);
            used += entry.Height;
            said.UnionWith(continued ? [] : step.Cautions.Select(caution => caution.Id));
        }

        pages.Add(page.ToImmutable());
        return pages;
    }

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

    private static IEnumerable<(SawStep Step, ImmutableArray<SawPass>[] Alike, bool Continued)> PartsOf(Plan plan, SawStep step) =>
        SlipText.Alike(plan, step).Chunk(LinesInOne).Select((alike, i) => (step, alike, i > 0));

    private static SlipEntry EntryOf(
        Plan plan, SawStep step, (ImmutableArray<SawPass>[] Alike, bool Continued) part, (SlipWords Words, IReadOnlySet<string> Said) print)
    {
        ImmutableArray<SawPass> passes = [.. part.Alike.SelectMany(alike => alike)];
        double forPictures = SlipEntry.ForPictures(passes);
        return new SlipEntry(
            step,
            passes,
            part.Continued,
            [.. part.Alike.SelectMany(alike => SlipText.PassLines(plan, alike, print.Words, forPictures))],
            part.Continued ? [] : SlipText.CautionLines(step, print.Words, print.Said));
    }
}
