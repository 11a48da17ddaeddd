// Problem: a whole plan close to the relaxation's price.
// Idea:    take what the relaxation uses whole times, else the column it uses most, solve again for what is then still
//          wanted, with new patterns priced for it, and so on down; what little is left at the end is filled.
// Source:  diving with column generation: Vanderbeck, Operations Research 48 (2000); Sadykov and others, INFORMS JoC 31 (2019).
// Cost:    a few iterations of the relaxation for each stock used.
// Not:     a search: it never goes back up.
namespace PanelService.Cutting.Search;

/// <summary>Rounds the relaxation down to a whole plan, step by step.</summary>
internal sealed class Dive
{
    private readonly Model _model;
    private readonly Relaxation _relaxation;
    private readonly SequentialFill _fill;
    private readonly WorkMeter _work;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="relaxation">Solves for what is still wanted.</param>
    /// <param name="fill">Fills the end.</param>
    /// <param name="work">Where work is counted.</param>
    public Dive(Model model, Relaxation relaxation, SequentialFill fill, WorkMeter work) =>
        (_model, _relaxation, _fill, _work) = (model, relaxation, fill, work);

    /// <summary>Dives.</summary>
    /// <param name="demand">What is wanted.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <returns>The columns used; they may hold too much of a type, or leave something missing.</returns>
    public List<ColumnUse> Run(int[] demand, StockBox box)
    {
        int[] open = [.. demand];
        int[] least = [.. box.Least];
        int[] most = [.. box.Most];
        var uses = new List<ColumnUse>();
        while (open.Any(d => d > 0) && !_work.Exhausted)
        {
            var solution = _relaxation.Solve(open, new StockBox(least, most), within: true).Solution;
            if (solution is null || solution.Uses.Length == 0)
            {
                break;
            }

            foreach (var use in Choose(solution, open))
            {
                uses.Add(use);
                Take(use, open, least, most);
            }

            if (open.Sum() <= SmallRest)
            {
                uses.AddRange(_fill.Fill(open, most, solution.Duals));
                break;
            }
        }

        return uses;
    }

    /// <summary>So few pieces are filled at once instead of relaxed again.</summary>
    private const int SmallRest = 4;

    private static void Take(ColumnUse use, int[] open, int[] least, int[] most)
    {
        use.Column.TakeOff(open, use.Copies);
        int s = use.Column.Stock;
        StockBox.TakeOff(most, s, use.Copies);
        least[s] = Math.Max(0, least[s] - use.Copies);
    }

    private List<ColumnUse> Choose(MasterSolution solution, int[] open)
    {
        var whole = solution.Uses
            .Select(u => new ColumnUse(u.Column, (int)Math.Floor(u.Copies + 1e-6)))
            .Where(u => u.Copies > 0)
            .ToList();
        if (whole.Count > 0)
        {
            return whole;
        }

        // The value a column brings to what is still wanted, weighed with how much the relaxation likes it.
        var (column, _) = solution.Uses.MaxBy(u => u.Copies * Useful(u.Column, solution.Duals, open));
        return [new ColumnUse(column, 1)];
    }

    private double Useful(Column column, double[] duals, int[] open)
    {
        double useful = 0;
        double all = 0;
        for (int t = 0; t < open.Length; t++)
        {
            double value = Math.Max(duals[t], 1e-6);
            useful += Math.Min(column.Counts[t], open[t]) * value;
            all += column.Counts[t] * value;
        }

        return all <= 0 ? 0 : useful / all * Math.Max(1, _model.Stock(column.Stock).Price);
    }
}
