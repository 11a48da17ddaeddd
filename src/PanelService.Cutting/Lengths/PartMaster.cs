// Problem: how many times do the rooms that are left hold what is still wanted, in fractions of the parts known?
// Idea:    the greatest multiple of the demand that the parts cover within the rooms: 1 and more where it may be possible. Its
//          dual values say how little a plan may waste.
// Source:  as CoverMaster; GLOP of OR-Tools is the simplex.
// Cost:    one warm start of the simplex a solve.
using Google.OrTools.LinearSolver;

namespace PanelService.Cutting.Lengths;

/// <summary>How many times what is wanted fits into the rooms, in fractions of the parts known.</summary>
internal sealed class PartMaster : IDisposable
{
    private readonly Rooms _rooms;
    private readonly Func<int, bool> _isLong;
    private readonly bool _within;
    private readonly Solver _solver;
    private readonly Variable _share;
    private readonly Constraint[] _cover;
    private readonly Constraint[] _room;
    private readonly List<(Part Part, Variable Variable)> _parts = [];

    /// <summary>Starts with no parts.</summary>
    /// <param name="rooms">What is left to do.</param>
    /// <param name="stocks">How many stocks there are.</param>
    /// <param name="isLong">Whether a stock's rectangles take sections by their length, or one pattern each.</param>
    /// <param name="within">Whether parts that hold more of a type than is wanted are of no use.</param>
    public PartMaster(Rooms rooms, int stocks, Func<int, bool> isLong, bool within)
    {
        (_rooms, _isLong, _within) = (rooms, isLong, within);
        _solver = Solver.CreateSolver("GLOP");
        _share = _solver.MakeNumVar(0, 10, "");
        _solver.Objective().SetCoefficient(_share, 1);
        _solver.Objective().SetMaximization();
        _cover = [.. rooms.Demand.Select(demand =>
        {
            var row = _solver.MakeConstraint(0, double.PositiveInfinity);
            row.SetCoefficient(_share, -demand);
            return row;
        })];
        _room = [.. Enumerable.Range(0, stocks).Select(s => _solver.MakeConstraint(double.NegativeInfinity, RoomOf(s)))];
    }

    /// <summary>Adds a part.</summary>
    /// <param name="part">The part.</param>
    public void Add(Part part)
    {
        if (_within && !_rooms.Wants(part))
        {
            return;
        }

        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _room[part.Stock].SetCoefficient(variable, _isLong(part.Stock) ? part.Length : 1);
        for (int t = 0; t < _cover.Length; t++)
        {
            if (part.Counts[t] > 0)
            {
                _cover[t].SetCoefficient(variable, part.Counts[t]);
            }
        }

        _parts.Add((part, variable));
    }

    /// <summary>Solves.</summary>
    /// <returns>The solution; null where the solver gave up.</returns>
    public PartSolution? Solve() => _solver.Solve() != Solver.ResultStatus.OPTIMAL
        ? null
        : new PartSolution(
            _share.SolutionValue(),
            [.. _cover.Select(row => Math.Max(0, -row.DualValue()))],
            [.. _room.Select(row => Math.Max(0, row.DualValue()))],
            [.. _parts.Where(p => p.Variable.SolutionValue() > 1e-9).Select(p => (p.Part, p.Variable.SolutionValue()))]);

    /// <inheritdoc/>
    public void Dispose() => _solver.Dispose();

    private double RoomOf(int stock)
    {
        double sum = 0;
        for (int r = 0; r < _rooms.Stocks.Length; r++)
        {
            if (_rooms.Stocks[r] == stock)
            {
                sum += _isLong(stock) ? _rooms.Free[r] : _rooms.Free[r] > 0 ? 1 : 0;
            }
        }

        return sum;
    }
}

/// <summary>A solution in fractions.</summary>
/// <param name="Share">How many times what is wanted fits.</param>
/// <param name="Values">Per type: value of one; all that is wanted is worth 1.</param>
/// <param name="Rates">Per stock: what a unit of its length is worth, or one short rectangle.</param>
/// <param name="Uses">The parts used, and how often.</param>
internal sealed record PartSolution(double Share, double[] Values, double[] Rates, (Part Part, double Times)[] Uses)
{
    /// <summary>How much more a part's room is worth than what it holds.</summary>
    /// <param name="part">The part.</param>
    /// <param name="isLong">Whether its stock's rectangles take sections by their length.</param>
    public double Loss(Part part, bool isLong)
    {
        double loss = Rates[part.Stock] * (isLong ? part.Length : 1);
        for (int t = 0; t < Values.Length; t++)
        {
            loss -= part.Counts[t] * Values[t];
        }

        return loss;
    }
}
