// Problem: how many cuts must be made at least?
// Idea:    over the graph of all ways: one cut and what its parts need, the best way of every shape computed once. Where ways were
//          left out, as many as part its panels from one another and from the rest. And always a part less than comes out in the
//          end: a cut makes no more than two of one.
// Cost:    one pass over the graph.
// Not:     whether so few cuts go with the fewest settings: a bound over runs at any settings.
using System.Collections.Immutable;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun.Graph;

namespace PanelService.Planning.SawRun.Search;

/// <summary>The fewest cuts, settings left aside.</summary>
internal static class LeastCuts
{
    private const long Impossible = long.MaxValue / 8;

    /// <summary>On all copies of some sheets.</summary>
    /// <param name="sheets">The sheets as they are cut.</param>
    /// <param name="parts">What of each comes to the saw, in a graph where all that comes out is named; some of it may since have been joined.</param>
    public static long Of(ImmutableArray<SheetLayout> sheets, ImmutableArray<ImmutableArray<CutPart>> parts)
    {
        var known = new Dictionary<CutShape, long>();
        return sheets.Zip(parts, (sheet, own) => sheet.Copies * Math.Max(
            own.Sum(part => Of(part.Root, known)),
            sheet.Pieces.Length + sheet.Offcuts.Length - own.Length)).Sum();
    }

    private static long Of(CutShape? shape, Dictionary<CutShape, long> known)
    {
        if (shape is null || shape.IsDone)
        {
            return 0;
        }

        if (!known.TryGetValue(shape, out long least))
        {
            least = shape.IsPartial
                ? shape.Arrangement.LeastParts - 1
                : shape.Splits.Select(split => Math.Min(Impossible, 1 + Of(split.Near, known) + Of(split.Far, known))).DefaultIfEmpty(Impossible).Min();
            known.Add(shape, least);
        }

        return least;
    }
}
