using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Days;

/// <summary>
/// Writes the jobs of a batch: the errand, saw and cloth in goes of at most two hours, then lot by lot what its surface
/// asks for. A stack is a lot; primed and bare panels come in lots of a line. Lives for one batch.
/// </summary>
internal sealed class JobMaker(Order order, ImmutableArray<LiquidUse> liquids)
{
    // What one stands at without a break: common practice.
    private const int MostMinutes = 120;

    private readonly ImmutableArray<BenchJob>.Builder _jobs = ImmutableArray.CreateBuilder<BenchJob>();
    private readonly List<int> _first = [];

    /// <summary>All jobs of a batch.</summary>
    /// <param name="panels">The lines and wishes.</param>
    /// <param name="stacks">The stacks of those that are mounted.</param>
    /// <param name="buys">Whether there is something to buy.</param>
    public ImmutableArray<BenchJob> Of(ImmutableArray<PanelResult> panels, ImmutableArray<PressStack> stacks, bool buys)
    {
        int[] errand = buys ? [Add(new BenchJob { Number = 0, Task = BenchTask.Errand, Steps = [], Hands = WorkMinutes.Errand })] : [];
        int[] sawn = Cut(BenchTask.Saw, BenchStep.Cut, WorkMinutes.Cut, [.. panels.Where(panel => panel.Line.NeedsBoard)], errand);
        int[] cut = Cut(BenchTask.CutCloth, BenchStep.CutCloth, WorkMinutes.Cloth, [.. panels.Where(panel => panel.Line.NeedsCloth)], errand);
        foreach (var stack in stacks)
        {
            Mount(stack, panels, sawn, cut);
        }

        foreach (var panel in panels.Where(panel => panel.Made > 0 && panel.Line.NeedsBoard && !panel.Line.MountsNow))
        {
            Coat(panel.Line, panel.Made, sawn);
        }

        return _jobs.ToImmutable();
    }

    /// <summary>The jobs of mounting what was cut before: gluing, pressing, trimming.</summary>
    /// <param name="panels">The lines.</param>
    /// <param name="stacks">Their stacks.</param>
    public ImmutableArray<BenchJob> Mounting(ImmutableArray<PanelResult> panels, ImmutableArray<PressStack> stacks)
    {
        foreach (var stack in stacks)
        {
            Glue(stack, panels, after: []);
        }

        return _jobs.ToImmutable();
    }

    private int Most => Math.Min(MostMinutes, order.Schedule.DayMinutes);

    /// <summary>Cuts for all lines, one go after the other; the last is what everything waits for.</summary>
    private int[] Cut(BenchTask task, BenchStep step, decimal each, ImmutableArray<PanelResult> panels, int[] after)
    {
        foreach (var chunk in Chunks([.. panels.Where(panel => panel.Made > 0).Select(panel => new MarkCount(panel.Line.Mark, panel.Made))], each))
        {
            after = [Add(Job(task, [step], chunk, each, after))];
        }

        return after;
    }

    private void Mount(PressStack stack, ImmutableArray<PanelResult> panels, int[] sawn, int[] cut)
    {
        int[] ready = Prepare(stack.Panels, sawn, label: false);
        var sealed_ = Of(stack, panels, line => BenchMinutes.Seals(line, liquids));
        if (!sealed_.IsEmpty)
        {
            decimal hours = Lines(stack, panels).Max(line => BenchMinutes.DryHours(order, BenchMinutes.UseOf(line, liquids, isAdhesive: true)));
            ready = [.. Chunks(sealed_, WorkMinutes.Seal).Select(chunk =>
                Add(Job(BenchTask.Seal, [BenchStep.Seal], chunk, WorkMinutes.Seal, ready) with { Wait = BenchMinutes.Hours(hours) }))];
        }

        Glue(stack, panels, [.. ready, .. cut]);
    }

    private void Glue(PressStack stack, ImmutableArray<PanelResult> panels, int[] after)
    {
        int glued = Add(Job(BenchTask.Glue, [BenchStep.Glue, BenchStep.Press], stack.Panels, WorkMinutes.Lay, after) with
        {
            Stack = stack.Number,
            Wait = BenchMinutes.Hours(order.Bench.PressHours),
            TakesSpace = true,
            AfterHands = stack.First ? [] : [.. _first],
        });
        if (stack.First)
        {
            _first.Add(glued);
        }

        var cradled = Of(stack, panels, line => line.Cradle);
        var plain = cradled.IsEmpty ? ImmutableArray.Create(BenchStep.Trim, BenchStep.Edges, BenchStep.Label) : [BenchStep.Trim, BenchStep.Edges];
        decimal each = WorkMinutes.Trim + WorkMinutes.Edges + (cradled.IsEmpty ? WorkMinutes.Label : 0);
        int[] trimmed = [.. Chunks(stack.Panels, each).Select(chunk => Add(Job(BenchTask.Trim, plain, chunk, each, [glued]) with
        {
            Stack = stack.Number,
            Wait = cradled.IsEmpty ? BenchMinutes.Hours(order.Bench.RestHours) : 0,
        }))];
        Brace(cradled, stack.Panels, trimmed);
    }

