// Problem: values of the pieces under which given rectangles hold as little more as can be than all pieces are worth.
// Idea:    the greatest multiple of the demand that fractions of patterns hold, by column generation to its end; priced are
//          values between the tightest known and those of the last solution. What they leave to spare is all that a plan may
//          waste (TightCover): with a third of it lists of patterns were ten to a hundred times shorter.
// Source:  Gilmore and Gomory, Operations Research 9 (1961); values between: Wentges, Int. Trans. Opl. Res. 4 (1997).
// Cost:    ten to thirty fills of the rectangles' grids.
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Finds the tightest values.</summary>
internal sealed class TightValues
{
    private const int MostRounds = 100;
    private const double Kept = 0.5;
    private const double Close = 1e-5;

    private readonly Model _model;
    private readonly int[] _counts;
    private readonly WorkMeter _work;
    private readonly Pricing _pricing;

    private TightValues(Model model, int[] counts, WorkMeter work) =>
        (_model, _counts, _work, _pricing) = (model, counts, work, new Pricing(model, work));

    /// <summary>Finds them.</summary>
    /// <param name="model">Rectangles as stocks, and the pieces; exact grids.</param>
    /// <param name="counts">How many of each stock.</param>
    /// <param name="start">Values to start from.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>The tightest values come by, and what each rectangle can be worth under them.</returns>
    public static DualVector Find(Model model, int[] counts, double[] start, WorkMeter work) =>
        new TightValues(model, counts, work).Run(Normal(model, start));

    private DualVector Run(double[] start)
    {
        var rooms = Rooms.Of(_model.Demand, [.. _counts.Select((_, s) => _model.Stock(s).Height)], _counts);
        using var master = new PartMaster(rooms, _counts.Length, _ => false, within: false);
        var last = new PartSolution(0, start, new double[_counts.Length], []);
        var (best, center) = (_pricing.Evaluate(start), start);
        AddImproving(master, last);
        for (int round = 0; round < MostRounds && !_work.Exhausted && Share(best) >= 0; round++)
        {
            _work.Spend(100 + round);
            if (master.Solve() is not { } solution || Share(best) - (solution.Share - 1) < Close)
            {
                break;
            }

            double[] between = [.. solution.Values.Select((value, t) => (Kept * center[t]) + ((1 - Kept) * value))];
            if (!Improves(between, solution) && !Improves(solution.Values, solution))
            {
                break;
            }
        }

        return best;

        bool Improves(double[] values, PartSolution solution)
        {
            var vector = _pricing.Evaluate(values);
            (best, center) = Share(vector) < Share(best) ? (vector, values) : (best, center);
            return AddImproving(master, solution);
        }
    }

    /// <summary>Adds the patterns last priced that are worth more than the solution says a rectangle is.</summary>
    private bool AddImproving(PartMaster master, PartSolution solution)
    {
        bool any = false;
        for (int s = 0; s < _counts.Length; s++)
        {
            if (_pricing.Best(s) is { } column && column.Counts.Select((count, t) => count * solution.Values[t]).Sum() > solution.Rates[s] + 1e-9)
            {
                master.Add(new Part(s, _model.Stock(s).Height, column.Counts, column.Block));
                any = true;
            }
        }

        return any;
    }

    private double Share(DualVector vector) => vector.Share(_model.Demand, _counts);

    private static double[] Normal(Model model, double[] values)
    {
        double all = values.Select((value, t) => value * model.Demand[t]).Sum();
        return [.. values.Select(value => value / all)];
    }
}
