using Google.OrTools.Sat;

namespace PanelService.Cutting.Tests.Outside;

/// <summary>
/// The least price of a small problem when pieces may lie anyhow, without the guillotine rule: a constraint model of
/// its own (one optional rectangle per piece, sheet and way of lying; none overlap). No guillotine plan is cheaper.
/// </summary>
internal static class FreePacking
{
    /// <summary>The proven least price; null where the pieces cannot all be placed.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="upTo">A price some plan reaches: more sheets than it buys are not modelled.</param>
    public static long? Price(CuttingProblem problem, long upTo)
    {
        var model = new CpModel();
        var pieces = problem.Pieces.SelectMany(piece => Enumerable.Repeat(piece, piece.Demand)).ToArray();
        var placed = pieces.Select(_ => new List<ILiteral>()).ToArray();
        var price = LinearExpr.NewBuilder();
        for (int i = 0; i < problem.Stocks.Length; i++)
        {
            var stock = problem.Stocks[i];
            long affordable = stock.Price == 0 ? pieces.Length : upTo / stock.Price;
            long copies = Math.Min(Math.Min(pieces.Length, affordable), stock.Limit ?? int.MaxValue);
            BoolVar? before = null;
            for (int copy = 0; copy < copies; copy++)
            {
                var used = model.NewBoolVar("");
                AddSheet(model, problem, i, used, pieces, placed);
                price.AddTerm(used, stock.Price);
                if (before is not null)
                {
                    model.AddImplication(used, before);
                }

                before = used;
            }
        }

        Array.ForEach(placed, ways => model.AddExactlyOne(ways));
        model.Minimize(price);
        return Solve(model);
    }

    // A sheet and its pieces grown by one kerf: the gap between two pieces then is a kerf at least.
    private static void AddSheet(
        CpModel model, CuttingProblem problem, int stock, BoolVar used, Piece[] pieces, List<ILiteral>[] placed)
    {
        long width = problem.Stocks[stock].Width + problem.Kerf, height = problem.Stocks[stock].Height + problem.Kerf;
        var apart = model.AddNoOverlap2D();
        for (int i = 0; i < pieces.Length; i++)
        {
            foreach (var (way, w, h) in ((Turning, long, long)[])
                [(Turning.Upright, pieces[i].Width, pieces[i].Height), (Turning.Turned, pieces[i].Height, pieces[i].Width)])
            {
                if (!pieces[i].On[stock].HasFlag(way) || w + problem.Kerf > width || h + problem.Kerf > height)
                {
                    continue;
                }

                var here = model.NewBoolVar("");
                model.AddImplication(here, used);
                placed[i].Add(here);
                apart.AddRectangle(
                    Interval(model, width, w + problem.Kerf, here), Interval(model, height, h + problem.Kerf, here));
            }
        }
    }

    private static IntervalVar Interval(CpModel model, long room, long size, BoolVar here) =>
        model.NewOptionalFixedSizeIntervalVar(model.NewIntVar(0, room - size, ""), size, here, "");

    private static long? Solve(CpModel model)
    {
        using var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1" };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => (long)Math.Round(solver.ObjectiveValue),
            CpSolverStatus.Infeasible => null,
            var other => throw new InvalidOperationException($"The reference ended with {other}."),
        };
    }
}
