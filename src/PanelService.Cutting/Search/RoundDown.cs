// Problem: a whole plan of the relaxation's solution in fractions.
// Idea:    every pattern as often as it is used whole, the most used first; what is then still wanted is filled, under the
//          relaxation's values.
// Source:  Gilmore and Gomory, Operations Research 11 (1963).
// Cost:    the fill's: one capped programme for each stock and pattern of what is left.
// Not:     good for small orders, where the whole part is small.
namespace PanelService.Cutting.Search;

/// <summary>Rounds a solution of the relaxation down; once, since nothing else comes of it a second time.</summary>
/// <param name="model">The model.</param>
/// <param name="box">How many of each stock may be used.</param>
/// <param name="fill">Fills stocks.</param>
/// <param name="best">Is given the plan.</param>
internal sealed class RoundDown(Model model, StockBox box, SequentialFill fill, Incumbent best)
{
    private (MasterSolution? Solution, double[] Duals)? _putOff;

    /// <summary>Whether a solution waits for it.</summary>
    public bool IsPutOff => _putOff is not null;

    /// <summary>Keeps a solution for later: mostly it is not needed then.</summary>
    /// <param name="solution">The solution; null: all is filled.</param>
    /// <param name="duals">Values to fill by.</param>
    public void PutOff(MasterSolution? solution, double[] duals) => _putOff = (solution, duals);

    /// <summary>Rounds the solution that waits, if there is one and it is still of use.</summary>
    public void CatchUp()
    {
        if (_putOff is var (solution, duals) && !best.IsProven)
        {
            _putOff = null;
            Run(solution, duals);
        }
    }

    /// <summary>The whole part of a solution, and a fill of what it leaves.</summary>
    /// <param name="solution">The solution; null: all is filled.</param>
    /// <param name="duals">Values to fill by.</param>
    public void Run(MasterSolution? solution, double[] duals)
    {
        int[] open = [.. model.Demand];
        int[] left = [.. box.Most];
        var uses = new List<ColumnUse>();
        foreach (var (column, copies) in (solution?.Uses ?? []).OrderByDescending(u => u.Copies))
        {
            int whole = Math.Min((int)Math.Floor(copies + 1e-6), left[column.Stock]);
            uses.AddRange(whole > 0 ? [new ColumnUse(column, whole)] : []);
            StockBox.TakeOff(left, column.Stock, whole);
            column.TakeOff(open, whole);
        }

        best.Take([.. uses, .. fill.Fill(open, left, duals)]);
    }
}
