// Problem: what share of the demand do given counts of goods hold at most, in fractions of the patterns known?
// Idea:    the greatest multiple of the demand that the patterns cover within the goods; below 1 its dual values are an
//          inequality that these counts do not meet.
// Source:  the feasibility cut of Benders, Numerische Mathematik 4 (1962); GLOP of OR-Tools is the simplex.
// Cost:    one warm start of the simplex a solve.
using Google.OrTools.LinearSolver;

namespace PanelService.Cutting.Lengths;

/// <summary>The largest share of the demand that patterns known cover within counts of goods, in fractions.</summary>
internal sealed class CoverMaster : IDisposable
{
    private readonly GoodsModel _goods;
    private readonly int[] _counts;
    private readonly Solver _solver;
    private readonly Variable _share;
    private readonly Constraint[] _cover;
    private readonly Constraint?[] _room;
    private readonly List<(Section Section, int Good, Variable Variable)> _columns = [];

    /// <summary>Starts with no patterns.</summary>
    /// <param name="goods">The goods.</param>
    /// <param name="counts">Per good.</param>
    public CoverMaster(GoodsModel goods, int[] counts)
    {
        (_goods, _counts) = (goods, counts);
        _solver = Solver.CreateSolver("GLOP");
        _share = _solver.MakeNumVar(0, 2, "");
        _solver.Objective().SetCoefficient(_share, 1);
        _solver.Objective().SetMaximization();
        _cover = [.. goods.Model.Demand.Select(demand =>
        {
            var row = _solver.MakeConstraint(0, double.PositiveInfinity);
            row.SetCoefficient(_share, -demand);
            return row;
        })];
        _room = [.. goods.Goods.Select((good, g) => counts[g] == 0 ? null : _solver.MakeConstraint(0, good.Rectangles(counts[g])))];
    }

    /// <summary>Adds a pattern to every good that has room for it.</summary>
    /// <param name="section">The pattern.</param>
    public void Add(Section section)
    {
        for (int g = 0; g < _counts.Length; g++)
        {
            var good = _goods.Goods[g];
            if (_counts[g] > 0 && _goods.Model.ClassOf[g] == section.Grid && section.Width <= good.Width && section.Length <= good.LengthOf(_counts[g]))
            {
                AddTo(g, section, good);
            }
        }
    }

    private void AddTo(int g, Section section, Good good)
    {
        // So often does it lie in the length at least.
        long times = good.LengthOf(_counts[g]) / section.Length;
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _room[g]!.SetCoefficient(variable, 1);
        for (int t = 0; t < _cover.Length; t++)
        {
            if (section.Counts[t] > 0)
            {
                _cover[t].SetCoefficient(variable, section.Counts[t] * times);
            }
        }

        _columns.Add((section, g, variable));
    }

    /// <summary>Solves.</summary>
    /// <returns>The share and the values; null where the solver gave up.</returns>
    public CoverSolution? Solve() => _solver.Solve() != Solver.ResultStatus.OPTIMAL
        ? null
        : new CoverSolution(
            _share.SolutionValue(),
            [.. _cover.Select(row => Math.Max(0, -row.DualValue()))],
            [.. _columns.Where(c => c.Variable.SolutionValue() > 1e-9).Select(c => (c.Section, c.Good, c.Variable.SolutionValue()))]);

    /// <inheritdoc/>
    public void Dispose() => _solver.Dispose();
}

/// <summary>A solution of the relaxation.</summary>
/// <param name="Share">The share of the demand covered; no more than 2.</param>
/// <param name="Values">Value of one of each type: all pieces together are worth 1.</param>
/// <param name="Uses">The patterns used in which goods.</param>
internal sealed record CoverSolution(double Share, double[] Values, (Section Section, int Good, double Copies)[] Uses);
