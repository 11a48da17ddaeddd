using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Days;

/// <summary>
/// The work of a plan, step after step, by one pair of hands: the minutes are those the tally counts labour by.
/// Panels of one size share a stack; there are as many rounds of the press as its spaces ask for, and a round is
/// trimmed the morning after. One coat a morning. Nothing overlaps but the press with the night: a plain order of
/// work, not the shortest there is.
/// </summary>
public static class BenchSteps
{
    /// <summary>What the shop trip is taken to last; common practice without a source.</summary>
    public const int ErrandMinutes = 60;

    /// <summary>The part of <see cref="WorkMinutes.Mount"/> that is trimming, after the press; common practice without a source.</summary>
    public const int TrimMinutes = 2;

    /// <summary>The steps, in the order they are done. Made one by one: a large batch has a great many.</summary>
    /// <param name="plan">The plan.</param>
    public static IEnumerable<BenchStep> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Cutting(plan).Concat(Mounting(plan)).Concat(Coating(plan));
    }

    private static IEnumerable<BenchStep> Cutting(Plan plan)
    {
        if (!plan.Buy.IsEmpty)
        {
            yield return new BenchStep(BenchTask.Errand, 1, 0, ErrandMinutes);
        }

        if (Made(plan, line => line.NeedsBoard) is > 0 and var boards)
        {
            yield return new BenchStep(BenchTask.Saw, 1, boards, boards * WorkMinutes.Board);
        }

        if (Made(plan, line => line.NeedsCloth) is > 0 and var cloths)
        {
            yield return new BenchStep(BenchTask.CutCloth, 1, cloths, cloths * WorkMinutes.Cloth);
        }
    }

    private static IEnumerable<BenchStep> Mounting(Plan plan)
    {
        int round = 0;
        foreach (int[] stacks in Stacks(plan).Chunk(plan.Order.Bench.PressSpaces))
        {
            long panels = stacks.Sum(stack => (long)stack);
            round++;
            yield return new BenchStep(BenchTask.Glue, round, panels, panels * (WorkMinutes.Mount - TrimMinutes));
            yield return new BenchStep(BenchTask.Press, round, panels, plan.Order.Bench.PressHours * 60);
            yield return new BenchStep(BenchTask.Trim, round, panels, panels * TrimMinutes, NextMorning: true);
        }
    }

    // How many panels stand in each stack; a panel and the same one turned share a stack.
    private static IEnumerable<int> Stacks(Plan plan)
    {
        int height = plan.Order.Bench.StackHeight;
        foreach (var size in plan.Panels.Where(panel => panel.Line.Surface == Surface.Cloth).GroupBy(SizeOf))
        {
            for (long left = size.Sum(panel => (long)panel.Made); left > 0; left -= height)
            {
                yield return (int)Math.Min(left, height);
            }
        }
    }

    private static (long Short, long Long) SizeOf(PanelResult panel) => (
        Math.Min(panel.Line.Width.Steps, panel.Line.Height.Steps),
        Math.Max(panel.Line.Width.Steps, panel.Line.Height.Steps));

    private static IEnumerable<BenchStep> Coating(Plan plan)
    {
        List<(int Coats, long Made)> lines = [.. plan.Panels.Select(panel => (Coats(plan, panel.Line.Mark), (long)panel.Made))];
        int most = lines.Select(line => line.Coats).DefaultIfEmpty().Max();
        for (int coat = 1; coat <= most; coat++)
        {
            long panels = lines.Where(line => line.Coats >= coat).Sum(line => line.Made);
            if (panels > 0)
            {
                yield return new BenchStep(BenchTask.Coat, coat, panels, panels * WorkMinutes.Coat, NextMorning: coat > 1);
            }
        }
    }

    private static int Coats(Plan plan, string mark) => plan.Liquids
        .Where(use => !use.IsAdhesive && use.Shares.Any(share => share.Mark == mark))
        .Sum(use => use.Liquid.Coats);

    private static long Made(Plan plan, Func<PanelLine, bool> which) =>
        plan.Panels.Where(panel => which(panel.Line)).Sum(panel => (long)panel.Made);
}
