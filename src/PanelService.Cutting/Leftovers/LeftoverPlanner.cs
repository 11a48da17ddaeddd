// Problem: of all plans of the same price, the one that leaves the largest piece of a dear stock whole.
// Idea:    take one of the stocks used away and offer parts of it instead, full along one side and some sixteenths along the
//          other, at the price of their size, while everything else the plan uses costs nothing more. The cheapest plan
//          of that problem leaves the most of the stock, and its price says how much. Stock by stock, the dearest first; what was
//          found for one holds for the next.
// Source:  cutting stock with usable leftovers: Cherri, Arenales and Yanasse, EJOR 196 (2009), there by rules of thumb.
// Cost:    one short run of the engine for each kind of stock looked at.
// Not:     finer than sixteenths, and one leftover for each kind of stock, not the best sum of many.
using System.Collections.Immutable;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Leftovers;

/// <summary>Makes the largest leftover of a plan larger at no price.</summary>
public static class LeftoverPlanner
{
    private const int Parts = 16;
    private const int MostStocks = 2;

    // About 50 ms.
    private const long Units = 50_000;

    /// <summary>Looks for a plan of the same price with a larger leftover.</summary>
    /// <param name="problem">What was planned.</param>
    /// <param name="result">The plan; every piece in it.</param>
    /// <param name="smallestKept">A leftover is worth something where this fits into it, either way round.</param>
    /// <param name="cancellation">Ends it; what was found so far stands.</param>
    /// <returns>A plan of the same price and counts of stocks; <paramref name="result"/> itself where none leaves more.</returns>
    public static CuttingResult Gather(
        CuttingProblem problem, CuttingResult result, (long Width, long Height) smallestKept, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(result);
        if (!result.Complete || result.StoppedEarly)
        {
            return result;
        }

        int[] dearest =
        [
            .. result.Patterns.Select(use => use.Stock).Distinct()
                .Where(s => problem.Stocks[s].Price > 0)
                .OrderByDescending(s => problem.Stocks[s].Price).ThenBy(s => s)
                .Take(MostStocks),
        ];
        var best = result;
        var kept = ImmutableArray<Part>.Empty;
        foreach (int stock in dearest.TakeWhile(_ => !best.StoppedEarly))
        {
            (best, kept) = Gather(problem, best, new Target(stock, smallestKept, kept), cancellation);
        }

        return best;
    }

    private static (CuttingResult Best, ImmutableArray<Part> Kept) Gather(
        CuttingProblem problem, CuttingResult best, Target target, CancellationToken cancellation)
    {
        var now = best.Patterns.Where(use => use.Stock == target.Stock).Select(use => Used(problem, use)).MaxBy(part => part.Leftover)!;
        ImmutableArray<Part> parts = [.. PartsOf(problem, target).Where(part => part.Leftover > now.Leftover)];
        if (parts.IsEmpty || cancellation.IsCancellationRequested)
        {
            return (best, target.Kept.Add(now));
        }

        var task = TaskOf(problem, best, target, parts);
        var found = CuttingPlanner.Plan(task.Problem, Units, cancellation);
        var part = found.Patterns.Where(use => use.Stock >= task.FirstPart).Select(use => parts[use.Stock - task.FirstPart]).ToArray();
        if (found.StoppedEarly)
        {
            return (best with { StoppedEarly = true }, target.Kept);
        }

        if (!found.Complete || part.Length != 1 || found.Spent >= Parts)
        {
            return (best, target.Kept.Add(now));
        }

        ImmutableArray<PatternUse> patterns = [.. found.Patterns.Select(use => use with { Stock = task.StockOf[use.Stock] })];
        return (best with { Patterns = patterns }, target.Kept.Add(part[0]));
    }

    /// <summary>The part of a stock that a pattern uses: all but the larger of the two strips beside it.</summary>
    private static Part Used(CuttingProblem problem, PatternUse use)
    {
        var stock = problem.Stocks[use.Stock];
        var (width, height) = BlockMath.Size(use.Block, [.. problem.Pieces.Select(p => (p.Width, p.Height))], problem.Kerf);
        double beside = (double)(stock.Width - width) * stock.Height;
        double above = (double)stock.Width * (stock.Height - height);
        return beside > above
            ? new Part(use.Stock, width, stock.Height, Parts, beside)
            : new Part(use.Stock, stock.Width, height, Parts, above);
    }

    private static IEnumerable<Part> PartsOf(CuttingProblem problem, Target target)
    {
        var (width, height, _, _) = problem.Stocks[target.Stock];
        for (int sixteenths = 1; sixteenths < Parts; sixteenths++)
        {
            long across = width * sixteenths / Parts;
            long along = height * sixteenths / Parts;
            if (IsKept(width - across - problem.Kerf, height, target.SmallestKept))
            {
                yield return new Part(target.Stock, across, height, sixteenths, (double)(width - across) * height);
            }

            if (IsKept(width, height - along - problem.Kerf, target.SmallestKept))
            {
                yield return new Part(target.Stock, width, along, sixteenths, (double)width * (height - along));
            }
        }
    }

    private static bool IsKept(long width, long height, (long Width, long Height) smallest) =>
        (width >= smallest.Width && height >= smallest.Height) || (width >= smallest.Height && height >= smallest.Width);

    /// <summary>What the plan uses at no price but for one of the target, of which whole and in parts one may be used at theirs.</summary>
    private static PartTask TaskOf(CuttingProblem problem, CuttingResult best, Target target, ImmutableArray<Part> parts)
    {
        var stocks = new List<(Stock Stock, int Of)>();
        foreach (var same in best.Patterns.GroupBy(use => use.Stock).OrderBy(group => group.Key))
        {
            var stock = problem.Stocks[same.Key];
            int whole = same.Sum(use => use.Copies) - (same.Key == target.Stock ? 1 : 0) - target.Kept.Count(part => part.Stock == same.Key);
            stocks.Add((stock with { Price = 0, Limit = whole }, same.Key));
        }

        stocks.AddRange(target.Kept.Select(part => (new Stock(part.Width, part.Height, 0, 1), part.Stock)));
        stocks.Add((problem.Stocks[target.Stock] with { Price = Parts, Limit = 1 }, target.Stock));
        int first = stocks.Count;
        stocks.AddRange(parts.Select(part => (new Stock(part.Width, part.Height, part.Sixteenths, 1), part.Stock)));
        int[] stockOf = [.. stocks.Select(stock => stock.Of)];
        return new PartTask(
            new CuttingProblem(
                [.. stocks.Select(stock => stock.Stock)],
                [.. problem.Pieces.Select(piece => piece with { On = [.. stockOf.Select(of => piece.On[of])] })],
                problem.Kerf),
            stockOf,
            first);
    }

    /// <summary>A part of a stock.</summary>
    private sealed record Part(int Stock, long Width, long Height, int Sixteenths, double Leftover);

    /// <summary>What is looked for: a leftover of a stock, with the parts already kept of others.</summary>
    private sealed record Target(int Stock, (long Width, long Height) SmallestKept, ImmutableArray<Part> Kept);

    /// <summary>A problem with parts among its stocks.</summary>
    private sealed record PartTask(CuttingProblem Problem, int[] StockOf, int FirstPart);
}
