// Problem: under which values of the pieces are given counts of stocks the tightest?
// Idea:    scale the demand by λ and ask for the greatest λ that the counts hold when patterns may be used in fractions.
//          Below 1 its values forbid the counts; above 1 what is left, λ − 1, is all that a whole plan may waste. Where
//          only some types are tight the others would have no value at all: they get a λ of their own that counts for
//          little.
// Source:  the master of Gilmore and Gomory, Operations Research 9 (1961), with the demand as its parameter.
// Cost:    one small simplex run a call.
// Not:     trusted for a bound: whoever uses the values prices them in whole numbers.
using Google.OrTools.LinearSolver;

namespace PanelService.Cutting.Search;

/// <summary>How many times the demand fits given counts of stocks, over the columns known.</summary>
internal sealed class CountsRelaxation : IDisposable
{
    // What the types that are not tight weigh beside those that are.
    private const double Light = 0.02;

    private readonly int[] _demand;
    private readonly CancellationToken _cancellation;
    private readonly Solver _solver;
    private readonly Constraint[] _cover;
    private readonly Constraint[] _stockRows;
    private readonly Variable _short;
    private readonly Variable _lightShort;
    private readonly List<(Column Column, Variable Variable)> _columns = [];

    // Of the last solve: the solver tells nothing once a column has been added.
    private double _lastShort;

    /// <summary>Starts with no columns.</summary>
    /// <param name="demand">What is wanted.</param>
    /// <param name="counts">At most so many of each stock.</param>
    /// <param name="cancellation">Ends a solve half-way, with an exception.</param>
    public CountsRelaxation(int[] demand, int[] counts, CancellationToken cancellation)
    {
        (_demand, _cancellation) = (demand, cancellation);
        _solver = Solver.CreateSolver("GLOP");
        _solver.Objective().SetMinimization();
        _cover = [.. demand.Select(d => _solver.MakeConstraint(d, double.PositiveInfinity))];
        _stockRows = [.. counts.Select(c => _solver.MakeConstraint(double.NegativeInfinity, c))];
        _short = _solver.MakeNumVar(-10, 1, "");
        _lightShort = _solver.MakeNumVar(-10, 1, "");
        _solver.Objective().SetCoefficient(_short, 1);
        _solver.Objective().SetCoefficient(_lightShort, Light);
        for (int t = 0; t < demand.Length; t++)
        {
            _cover[t].SetCoefficient(_short, demand[t]);
        }
    }

    /// <summary>Adds a column.</summary>
    /// <param name="column">The column; what it holds beyond the demand counts for nothing.</param>
    public void Add(Column column)
    {
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        for (int t = 0; t < _cover.Length; t++)
        {
            if (column.Counts[t] > 0 && _demand[t] > 0)
            {
                _cover[t].SetCoefficient(variable, Math.Min(column.Counts[t], _demand[t]));
            }
        }

        _stockRows[column.Stock].SetCoefficient(variable, 1);
        _columns.Add((column, variable));
    }

    /// <summary>
    /// Gives types a λ of the second rank. Those of the first rank give up no more for it than what they had to spare, if
    /// they had any.
    /// </summary>
    /// <param name="types">The types.</param>
    public void MakeLight(IReadOnlyCollection<int> types)
    {
        _short.SetUb(Math.Max(0, _lastShort));
        foreach (int type in types)
        {
            _cover[type].SetCoefficient(_short, 0);
            _cover[type].SetCoefficient(_lightShort, _demand[type]);
        }
    }

    /// <summary>Solves.</summary>
    /// <returns>Values per type and per stock; null where the solver gave up.</returns>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public CountsValues? Solve()
    {
        if (Simplex.Run(_solver, _cancellation) != Solver.ResultStatus.OPTIMAL)
        {
            return null;
        }

        _lastShort = _short.SolutionValue();
        return new CountsValues(
            [.. _cover.Select(row => Math.Max(0, row.DualValue()))],
            [.. _stockRows.Select(row => -row.DualValue())],
            [.. _columns.Where(c => c.Variable.SolutionValue() > 1e-9).Select(c => (c.Column, c.Variable.SolutionValue() / Math.Max(1, 1 - _lastShort)))]);
    }

    /// <inheritdoc/>
    public void Dispose() => _solver.Dispose();
}

/// <summary>The values under which counts are tightest.</summary>
/// <param name="Types">Per type; the whole demand is worth about 1.</param>
/// <param name="Stocks">Per stock: what the best known column is worth.</param>
/// <param name="Uses">How often each column is used to cover the demand once.</param>
internal sealed record CountsValues(double[] Types, double[] Stocks, (Column Column, double Copies)[] Uses);
