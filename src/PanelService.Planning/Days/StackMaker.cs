using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Days;

/// <summary>
/// Parts what is glued into stacks: panels of one size together, what is needed first at the front, so that tonight's
/// press is full of that; what is left of a stack's height is filled with others of the size.
/// </summary>
internal static class StackMaker
{
    private const decimal GramsPerKilogram = 1000;
    private const decimal PascalsPerKilopascal = 1000;

    /// <summary>Standard gravity, m/s² (exact by definition, NIST SP 811).</summary>
    private const decimal Gravity = 9.80665m;

    /// <summary>How many stacks there will be.</summary>
    public static long Count(Order order, ImmutableArray<PanelResult> panels) =>
        Sizes(panels).Sum(size => (size.Sum(panel => (long)panel.Made) + Height(order) - 1) / Height(order));

    /// <summary>Makes them.</summary>
    /// <param name="order">The order.</param>
    /// <param name="panels">The lines whose cloth is mounted.</param>
    /// <param name="liquids">The liquids used.</param>
    public static ImmutableArray<PressStack> Of(Order order, ImmutableArray<PanelResult> panels, ImmutableArray<LiquidUse> liquids) =>
    [
        .. Sizes(panels)
            .SelectMany(size => Chunks(size.OrderByDescending(panel => panel.Line.First), Height(order)).Select(chunk => (size.Key, chunk)))
            .OrderByDescending(stack => stack.chunk.Any(part => part.Line.First))
            .Select((stack, i) => Stack(order, stack.Key, (i + 1, stack.chunk), liquids)),
    ];

    // A stack is laid in one go: no higher than a working day is long.
    private static long Height(Order order) =>
        Math.Max(1, Math.Min(order.Bench.StackHeight, (long)(order.Schedule.DayMinutes / WorkMinutes.Lay)));

    private static IEnumerable<IGrouping<(Length Short, Length Long), PanelResult>> Sizes(ImmutableArray<PanelResult> panels) => panels
        .Where(panel => panel.Made > 0)
        .GroupBy(panel => (Length.Min(panel.Line.Width, panel.Line.Height), Length.Max(panel.Line.Width, panel.Line.Height)));

    private static IEnumerable<ImmutableArray<(PanelLine Line, long Count)>> Chunks(IEnumerable<PanelResult> panels, long height)
    {
        var chunk = ImmutableArray.CreateBuilder<(PanelLine, long)>();
        long room = height;
        foreach (var panel in panels)
        {
            for (long left = panel.Made; left > 0;)
            {
                long taken = Math.Min(left, room);
                chunk.Add((panel.Line, taken));
                (left, room) = (left - taken, room - taken);
                if (room == 0)
                {
                    yield return chunk.ToImmutable();
                    chunk.Clear();
                    room = height;
                }
            }
        }

        if (chunk.Count > 0)
        {
            yield return chunk.ToImmutable();
        }
    }

    private static PressStack Stack(
        Order order,
        (Length Short, Length Long) size,
        (int Number, ImmutableArray<(PanelLine Line, long Count)> Panels) stack,
        ImmutableArray<LiquidUse> liquids)
    {
        decimal open = stack.Panels.Min(part => BenchMinutes.UseOf(part.Line, liquids, isAdhesive: true)?.Liquid.OpenMinutes ?? order.Bench.OpenMinutes);
        decimal newtons = order.Bench.Pressure * PascalsPerKilopascal * (size.Short * size.Long).SquareMetres;
        return new PressStack
        {
            Number = stack.Number,
            Short = size.Short,
            Long = size.Long,
            Panels = [.. stack.Panels.Select(part => new MarkCount(part.Line.Mark, part.Count))],
            First = stack.Panels.Any(part => part.Line.First),
            Weight = new Weight(newtons / Gravity * GramsPerKilogram),
            PerRound = (int)Math.Max(1, Math.Floor(open / WorkMinutes.Lay)),
        };
    }
}
