using System.Collections.Immutable;
using PanelService.Checking.Bounds;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Running;

/// <summary>Hands problems and proofs as plain numbers to the checker that shares nothing with the engine.</summary>
public static class BoundAudit
{
    /// <summary>Checks a result's bound.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="result">What the engine answered; complete.</param>
    /// <param name="all">Whether also what the claim does not need is checked.</param>
    public static BoundVerdict Check(CuttingProblem problem, CuttingResult result, bool all = false) =>
        BoundChecker.Check(CaseOf(problem, result), StatedOf(result.Proof), all);

    /// <summary>Checks the best value of one sheet.</summary>
    /// <param name="sheet">One stock; demands are what counts at most.</param>
    /// <param name="values">Per piece: the worth of one.</param>
    /// <param name="value">What the engine says none is worth more than.</param>
    public static BoundVerdict CheckValue(CuttingProblem sheet, ImmutableArray<int> values, long value) =>
        SheetValue.Check(CaseOf(sheet, 0, 0), [.. values.Select(one => (long)one)], value);

    /// <summary>The problem as plain numbers.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="result">Its plan.</param>
    public static BoundCase CaseOf(CuttingProblem problem, CuttingResult result) => CaseOf(problem, result.Spent, result.LeastPossible);

    private static BoundCase CaseOf(CuttingProblem problem, long spent, long leastPossible) => new(
        [.. problem.Stocks.Select(stock => new CaseStock(stock.Width, stock.Height, stock.Price, stock.Limit))],
        [.. problem.Pieces.Select(piece => new CasePiece(
            piece.Width, piece.Height, piece.Demand, [.. piece.On.Select(way => (way.HasFlag(Turning.Upright), way.HasFlag(Turning.Turned)))]))],
        problem.Kerf,
        spent,
        leastPossible)
    {
        FenceReach = problem.FenceReach,
    };

    /// <summary>The proof as plain numbers.</summary>
    /// <param name="proof">The proof.</param>
    public static StatedProof StatedOf(BoundProof proof) => new(
        proof.Claim,
        [.. proof.Inequalities.Select(one => new StatedInequality(one.Values, one.Caps))],
        [.. proof.Exclusions.Select(one => one.Counts)],
        proof.NoneBelow);
}
