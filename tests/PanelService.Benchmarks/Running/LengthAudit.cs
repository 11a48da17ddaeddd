using PanelService.Checking.Bounds;
using PanelService.Cutting;

namespace PanelService.Benchmarks.Running;

/// <summary>Problems of sheets and lengths, and their proofs, as plain numbers for the checker that shares nothing with the engine.</summary>
public static class LengthAudit
{
    /// <summary>The problem as plain numbers.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="spent">The price of a plan.</param>
    /// <param name="leastPossible">The bound printed.</param>
    public static LengthCase CaseOf(LengthProblem problem, long spent, long leastPossible)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return new LengthCase(
            [
                .. problem.Sheets.Select(sheet => new CaseGood(sheet.Width, sheet.Height, sheet.Price, sheet.Limit, ByLength: false, Paid: 0)),
                .. problem.Lengths.Select(length => new CaseGood(length.Width, length.Step, length.Price, length.Limit, ByLength: true, length.Paid)),
            ],
            [.. problem.Pieces.Select(piece => new CasePiece(
                piece.Width, piece.Height, piece.Demand, [.. piece.On.Select(way => (way.HasFlag(Turning.Upright), way.HasFlag(Turning.Turned)))]))],
            spent,
            leastPossible);
    }

    /// <summary>The proof as plain numbers.</summary>
    /// <param name="proof">The proof.</param>
    public static StatedLengths StatedOf(LengthProof proof)
    {
        ArgumentNullException.ThrowIfNull(proof);
        return new StatedLengths(proof.Claim, [.. proof.Inequalities.Select(one => new StatedHolds(one.Values, one.Holds))], proof.Exclusions);
    }
}
