// Problem: what is the least price of the demand in fractions of the patterns found so far, and what is a piece worth then?
// Idea:    the covering programme over those patterns, stocks within their box; what no pattern covers is bought at a penalty,
//          which is raised where a solution still buys. Its dual values are what the next patterns are priced with.
// Source:  Gilmore and Gomory, Operations Research 9 (1961); GLOP of OR-Tools is the simplex.
// Cost:    one warm start of the simplex a solve.
using Google.OrTools.LinearSolver;

namespace PanelService.Cutting.Search;

/// <summary>
/// The linear relaxation over the columns found so far: cover the demand at the least price, stocks within their
/// box. What no column covers is bought at a penalty, so that there is always a solution to price from.
/// </summary>
internal sealed class Master : IDisposable
{
    private readonly Model _model;
    private readonly int[]? _most;
    private readonly Solver _solver;
    private readonly Constraint[] _cover;
    private readonly Constraint?[] _stockRows;
    private readonly Variable[] _short;
    private readonly List<(Column Column, Variable Variable)> _columns = [];
    // In units of the dearest stock: more than a stock of a piece's own. Tight limits can need more; see RaisePenalty.
    private const double FirstPenalty = 4;

    private readonly double _unit;
    private readonly CancellationToken _cancellation;
    private double _penalty = FirstPenalty;

    /// <summary>Starts with no columns.</summary>
    /// <param name="model">The model.</param>
    /// <param name="demand">What is to be covered.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <param name="within">Whether what a pattern holds beyond the demand covers nothing.</param>
    /// <param name="cancellation">Ends a solve half-way, with an exception.</param>
    public Master(Model model, int[] demand, StockBox box, bool within, CancellationToken cancellation)
    {
        (_model, _most, _cancellation) = (model, within ? demand : null, cancellation);
        // Prices near 1 keep the simplex tolerances meaningful.
        _unit = Math.Max(1, Enumerable.Range(0, model.Stocks.Length).Max(s => model.Stock(s).Price));
        _solver = Solver.CreateSolver("GLOP");
        _solver.Objective().SetMinimization();
        _cover = [.. demand.Select(d => _solver.MakeConstraint(d, double.PositiveInfinity))];
        _short = [.. _cover.Select(row => Add(FirstPenalty, row))];
        _stockRows = [.. Enumerable.Range(0, model.Stocks.Length).Select(s =>
            box.Most[s] == StockBox.Unlimited && box.Least[s] == 0
                ? null
                : _solver.MakeConstraint(
                    box.Least[s], box.Most[s] == StockBox.Unlimited ? double.PositiveInfinity : box.Most[s]))];
    }

    /// <summary>Adds a column.</summary>
    /// <param name="column">The column.</param>
    public void Add(Column column)
    {
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(variable, _model.Stock(column.Stock).Price / _unit);
        for (int i = 0; i < _cover.Length; i++)
        {
            if (column.Counts[i] > 0)
            {
                _cover[i].SetCoefficient(variable, Math.Min(column.Counts[i], _most?[i] ?? int.MaxValue));
            }
        }

        _stockRows[column.Stock]?.SetCoefficient(variable, 1);
        _columns.Add((column, variable));
    }

    /// <summary>Makes leaving a piece uncovered a hundred times dearer.</summary>
    /// <returns>Whether that still makes sense in floating point.</returns>
    public bool RaisePenalty()
    {
        if (_penalty > 1e5)
        {
            return false;
        }

        _penalty *= 100;
        foreach (var variable in _short)
        {
            _solver.Objective().SetCoefficient(variable, _penalty);
        }

        return true;
    }

    /// <summary>Solves.</summary>
    /// <returns>The duals and the solution; null where the solver gave up.</returns>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public MasterSolution? Solve()
    {
        if (Simplex.Run(_solver, _cancellation) != Solver.ResultStatus.OPTIMAL)
        {
            return null;
        }

        return new MasterSolution(
            _solver.Objective().Value() * _unit,
            [.. _cover.Select(row => Math.Max(0, row.DualValue()) * _unit)],
            [.. _stockRows.Select(row => (row?.DualValue() ?? 0) * _unit)],
            [.. _columns.Where(c => c.Variable.SolutionValue() > 1e-9).Select(c => (c.Column, c.Variable.SolutionValue()))],
            _short.Sum(v => v.SolutionValue()));
    }

    /// <inheritdoc/>
    public void Dispose() => _solver.Dispose();

    private Variable Add(double cost, Constraint row)
    {
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(variable, cost);
        row.SetCoefficient(variable, 1);
        return variable;
    }
}

/// <summary>A solution of the relaxation, in the problem's price units.</summary>
/// <param name="Price">Its price.</param>
/// <param name="Duals">Dual value per type, 0 or more.</param>
/// <param name="StockDuals">Dual value per stock; 0 where it has no row.</param>
/// <param name="Uses">The columns used, with how often.</param>
/// <param name="Short">Pieces left uncovered.</param>
internal sealed record MasterSolution(
    double Price, double[] Duals, double[] StockDuals, (Column Column, double Copies)[] Uses, double Short);
