// Problem: no pattern that keeps to the limits of its pieces' counts is worth more than …?
// Idea:    pay a penalty for every copy and give the limits' worth of it back: for patterns within the limits nothing is
//          lost, and the programme without limits gives a bound. The penalties that give the lowest bound are found by
//          walking against what its best pattern holds too much or too little of.
// Source:  Lagrangian relaxation (Held, Wolfe and Crowder, Mathematical Programming 6, 1974); compare the weighted
//          relaxations of Christofides and Hadjiconstantinou, EJOR 83 (1995), and Velasco and Uchoa, EJOR 272 (2019).
// Cost:    one programme a step.
// Not:     the optimum: what remains between bound and optimum is for LabelProgramme.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>Penalties on counts, and the bound they give.</summary>
internal sealed class CountPenalty
{
    private const int ValueRoom = 1 << 28;

    private readonly Grid _grid;
    private readonly ValueProgramme _programme;
    private readonly int[] _values;
    private readonly int[] _limits;
    private readonly WorkMeter _work;

    /// <summary>Starts without penalties.</summary>
    /// <param name="grid">Points and shapes of the sheet.</param>
    /// <param name="values">Value of one of each piece, 0 or more.</param>
    /// <param name="limits">At most so many of each.</param>
    /// <param name="work">Where work is counted.</param>
    public CountPenalty(Grid grid, int[] values, int[] limits, WorkMeter work)
    {
        (_grid, _values, _limits, _work) = (grid, values, limits, work);
        _programme = new ValueProgramme(grid);
        _programme.Fill(values);
        long most = Math.Max(1, _programme.At(grid.X.Count - 1, grid.Y.Count - 1));
        Unit = 1;
        while (2 * Unit * most < ValueRoom)
        {
            Unit *= 2;
        }

        Penalty = new int[values.Length];
        Bound = most * Unit;
    }

    /// <summary>How many units of penalty one unit of value is.</summary>
    public long Unit { get; }

    /// <summary>The best penalties so far.</summary>
    public int[] Penalty { get; private set; }

    /// <summary>The bound they give, in units of penalty.</summary>
    public long Bound { get; private set; }

    /// <summary>The limits' worth of the penalties.</summary>
    public long GivenBack => Enumerable.Range(0, _limits.Length).Sum(i => (long)_limits[i] * Penalty[i]);

    /// <summary>What one of each piece is worth after the penalty, in its units.</summary>
    public int[] Net => NetOf(Penalty);

    /// <summary>Walks.</summary>
    /// <param name="steps">At most so many steps.</param>
    /// <param name="known">The value of some pattern within the limits, now and as it grows.</param>
    /// <param name="seen">Is shown every pattern met.</param>
    public void Lower(int steps, Func<long> known, Action<Block> seen)
    {
        double[] at = [.. Penalty.Select(p => (double)p)];
        double stride = 1;
        int idle = 0;
        for (int step = 0; step < steps && !_work.Exhausted && Bound >= (known() + 1) * Unit && stride > 0.01; step++)
        {
            int[] penalty = [.. at.Select((p, i) => (int)Math.Clamp(p, 0, _values[i] * (double)Unit))];
            long bound = Evaluate(penalty);
            idle = bound < Bound || step == 0 ? 0 : idle + 1;
            if (bound < Bound)
            {
                (Bound, Penalty) = (bound, penalty);
            }

            if (idle >= 6)
            {
                stride /= 2;
                idle = 0;
                at = [.. Penalty.Select(p => (double)p)];
            }

            if (Block() is not { } block)
            {
                return;
            }

            seen(block);
            int[] counts = BlockMath.Counts(block, _values.Length);
            double length = 0;
            for (int i = 0; i < counts.Length; i++)
            {
                double slope = counts[i] - _limits[i];
                length += slope > 0 || penalty[i] > 0 ? slope * slope : 0;
            }

            if (length == 0)
            {
                return;
            }

            double move = stride * Math.Max(Unit, bound - (known() * Unit)) / length;
            for (int i = 0; i < counts.Length; i++)
            {
                at[i] = Math.Max(0, penalty[i] + (move * (counts[i] - _limits[i])));
            }
        }
    }

    /// <summary>Fills the programme with the best penalties.</summary>
    public ValueProgramme Fill()
    {
        Evaluate(Penalty);
        return _programme;
    }

    private long Evaluate(int[] penalty)
    {
        _work.Spend(50 + (_programme.Fill(NetOf(penalty), long.MaxValue / 2, long.MaxValue / 2, _work.Cancellation) / 3000));
        return _programme.At(_grid.X.Count - 1, _grid.Y.Count - 1) + Enumerable.Range(0, _limits.Length).Sum(i => (long)_limits[i] * penalty[i]);
    }

    private Block? Block() => _programme.Pattern(_grid.X.Points[^1] - _grid.Kerf, _grid.Y.Points[^1] - _grid.Kerf);

    private int[] NetOf(int[] penalty) => [.. _values.Select((v, i) => (int)((v * Unit) - penalty[i]))];
}
