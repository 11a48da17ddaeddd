// Problem: which counts of the stocks can the cheapest plan have? With several prices and offcuts this is where the
//          gap between relaxation and plan lies.
// Idea:    take the cheapest counts that no inequality forbids and relax the problem for just those counts. Either the
//          relaxation has no room: its values are a new inequality that forbids them; or it has, and a plan is looked
//          for within them. Found: it is the cheapest there is. Not found: the bound stays there, and the search goes
//          on with the next counts for a plan close to it.
// Source:  Benders decomposition (Numerische Mathematik 4, 1962) of column generation with several stock lengths.
// Cost:    one small integer programme and one warm relaxation per mix.
// Not:     complete: counts that the relaxation allows and no plan was found for stay open.
namespace PanelService.Cutting.Search;

/// <summary>Closes in on the least price over the counts of stocks.</summary>
internal sealed class CountSearch
{
    // Of the root's inequalities only the strongest: the others slow the integer programme down and cut nothing off.
    private const int Strongest = 6;

    private readonly Model _model;
    private readonly Relaxation _relaxation;
    private readonly WorkMeter _work;
    private readonly PriceMix _mix;

    /// <summary>Starts.</summary>
    /// <param name="model">The model.</param>
    /// <param name="relaxation">Relaxes a box; its inequalities are used.</param>
    /// <param name="box">How many of each stock may be used.</param>
    /// <param name="work">Where work is counted.</param>
    /// <param name="proof">Told which inequalities the mixes rest on.</param>
    public CountSearch(Model model, Relaxation relaxation, StockBox box, WorkMeter work, ProofRecord proof)
    {
        (_model, _relaxation, _work) = (model, relaxation, work);
        _mix = new PriceMix(model, box, work, proof);
        foreach (var vector in relaxation.Inequalities.OrderByDescending(v => v.Bound(model, model.Demand, box)).Take(Strongest))
        {
            _mix.Add(vector);
        }
    }

    /// <summary>The next mix that the relaxation allows, cheapest first.</summary>
    /// <param name="rounds">At most so many mixes are relaxed.</param>
    /// <returns>The bound; and counts to look for a plan in, null where none are left or the rounds are over.</returns>
    public MixResult Next(int rounds)
    {
        long bound = 0;
        for (int round = 0; round < rounds && !_work.Exhausted; round++)
        {
            var mix = _mix.Solve();
            bound = Math.Max(bound, mix.Bound);
            if (mix.Counts is null)
            {
                return mix;
            }

            var relaxed = _relaxation.Solve(_model.Demand, new StockBox(mix.Counts, mix.Counts), mix.Bound + 1);
            if (relaxed.Bound <= mix.Bound)
            {
                return mix;
            }

            // The last one is the one that forbids these counts.
            _mix.Add(_relaxation.Inequalities[^1]);
        }

        return new MixResult(bound, null);
    }

    /// <summary>Adds an inequality that holds for every plan.</summary>
    /// <param name="vector">The value vector.</param>
    public void Add(DualVector vector) => _mix.Add(vector);

    /// <summary>Goes on to other counts: no plan was found in these.</summary>
    /// <param name="counts">The counts.</param>
    public void Exclude(int[] counts) => _mix.Exclude(counts);
}