    // What has no cradle of a stack that has some is labelled beside those that have.
    private void Brace(ImmutableArray<MarkCount> cradled, ImmutableArray<MarkCount> all, int[] after)
    {
        if (cradled.IsEmpty)
        {
            return;
        }

        int[] braced = Brace(cradled, after);
        foreach (var chunk in Chunks(all, WorkMinutes.Label))
        {
            Add(Job(BenchTask.Finish, [BenchStep.Label], chunk, WorkMinutes.Label, braced) with { Wait = BenchMinutes.Hours(order.Bench.RestHours) });
        }
    }

    private int[] Brace(ImmutableArray<MarkCount> cradled, int[] after) => cradled.IsEmpty
        ? after
        : [.. Chunks(cradled, WorkMinutes.Brace).Select(chunk => Add(
            Job(BenchTask.Brace, [BenchStep.Brace], chunk, WorkMinutes.Brace, after) with { Wait = BenchMinutes.Hours(order.Bench.ClampHours) }))];

    private void Coat(PanelLine line, long made, int[] sawn)
    {
        var primer = BenchMinutes.UseOf(line, liquids, isAdhesive: false);
        int faces = primer?.Liquid.Faces ?? 1;
        decimal brush = WorkMinutes.Brush * faces, sand = WorkMinutes.Sand * faces;
        bool plain = primer is null && !line.Cradle;
        foreach (var lot in Chunks([new MarkCount(line.Mark, made)], primer is null ? WorkMinutes.Ease + WorkMinutes.Dust + WorkMinutes.Label : brush + sand))
        {
            int[] after = Prepare(lot, sawn, label: plain);
            after = line.Cradle ? Brace(lot, after) : after;
            for (int coat = 1; coat <= (primer?.Liquid.Coats ?? 0); coat++)
            {
                var steps = coat > 1 ? ImmutableArray.Create(BenchStep.Sand, BenchStep.Coat) : [BenchStep.Coat];
                after = [Add(Job(BenchTask.Coat, steps, lot, coat > 1 ? brush + sand : brush, after) with
                {
                    Coat = coat,
                    Wait = BenchMinutes.Hours(BenchMinutes.DryHours(order, primer)),
                })];
            }

            if (!plain)
            {
                var steps = primer is null ? ImmutableArray.Create(BenchStep.Label) : [BenchStep.Sand, BenchStep.Label];
                Add(Job(BenchTask.Finish, steps, lot, (primer is null ? 0 : sand) + WorkMinutes.Label, after) with
                {
                    Wait = primer is null ? 0 : BenchMinutes.Hours(order.Bench.RestHours),
                });
            }
        }
    }

    private int[] Prepare(ImmutableArray<MarkCount> panels, int[] after, bool label)
    {
        decimal each = WorkMinutes.Ease + WorkMinutes.Dust + (label ? WorkMinutes.Label : 0);
        var steps = label ? ImmutableArray.Create(BenchStep.Ease, BenchStep.Dust, BenchStep.Label) : [BenchStep.Ease, BenchStep.Dust];
        return [.. Chunks(panels, each).Select(chunk => Add(Job(BenchTask.Prepare, steps, chunk, each, after)))];
    }

    private static ImmutableArray<MarkCount> Of(PressStack stack, ImmutableArray<PanelResult> panels, Func<PanelLine, bool> which) =>
        [.. stack.Panels.Where(part => which(panels.First(panel => panel.Line.Mark == part.Mark).Line))];

    private static IEnumerable<PanelLine> Lines(PressStack stack, ImmutableArray<PanelResult> panels) =>
        stack.Panels.Select(part => panels.First(panel => panel.Line.Mark == part.Mark).Line);

    private static BenchJob Job(BenchTask task, ImmutableArray<BenchStep> steps, ImmutableArray<MarkCount> panels, decimal each, int[] after) => new()
    {
        Number = 0,
        Task = task,
        Steps = steps,
        Panels = panels,
        Minutes = panels.Sum(panel => panel.Count) * each,
        Hands = Math.Max(1, (int)Math.Ceiling(panels.Sum(panel => panel.Count) * each)),
        After = [.. after],
    };

    private int Add(BenchJob job)
    {
        _jobs.Add(job with { Number = _jobs.Count + 1 });
        return _jobs.Count;
    }

    /// <summary>Parts panels into goes that are no longer than one stands at.</summary>
    private IEnumerable<ImmutableArray<MarkCount>> Chunks(ImmutableArray<MarkCount> panels, decimal each)
    {
        long most = Math.Max(1, (long)Math.Floor(Most / each));
        var chunk = ImmutableArray.CreateBuilder<MarkCount>();
        long room = most;
        foreach (var panel in panels)
        {
            for (long left = panel.Count; left > 0;)
            {
                long taken = Math.Min(left, room);
                chunk.Add(panel with { Count = taken });
                (left, room) = (left - taken, room - taken);
                if (room == 0)
                {
                    yield return chunk.ToImmutable();
                    chunk.Clear();
                    room = most;
                }
            }
        }

        if (chunk.Count > 0)
        {
            yield return chunk.ToImmutable();
        }
    }
}
