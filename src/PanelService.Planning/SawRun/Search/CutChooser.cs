// Problem: the sequence of settings stands; with which cuts is every sheet cut up in it?
// Idea:    the rest of a workpiece's cuts depend only on the workpiece and on the step it is there from, so the best way of
//          each is computed once: fewest cuts first, then fewest panels whose size is what another cut left over,
//          then the earliest step. A cut is made at the first step from there on that has its setting: waiting never
//          helps its parts.
// Cost:    shapes × steps × splits.
using PanelService.Cutting;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>Chooses the cuts of a run.</summary>
/// <param name="sequence">The settings in the order of the run.</param>
/// <param name="isPanel">Whether a true size is a panel's: such parts belong between fence and blade.</param>
internal sealed class CutChooser(int[] sequence, Func<long, long, bool> isPanel)
{
    private const long Impossible = long.MaxValue / 8;
    private const long OneCut = 1L << 32;

    private readonly Dictionary<(CutShape Shape, int From), (long Cost, ChosenCut? Cut)> _known = [];

    /// <summary>The best cut of a workpiece that is there from a step on; null: it is done, or cannot be cut any more.</summary>
    public ChosenCut? Of(CutShape shape, int from) => Best(shape, from).Cut;

    /// <summary>Whether a workpiece can be cut up from a step on.</summary>
    public bool CanCut(CutShape shape, int from = 0) => Best(shape, from).Cost < Impossible;

    private (long Cost, ChosenCut? Cut) Best(CutShape? shape, int from)
    {
        if (shape is null || shape.IsDone)
        {
            return (0, null);
        }

        if (_known.TryGetValue((shape, from), out var known))
        {
            return known;
        }

        (long Cost, ChosenCut? Cut) best = (Impossible, null);
        foreach (var split in shape.Splits)
        {
            foreach (bool near in new[] { true, false })
            {
                int step = NextStep(near ? split.NearSetting : split.FarSetting, from);
                if (step < 0)
                {
                    continue;
                }

                long cost = Math.Min(Impossible, CostOf(split, near) + Best(split.Near, step).Cost + Best(split.Far, step).Cost);
                best = cost < best.Cost ? (cost, new ChosenCut(split, step, near)) : best;
            }
        }

        _known.Add((shape, from), best);
        return best;
    }

    private int NextStep(int setting, int from) => setting < 0 ? -1 : Array.IndexOf(sequence, setting, from);

    private long CostOf(CutSplit split, bool nearAtFence) => OneCut + LeftOver(nearAtFence ? split.Far : split.Near, split.Axis);

    /// <summary>How many panels get their final size along an axis by being left over.</summary>
    private int LeftOver(CutShape? part, Axis axis) => part is null
        ? 0
        : part.Needed.Count(one => isPanel(one.Width, one.Height)
            && (axis == Axis.X ? one.Width == part.Width : one.Height == part.Height));
}
