// Problem: the sequence of settings stands; with which cuts is every sheet cut up in it?
// Idea:    the rest of a workpiece's cuts depend only on the workpiece and on the step it is there from, so the best way of
//          each is computed once: fewest cuts first, then fewest panels whose size is what another cut left over,
//          then the most that is left large enough to keep, then the earliest step. A cut is made at the first step from there
//          on that has its setting: waiting never helps its parts.
// Cost:    shapes × steps × splits.
using PanelService.Cutting;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>Chooses the cuts of a run.</summary>
/// <param name="sequence">The settings in the order of the run.</param>
/// <param name="keptOf">The area of a leftover, by its size grown by one kerf; 0 where it is too small to keep.</param>
internal sealed class CutChooser(int[] sequence, Func<long, long, long> keptOf)
{
    private const long Impossible = long.MaxValue / 8;
    private const long OneCut = 1L << 32;

    private readonly Dictionary<(CutShape Shape, int From), (long Cost, long Kept, ChosenCut? Cut)> _known = [];

    /// <summary>The best cut of a workpiece that is there from a step on; null: it is done, or cannot be cut any more.</summary>
    public ChosenCut? Of(CutShape shape, int from) => Best(shape, from).Cut;

    /// <summary>Whether a workpiece can be cut up from a step on.</summary>
    public bool CanCut(CutShape shape, int from = 0) => Best(shape, from).Cost < Impossible;

    private (long Cost, long Kept, ChosenCut? Cut) Best(CutShape shape, int from)
    {
        if (shape.IsDone)
        {
            return (0, shape.Arrangement.HoldsPanel ? 0 : keptOf(shape.Width, shape.Height), null);
        }

        if (_known.TryGetValue((shape, from), out var known))
        {
            return known;
        }

        (long Cost, long Kept, ChosenCut? Cut) best = (Impossible, 0, null);
        foreach (var split in shape.Splits)
        {
            foreach (bool near in new[] { true, false })
            {
                int step = NextStep(near ? split.NearSetting : split.FarSetting, from);
                if (step < 0)
                {
                    continue;
                }

                var (nearCost, nearKept, _) = split.Near is { } first ? Best(first, step) : Waste(shape, split, split.NearSize);
                var (farCost, farKept, _) = split.Far is { } second ? Best(second, step) : Waste(shape, split, ExtentOf(shape, split.Axis) - split.NearSize);
                long cost = Math.Min(Impossible, CostOf(split, near) + nearCost + farCost);
                if (cost < best.Cost || (cost == best.Cost && cost < Impossible && nearKept + farKept > best.Kept))
                {
                    best = (cost, nearKept + farKept, new ChosenCut(split, step, near));
                }
            }
        }

        _known.Add((shape, from), best);
        return best;
    }

    private (long Cost, long Kept, ChosenCut? Cut) Waste(CutShape shape, CutSplit split, long size) =>
        (0, split.IsTrim ? 0 : split.Axis == Axis.X ? keptOf(size, shape.Height) : keptOf(shape.Width, size), null);

    private static long ExtentOf(CutShape shape, Axis axis) => axis == Axis.X ? shape.Width : shape.Height;

    private int NextStep(int setting, int from) => setting < 0 ? -1 : Array.IndexOf(sequence, setting, from);

    private static long CostOf(CutSplit split, bool nearAtFence) => OneCut + LeftOver(nearAtFence ? split.Far : split.Near, split.Axis);

    /// <summary>How many panels get their final size along an axis by being left over.</summary>
    private static int LeftOver(CutShape? part, Axis axis) => part is null
        ? 0
        : part.Needed.Count(one => one.Panels > 0
            && (axis == Axis.X ? one.Width == part.Width : one.Height == part.Height));
}
