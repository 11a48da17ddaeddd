// Problem: the least part of one stock that a plan of the same stocks can do with: what is left of it is the leftover.
// Idea:    take one of the stocks used away and offer parts of it instead, full along one side and some sixteenths along the
//          other, at the price of their size, while everything else the plan uses costs nothing more. The cheapest plan
//          of that problem that takes one part leaves the most of the stock. Nothing forbids the engine two parts of it: two of
//          one way are joined to one as wide as both, and where they are of both ways, each way is asked for by itself. Then
//          the same once more with sixteenths of the last sixteenth.
// Source:  see LeftoverPlanner.
// Cost:    two runs of a twentieth of a second and less, the second where the first came to its end; two more for each where
//          parts of both ways are the cheapest.
// Not:     leftovers that reach across the stock neither way, nor finer than 256ths, or than sixteenths where the first run's
//          work did not do.
using System.Collections.Immutable;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Leftovers;

/// <summary>A part of a stock, full along one side.</summary>
/// <param name="Stock">The stock.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
/// <param name="Way">The axis along which it is less than the stock.</param>
/// <param name="Share">How much of the stock it is, in 256ths, rounded up.</param>
/// <param name="Leftover">The area of the rest; 0 where that is too small to be kept.</param>
internal sealed record Part(int Stock, long Width, long Height, Axis Way, int Share, double Leftover);

/// <summary>What is looked for: a leftover of a stock, with the parts already kept of others.</summary>
internal sealed record Target(int Stock, (long Width, long Height) SmallestKept, ImmutableArray<Part> Kept);

/// <summary>Looks for the least part of one stock that a plan can do with; what is left of it is a strip right across.</summary>
internal sealed class PartSearch(CuttingProblem problem, Target target, CancellationToken cancellation)
{
    private const int Whole = 256;
    private const int Step = 16;

    // About 50 ms, and 20.
    private const long Units = 50_000;
    private const long FurtherUnits = 20_000;

    private static readonly Axis[] Ways = [Axis.X, Axis.Y];

    /// <summary>A plan with a larger leftover of the stock; the same plan where none was found.</summary>
    public CuttingResult Gather(CuttingResult best)
    {
        var (coarse, settled) = Look(best, PartsBeyond(best, Enumerable.Range(1, (Whole / Step) - 1).Select(i => i * Step)), Units);
        if (!settled)
        {
            return coarse;
        }

        // No part of fewer sixteenths does.
        int used = LargestOf(coarse).Share;
        int below = (used - 1) / Step * Step;
        return Look(coarse, PartsBeyond(coarse, Enumerable.Range(below + 1, used - below - 1)), FurtherUnits).Best;
    }

    /// <summary>The part that is used of the copy of the stock that leaves the largest strip to keep.</summary>
    public Part LargestOf(CuttingResult plan) => plan.Patterns
        .Where(use => use.Stock == target.Stock)
        .SelectMany(use => UsedBy(use.Block))
        .MaxBy(part => part.Leftover)!;

    /// <summary>Asks for the least of some parts.</summary>
    /// <returns>The better plan, and whether it is known that no smaller one of these parts does.</returns>
    private (CuttingResult Best, bool Settled) Look(CuttingResult best, ImmutableArray<Part> parts, long units)
    {
        if (parts.IsEmpty || cancellation.IsCancellationRequested)
        {
            return (best, parts.IsEmpty);
        }

        var task = TaskOf(best, parts);
        var found = CuttingPlanner.Plan(task.Problem, units, cancellation);
        if (found.StoppedEarly)
        {
            return (best with { StoppedEarly = true }, false);
        }

        bool settled = found.Complete && found.Spent <= found.LeastPossible;
        PatternUse[] taken = [.. found.Patterns.Where(use => use.Stock >= task.FirstPart)];
        if (!found.Complete || found.Spent >= Whole || taken.Length == 0)
        {
            return (best, settled);
        }

        Axis[] ways = [.. taken.Select(use => parts[use.Stock - task.FirstPart].Way).Distinct()];
        if (ways.Length > 1)
        {
            return LookEachWay(best, [.. parts.Where(part => part.Share >= found.LeastPossible)]);
        }

        var block = taken.Select(use => use.Block).Aggregate((near, far) => BlockMath.Join(ways[0], near, far));
        var other = best with
        {
            Patterns =
            [
                .. found.Patterns.Where(use => use.Stock < task.FirstPart).Select(use => use with { Stock = task.StockOf[use.Stock] }),
                new PatternUse(target.Stock, block, 1),
            ],
        };
        return (IsBetter(other, block, best) ? other : best, settled);
    }

