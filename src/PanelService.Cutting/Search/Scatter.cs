// Problem: the relaxation's own patterns are the best for one set of values; a whole plan often needs the second best.
// Idea:    shake the values and price again: every shake brings patterns that are nearly as good and different.
// Source:  randomised column generation; compare the perturbed values of sequential value correction (SequentialFill).
// Cost:    one programme a shake, for all stocks at once.
// Not:     complete in any sense. One seed, so that plans repeat.
namespace PanelService.Cutting.Search;

/// <summary>Adds patterns found under shaken values to the pool.</summary>
internal sealed class Scatter
{
    private readonly Model _model;
    private readonly ColumnPool _pool;
    private readonly Pricing _pricing;
    private readonly WorkMeter _work;
    private ulong _state = 0x9E3779B97F4A7C15;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="pool">Where the patterns are added.</param>
    /// <param name="work">Where work is counted.</param>
    public Scatter(Model model, ColumnPool pool, WorkMeter work)
    {
        (_model, _pool, _work) = (model, pool, work);
        _pricing = new Pricing(model, work);
    }

    /// <summary>Shakes.</summary>
    /// <param name="duals">The values to start from.</param>
    /// <param name="left">How many of each stock may be used: others are not priced.</param>
    /// <param name="shakes">How often.</param>
    /// <param name="strength">How far a value may move, as a share of itself, 0 to 1.</param>
    public void Shake(double[] duals, int[] left, int shakes, double strength)
    {
        for (int shake = 0; shake < shakes && !_work.Exhausted; shake++)
        {
            double[] shaken = Shaken(duals, strength);
            double scale = _pricing.ScaleOf(shaken);
            int[] values = [.. shaken.Select(d => Math.Max(1, (int)(d * scale)))];
            long[] worth = _pricing.Propose(values, left);
            for (int s = 0; s < left.Length; s++)
            {
                if (worth[s] > 0 && left[s] > 0 && _pricing.BestWithin(s, _model.Demand, values) is { } column)
                {
                    _pool.Add(column);
                }
            }
        }
    }

    /// <summary>Values moved at random.</summary>
    /// <param name="duals">The values to start from.</param>
    /// <param name="strength">How far one may move, as a share of itself, 0 to 1.</param>
    public double[] Shaken(double[] duals, double strength)
    {
        double least = Math.Max(1e-9, duals.Max() * 1e-4);
        return [.. duals.Select(d => Math.Max(least, d * (1 - strength + (2 * strength * Next()))))];
    }

    /// <summary>The next number from 0 to 1 (xorshift64*, Vigna 2016).</summary>
    private double Next()
    {
        _state ^= _state >> 12;
        _state ^= _state << 25;
        _state ^= _state >> 27;
        return (unchecked(_state * 0x2545F4914F6CDD1DUL) >> 11) * (1.0 / (1UL << 53));
    }
}
