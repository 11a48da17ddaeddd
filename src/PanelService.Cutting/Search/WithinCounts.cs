// Problem: a whole plan from given counts of stocks, where drawn patterns have not brought one (CountsDecision).
// Idea:    dive, then choose among the patterns known by an integer programme, with more and more patterns to choose from: such
//          as hold to the demand, fills with corrected values, shaken values.
// Source:  see the parts.
// Cost:    all the work that is left.
// Not:     a proof that there is none.
namespace PanelService.Cutting.Search;

/// <summary>The long search for a plan within counts of stocks.</summary>
internal sealed class WithinCounts
{
    private const int MostBatches = 8;
    private const int ShakesOfBatch = 6;
    private const double PoolTime = 0.1;

    // No way takes more than this part of the work that is left: a dive alone would take all of it, and the programme that
    // chooses among its patterns would find a plan that the dive itself misses.
    private const int Shares = 3;

    private readonly Model _model;
    private readonly ColumnPool _pool;
    private readonly Relaxation _relaxation;
    private readonly SequentialFill _fill;
    private readonly Scatter _scatter;
    private readonly StockBox _box;
    private readonly WorkMeter _work;
    private readonly Incumbent _best;
    private double[] _corrected;
    private bool _pricedWithin;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="relaxation">Relaxes a box.</param>
    /// <param name="fill">Fills stocks.</param>
    /// <param name="state">What the whole search shares.</param>
    public WithinCounts(Model model, Relaxation relaxation, SequentialFill fill, SearchState state)
    {
        (_model, _relaxation, _fill) = (model, relaxation, fill);
        (_pool, _box, _work, _best) = (state.Pool, state.Box, state.Work, state.Best);
        _scatter = new Scatter(model, _pool, _work);
        _corrected = [.. Enumerable.Range(0, model.Types.Length).Select(model.PieceArea)];
        Duals = _corrected;
    }

    /// <summary>Values of the types to shake.</summary>
    public double[] Duals { get; set; }

    /// <summary>Looks for a plan from just these counts.</summary>
    /// <param name="counts">Counts per stock.</param>
    /// <param name="price">Their price: a plan of it ends the search.</param>
    public void Look(int[] counts, long price)
    {
        var within = _box with { Most = counts };

        // Of the same patterns the programme would say the same.
        int chosenFrom = 0;
        foreach (var find in MorePatterns(counts))
        {
            _work.Reserve = _work.Left - (_work.Left / Shares);
            long best = find();
            _work.Reserve = 0;
            if (best > price && _pool.Columns.Count > chosenFrom)
            {
                chosenFrom = _pool.Columns.Count;
                var request = new PoolRequest(_model.Demand, within, price, price + 1, new PoolEffort(PoolTime, AtOnce: true));
                best = _best.Take(PoolProgramme.Improve(_model, _pool.Columns, request, _work) ?? []);
            }

            if (best <= price || _work.Exhausted)
            {
                return;
            }
        }
    }

    /// <summary>Ways of finding a plan and more patterns, the most promising first.</summary>
    private IEnumerable<Func<long>> MorePatterns(int[] counts)
    {
        yield return () => Dive(counts);
        yield return () => Relax(new StockBox(counts, counts));
        if (!_pricedWithin)
        {
            _pricedWithin = true;
            yield return () => Relax(_box);
        }

        for (int batch = 0; batch < MostBatches; batch++)
        {
            double strength = 0.1 + (0.08 * batch);
            yield return () => Shake(counts, strength);
        }
    }

    private long Dive(int[] counts) =>
        _best.Take(new Dive(_model, _relaxation, _fill, _work).Run(_model.Demand, _box with { Most = counts }));

    private long Relax(StockBox box)
    {
        _relaxation.Solve(_model.Demand, box, within: true);
        return _best.Take([]);
    }

    private long Shake(int[] counts, double strength)
    {
        FillWith(_corrected, _box.Most);
        FillWith(_scatter.Shaken(Duals, strength), counts);
        FillWith(_scatter.Shaken(Duals, strength), _box.Most);
        _scatter.Shake(Duals, counts, ShakesOfBatch, strength);
        return _best.Take([]);
    }

    private void FillWith(double[] values, int[] most)
    {
        var uses = _fill.Fill(_model.Demand, most, values);
        _best.Take(uses);
        _corrected = _fill.Correct(_corrected, uses);
    }
}