    private (CuttingResult Best, bool Settled) LookEachWay(CuttingResult best, ImmutableArray<Part> parts)
    {
        bool settled = true;
        foreach (var way in Ways)
        {
            double least = LargestOf(best).Leftover;
            (best, bool known) = Look(best, [.. parts.Where(part => part.Way == way && part.Leftover > least)], FurtherUnits);
            settled &= known;
        }

        return (best, settled);
    }

    // Parts joined have a kerf between them, for which there may be no room.
    private bool IsBetter(CuttingResult other, Block block, CuttingResult best)
    {
        var (width, height) = SizeOf(block);
        var stock = problem.Stocks[target.Stock];
        return width <= stock.Width && height <= stock.Height && LargestOf(other).Leftover > LargestOf(best).Leftover;
    }

    private (long Width, long Height) SizeOf(Block block) =>
        BlockMath.Size(block, [.. problem.Pieces.Select(piece => (piece.Width, piece.Height))], problem.Kerf);

    /// <summary>What a block needs of the stock, either way.</summary>
    private IEnumerable<Part> UsedBy(Block block)
    {
        var size = SizeOf(block);
        return Ways.Select(way => PartOf(way, way == Axis.X ? size.Width : size.Height));
    }

    private ImmutableArray<Part> PartsBeyond(CuttingResult best, IEnumerable<int> shares)
    {
        var stock = problem.Stocks[target.Stock];
        double least = LargestOf(best).Leftover;
        return
        [
            .. shares.SelectMany(share => Ways.Select(way => PartOf(way, (way == Axis.X ? stock.Width : stock.Height) * share / Whole) with { Share = share }))
                .Where(part => part.Leftover > least),
        ];
    }

    private Part PartOf(Axis way, long extent)
    {
        var (width, height, _, _) = problem.Stocks[target.Stock];
        bool across = way == Axis.X;
        long all = across ? width : height;
        long left = all - extent - problem.Kerf;
        bool isKept = across ? IsKept(left, height) : IsKept(width, left);
        return new Part(
            target.Stock,
            across ? extent : width,
            across ? height : extent,
            way,
            (int)(((extent * Whole) + all - 1) / all),
            isKept ? (double)(all - extent) * (across ? height : width) : 0);
    }

    private bool IsKept(long width, long height)
    {
        var (one, other) = target.SmallestKept;
        return (width >= one && height >= other) || (width >= other && height >= one);
    }

    /// <summary>What the plan uses, and all that costs nothing, at no price, but for one of the target, of which whole and in parts one may be used at theirs.</summary>
    private PartTask TaskOf(CuttingResult best, ImmutableArray<Part> parts)
    {
        var stocks = new List<(Stock Stock, int Of)>();
        for (int s = 0; s < problem.Stocks.Length; s++)
        {
            var stock = problem.Stocks[s];
            int whole = best.Patterns.Where(use => use.Stock == s).Sum(use => use.Copies)
                - (s == target.Stock ? 1 : 0) - target.Kept.Count(part => part.Stock == s);
            int? limit = SparedStocks.IsFree(stock) ? stock.Limit : whole;
            stocks.AddRange(limit == 0 ? [] : [(stock with { Price = 0, Limit = limit }, s)]);
        }

        stocks.AddRange(target.Kept.Select(part => (new Stock(part.Width, part.Height, 0, 1), part.Stock)));
        stocks.Add((problem.Stocks[target.Stock] with { Price = Whole, Limit = 1 }, target.Stock));
        int first = stocks.Count;
        stocks.AddRange(parts.Select(part => (new Stock(part.Width, part.Height, part.Share, 1), part.Stock)));
        int[] stockOf = [.. stocks.Select(stock => stock.Of)];
        return new PartTask(
            new CuttingProblem(
                [.. stocks.Select(stock => stock.Stock)],
                [.. problem.Pieces.Select(piece => piece with { On = [.. stockOf.Select(of => piece.On[of])] })],
                problem.Kerf),
            stockOf,
            first);
    }

    /// <summary>A problem with parts among its stocks.</summary>
    private sealed record PartTask(CuttingProblem Problem, int[] StockOf, int FirstPart);
}
