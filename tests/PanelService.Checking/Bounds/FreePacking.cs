// Problem: can all pieces lie in so many rectangles, cut or not?
// Idea:    a rectangle for every piece, place and way of lying that may be there or not; none overlap.
// Source:  CP-SAT of OR-Tools. Impossible here is impossible with guillotine cuts, which forbid more.
// Cost:    given a fixed amount of deterministic time; then it is not known.
using Google.OrTools.Sat;

namespace PanelService.Checking.Bounds;

/// <summary>Packs without the guillotine rule.</summary>
internal static class FreePacking
{
    private const int MostRectangles = 400;

    /// <summary>Tries.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="counts">At most so many of each stock.</param>
    /// <returns>Whether there is a packing; null: not known.</returns>
    public static bool? IsPossible(BoundCase problem, int[] counts)
    {
        if (problem.PieceCount * counts.Sum(count => (long)count) > MostRectangles)
        {
            return null;
        }

        var model = new CpModel();
        var pieces = problem.Pieces.SelectMany(piece => Enumerable.Repeat(piece, piece.Demand)).ToArray();
        var placed = pieces.Select(_ => new List<ILiteral>()).ToArray();
        for (int stock = 0; stock < counts.Length; stock++)
        {
            for (int copy = 0; copy < counts[stock]; copy++)
            {
                AddSheet(model, problem, stock, pieces, placed);
            }
        }

        Array.ForEach(placed, ways => model.AddExactlyOne(ways));
        using var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1,max_deterministic_time:5" };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => true,
            CpSolverStatus.Infeasible => false,
            _ => null,
        };
    }

    private static void AddSheet(CpModel model, BoundCase problem, int stock, CasePiece[] pieces, List<ILiteral>[] placed)
    {
        var (width, height) = (problem.Stocks[stock].Width + problem.Kerf, problem.Stocks[stock].Height + problem.Kerf);
        var apart = model.AddNoOverlap2D();
        var areas = new List<(ILiteral Here, long Area)>();
        for (int i = 0; i < pieces.Length; i++)
        {
            var (w, h) = (pieces[i].Width + problem.Kerf, pieces[i].Height + problem.Kerf);
            var (upright, turned) = pieces[i].On[stock];
            foreach (var (may, along, across) in ((bool, long, long)[])[(upright, w, h), (turned, h, w)])
            {
                if (may && along <= width && across <= height)
                {
                    var here = model.NewBoolVar("");
                    placed[i].Add(here);
                    areas.Add((here, along * across));
                    apart.AddRectangle(Interval(model, width, along, here), Interval(model, height, across, here));
                }
            }
        }

        // Said as well: it follows, but the solver is slow to see it.
        if (areas.Count > 0)
        {
            model.Add(LinearExpr.WeightedSum(areas.Select(a => a.Here), areas.Select(a => a.Area)) <= width * height);
        }
    }

    private static IntervalVar Interval(CpModel model, long room, long size, BoolVar here) =>
        model.NewOptionalFixedSizeIntervalVar(model.NewIntVar(0, room - size, ""), size, here, "");
}
