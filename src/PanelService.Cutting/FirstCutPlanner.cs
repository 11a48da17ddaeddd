// Problem: what is cut from one sheet is settled; arrange it so that fewer cuts have to be made before the sheet comes to the saw.
// Idea:    the plain ways of parting a sheet, in strips and the strips in parts, fewest cuts first: does everything fit into
//          just these parts? The engine answers that as a problem of its own, with the parts as its stocks.
// Source:  ours.
// Cost:    a twentieth of a second for each way tried; at most a dozen.
// Not:     the fewest: other ways of parting, and pieces exchanged between sheets, are not looked at.
using System.Collections.Immutable;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting;

/// <summary>Arranges one sheet anew for fewer first cuts.</summary>
public static class FirstCutPlanner
{
    private const long Units = 50_000;
    private const int MostWays = 12;

    /// <summary>Looks for an arrangement of the same pieces that takes fewer first cuts.</summary>
    /// <param name="block">What is cut from the sheet.</param>
    /// <param name="frame">The sheet, with its first cuts.</param>
    /// <param name="pieces">The pieces of the problem.</param>
    /// <param name="stock">Which of the problem's stocks the sheet is.</param>
    /// <param name="cancellation">Ends it with what was found.</param>
    /// <returns>An arrangement that can be cut within the frame's limits; <paramref name="block"/> where none is better.</returns>
    public static Block Fewer(Block block, SheetFrame frame, ImmutableArray<Piece> pieces, int stock, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ImmutableArray<(long Width, long Height)> sizes = [.. pieces.Select(piece => (piece.Width, piece.Height))];
        if (frame.First is not { } first || CutsOf(block, frame, sizes) is not { } now)
        {
            return block;
        }

        int[] counts = BlockMath.Counts(block, pieces.Length);
        foreach (var way in Ways(frame, first).Where(way => way.Cuts < now).OrderBy(way => way.Cuts).Take(MostWays))
        {
            if (cancellation.IsCancellationRequested)
            {
                break;
            }

            if (Arranged(way, frame.Kerf, (pieces, counts, stock), cancellation) is { } other && CutsOf(other, frame, sizes) < now)
            {
                return other;
            }
        }

        return block;
    }

    private static int? CutsOf(Block block, SheetFrame frame, ImmutableArray<(long Width, long Height)> sizes) =>
        SheetCutter.TryCut(block, frame, sizes)?.Cuts.Count(cut => cut.IsFirst);

    private static Block? Arranged(
        Way way, long kerf, (ImmutableArray<Piece> Pieces, int[] Counts, int Stock) wanted, CancellationToken cancellation)
    {
        int[] kinds = [.. Enumerable.Range(0, wanted.Counts.Length).Where(i => wanted.Counts[i] > 0)];
        ImmutableArray<Stock> stocks = [.. way.Strips.SelectMany(strip => strip).Select(room => new Stock(room.Width, room.Height, 1, 1))];
        ImmutableArray<Piece> pieces = [.. kinds.Select(i => wanted.Pieces[i] with
        {
            Demand = wanted.Counts[i],
            On = [.. stocks.Select(_ => wanted.Pieces[i].On[wanted.Stock])],
        })];
        var found = CuttingPlanner.Plan(new CuttingProblem(stocks, pieces, kerf), Units, cancellation);
        return found.Complete && !found.StoppedEarly ? Joined(way, found, kinds) : null;
    }

    private static Block? Joined(Way way, CuttingResult found, int[] kinds)
    {
        Block? whole = null;
        int number = 0;
        foreach (var strip in way.Strips)
        {
            Block? row = null;
            foreach (var _ in strip)
            {
                int part = number++;
                var block = found.Patterns.Where(use => use.Stock == part).Select(use => BlockMath.Renamed(use.Block, kinds)).FirstOrDefault();
                row = Join(way.Axis == Axis.X ? Axis.Y : Axis.X, row, block);
            }

            whole = Join(way.Axis, whole, row);
        }

        return whole;
    }

    private static Block? Join(Axis axis, Block? first, Block? second) =>
        first is null || second is null ? first ?? second : BlockMath.Join(axis, first, second);

    /// <summary>Strips across an axis, each in as few parts as it takes: as large as may be, or all alike.</summary>
    private static IEnumerable<Way> Ways(SheetFrame frame, FirstCuts first)
    {
        foreach (var axis in new[] { Axis.X, Axis.Y })
        {
            var (along, across) = axis == Axis.X ? (frame.Width, frame.Height) : (frame.Height, frame.Width);
            foreach (int parts in Enumerable.Range(1, 6))
            {
                long longest = first.Parts.LongestAlong(axis, Share(across, parts, first.Kerf), SheetEdges.All);
                if (longest <= 0)
                {
                    continue;
                }

                foreach (var strips in new[] { Largest(along, longest, first.Kerf), Alike(along, longest, first.Kerf) })
                {
                    yield return WayOf(frame, axis, strips, [.. Enumerable.Repeat(Share(across, parts, first.Kerf), parts - 1), Last(across, parts, first.Kerf)]);
                }
            }
        }
    }

    private static Way WayOf(SheetFrame frame, Axis axis, long[] strips, long[] parts)
    {
        var rooms = strips.Select((strip, i) => parts.Select((part, k) =>
        {
            long along = strip - (frame.EdgeTrim * Ends(i, strips.Length));
            long across = part - (frame.EdgeTrim * Ends(k, parts.Length));
            return axis == Axis.X ? (along, across) : (across, along);
        }).ToImmutableArray());
        return new Way(axis, [.. rooms], (strips.Length * parts.Length) - 1);
    }

    /// <summary>How many of the sheet's edges a part has along an axis.</summary>
    private static int Ends(int index, int count) => (index == 0 ? 1 : 0) + (index == count - 1 ? 1 : 0);

    private static long Share(long extent, int parts, long kerf) => (extent - ((parts - 1) * kerf) + parts - 1) / parts;

    private static long Last(long extent, int parts, long kerf) => extent - ((parts - 1) * (Share(extent, parts, kerf) + kerf));

    private static long[] Largest(long extent, long longest, long kerf)
    {
        var strips = new List<long>();
        while (extent > longest)
        {
            strips.Add(longest);
            extent -= longest + kerf;
        }

        return [.. strips, .. extent > 0 ? [extent] : Array.Empty<long>()];
    }

    private static long[] Alike(long extent, long longest, long kerf)
    {
        int parts = (int)((extent + kerf + longest + kerf - 1) / (longest + kerf));
        return [.. Enumerable.Repeat(Share(extent, parts, kerf), parts - 1), Last(extent, parts, kerf)];
    }

    /// <summary>A way of parting a sheet: strips along an axis, each with the usable rooms it falls into.</summary>
    private sealed record Way(Axis Axis, ImmutableArray<ImmutableArray<(long Width, long Height)>> Strips, int Cuts);
}
