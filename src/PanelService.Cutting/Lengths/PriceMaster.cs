// Problem: what is the least price of a cloth order in fractions of the patterns known?
// Idea:    the covering programme; of what is sold by length a pattern costs its length's share of the whole.
// Source:  as Master: Gilmore and Gomory, Operations Research 9 (1961); GLOP of OR-Tools is the simplex.
// Cost:    one warm start of the simplex a solve.
using Google.OrTools.LinearSolver;

namespace PanelService.Cutting.Lengths;

/// <summary>The least price of patterns known, in fractions: of what is sold by length a section costs its length's share.</summary>
internal sealed class PriceMaster : IDisposable
{
    private readonly GoodsModel _goods;
    private readonly Solver _solver;
    private readonly Constraint[] _cover;
    private readonly Constraint?[] _limit;
    private readonly double _unit;

    /// <summary>Starts with no patterns.</summary>
    /// <param name="goods">The goods.</param>
    public PriceMaster(GoodsModel goods)
    {
        _goods = goods;
        _unit = Math.Max(1, goods.Goods.Max(good => good.Price));
        _solver = Solver.CreateSolver("GLOP");
        _solver.Objective().SetMinimization();
        _cover = [.. goods.Model.Demand.Select(demand => _solver.MakeConstraint(demand, double.PositiveInfinity))];
        foreach (var row in _cover)
        {
            // A piece that no pattern holds costs more than any good.
            var left = _solver.MakeNumVar(0, double.PositiveInfinity, "");
            _solver.Objective().SetCoefficient(left, 4);
            row.SetCoefficient(left, 1);
        }

        _limit = [.. goods.Goods.Select(good => good.Most >= goods.Pieces ? null : _solver.MakeConstraint(double.NegativeInfinity, good.Most))];
    }

    /// <summary>Adds a pattern of a good.</summary>
    /// <param name="good">The good.</param>
    /// <param name="section">The pattern.</param>
    public void Add(int good, Section section)
    {
        var it = _goods.Goods[good];
        double share = it.ByLength ? (double)section.Length / it.Extent : 1;
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(variable, share * it.Price / _unit);
        _limit[good]?.SetCoefficient(variable, share);
        for (int t = 0; t < _cover.Length; t++)
        {
            if (section.Counts[t] > 0)
            {
                _cover[t].SetCoefficient(variable, section.Counts[t]);
            }
        }
    }

    /// <summary>Solves.</summary>
    /// <returns>Values per type and what one more of each good would save, in price units; null where the solver gave up.</returns>
    public (double[] Values, double[] Savings)? Solve() => _solver.Solve() != Solver.ResultStatus.OPTIMAL
        ? null
        : ([.. _cover.Select(row => Math.Max(0, row.DualValue()) * _unit)], [.. _limit.Select(row => Math.Max(0, -(row?.DualValue() ?? 0)) * _unit)]);

    /// <inheritdoc/>
    public void Dispose() => _solver.Dispose();
}
