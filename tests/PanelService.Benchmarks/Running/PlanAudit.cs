using PanelService.Benchmarks.Suites;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Running;

/// <summary>Looks every result over, so that no table ever shows figures of a plan that is none.</summary>
public static class PlanAudit
{
    /// <summary>What is wrong with a result.</summary>
    /// <param name="one">The case.</param>
    /// <param name="result">What the engine answered.</param>
    /// <returns>The first fault, in words; null: none.</returns>
    public static string? Fault(CuttingCase one, CuttingResult result)
    {
        var problem = one.Problem;
        if (!result.Complete)
        {
            return "pieces are missing";
        }

        return Bounds(one, result) ?? Counts(problem, result) ?? Limits(problem, result) ?? Sizes(problem, result);
    }

    private static string? Bounds(CuttingCase one, CuttingResult result)
    {
        if (result.LeastPossible > result.Spent)
        {
            return $"bound {result.LeastPossible} above the plan {result.Spent}";
        }

        if (result.LeastPossible > one.KnownPlan)
        {
            return $"bound {result.LeastPossible} above a known plan of {one.KnownPlan}";
        }

        return result.Spent < one.KnownBound ? $"plan {result.Spent} below the published bound {one.KnownBound}" : null;
    }

    private static string? Counts(CuttingProblem problem, CuttingResult result)
    {
        var made = new long[problem.Pieces.Length];
        foreach (var use in result.Patterns)
        {
            foreach (var piece in PiecesOf(use.Block))
            {
                made[piece.Piece] += use.Copies;
                var needed = piece.Turned ? Turning.Turned : Turning.Upright;
                if (!problem.Pieces[piece.Piece].On[use.Stock].HasFlag(needed))
                {
                    return $"piece {piece.Piece} may not lie so on stock {use.Stock}";
                }
            }
        }

        for (int i = 0; i < made.Length; i++)
        {
            if (made[i] != problem.Pieces[i].Demand)
            {
                return $"piece {i}: {made[i]} instead of {problem.Pieces[i].Demand}";
            }
        }

        return null;
    }

    private static string? Limits(CuttingProblem problem, CuttingResult result)
    {
        long price = result.Patterns.Sum(use => use.Copies * problem.Stocks[use.Stock].Price);
        if (price != result.Spent)
        {
            return $"patterns cost {price}, not {result.Spent}";
        }

        var over = result.Patterns.GroupBy(use => use.Stock)
            .FirstOrDefault(group => group.Sum(use => (long)use.Copies) > (problem.Stocks[group.Key].Limit ?? long.MaxValue));
        return over is null ? null : $"stock {over.Key} is used beyond its limit";
    }

    private static string? Sizes(CuttingProblem problem, CuttingResult result)
    {
        foreach (var use in result.Patterns)
        {
            var (width, height) = SizeOf(use.Block, problem);
            if (width > problem.Stocks[use.Stock].Width || height > problem.Stocks[use.Stock].Height)
            {
                return $"a pattern of {width} x {height} on stock {use.Stock}";
            }
        }

        return null;
    }

    private static (long Width, long Height) SizeOf(Block block, CuttingProblem problem)
    {
        if (block is PieceBlock leaf)
        {
            var piece = problem.Pieces[leaf.Piece];
            return leaf.Turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
        }

        var stack = (StackBlock)block;
        var sizes = stack.Parts.Select(part => SizeOf(part, problem)).ToArray();
        long kerfs = problem.Kerf * (sizes.Length - 1);
        return stack.Axis == Axis.X
            ? (sizes.Sum(s => s.Width) + kerfs, sizes.Max(s => s.Height))
            : (sizes.Max(s => s.Width), sizes.Sum(s => s.Height) + kerfs);
    }

    private static IEnumerable<PieceBlock> PiecesOf(Block block) => block is PieceBlock leaf
        ? [leaf]
        : ((StackBlock)block).Parts.SelectMany(PiecesOf);
}
