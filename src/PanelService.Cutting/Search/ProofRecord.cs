// Problem: a bound is believed when someone else can compute it again. Which inequalities and exclusions does it rest on?
// Idea:    whoever raises the bound leaves here what it rests on: value vectors, counts found impossible, a price found
//          to be the least by exhaustion. Of the relaxation's vectors the one with the best bound of its own is enough,
//          and those the mixes were made with. What another one says more strongly is left out.
// Source:  certificates of dual values: see DualVector and PriceMix.
// Cost:    pairs of vectors × stocks; some microseconds.
// Not:     the smallest such set.
using PanelService.Cutting.Many;

namespace PanelService.Cutting.Search;

/// <summary>Collects what the bound rests on.</summary>
/// <param name="model">The model.</param>
internal sealed class ProofRecord(Model model)
{
    private readonly List<Inequality> _inequalities = [];
    private readonly HashSet<DualVector> _known = new(ReferenceEqualityComparer.Instance);
    private readonly List<(int[] Counts, ExclusionSource How)> _exclusions = [];
    private long _claim;
    private long? _noneBelow;

    /// <summary>No plan is said to cost less; not held down to the best plan's price.</summary>
    /// <param name="bound">The price.</param>
    public void Claim(long bound) => _claim = Math.Max(_claim, bound);

    /// <summary>Adds a vector a bound rests on; once.</summary>
    /// <param name="vector">The vector.</param>
    public void Add(DualVector vector)
    {
        if (_known.Add(vector))
        {
            Add([.. vector.Values.Select(v => (long)v)], vector.Best, CapScope.WithinDemand);
        }
    }

    /// <summary>Adds the values of transformed sizes.</summary>
    /// <param name="count">What came of them.</param>
    public void Add(SheetCount count) => Add(count.Values, [count.Cap], CapScope.EveryPattern);

    /// <summary>Adds counts found impossible, and all that are nowhere larger with them.</summary>
    /// <param name="counts">Counts per stock of the model.</param>
    /// <param name="how">How that was found.</param>
    public void Exclude(int[] counts, ExclusionSource how) => _exclusions.Add((counts, how));

    /// <summary>All plans below a price were looked through: there is none.</summary>
    /// <param name="price">The price.</param>
    public void Exhausted(long price) => _noneBelow = Math.Max(_noneBelow ?? 0, price);

    /// <summary>The proof, in terms of the problem.</summary>
    /// <param name="inequalities">The relaxation's vectors: of these the best is added.</param>
    /// <param name="box">How many of each stock may be used.</param>
    public BoundProof ToProof(IReadOnlyList<DualVector> inequalities, StockBox box)
    {
        if (inequalities.Count > 0)
        {
            Add(inequalities.MaxBy(vector => vector.Bound(model, model.Demand, box))!);
        }

        return new BoundProof(
            _claim,
            [.. _inequalities.Where(NeedsSaying).Select(i => new WorthInequality(model.ByPiece(i.Values), model.ByStock(i.Caps), i.Scope))],
            [.. _exclusions.Select(e => new CountExclusion(model.ByStock(e.Counts), e.How))],
            _noneBelow);
    }

    private void Add(long[] values, long[] caps, CapScope scope)
    {
        var covered = values.Select((v, t) => (Int128)v * model.Demand[t]).Aggregate((Int128)0, (a, b) => a + b);
        if (covered > 0)
        {
            _inequalities.Add(new Inequality(values, caps, covered, scope));
        }
    }

    private bool NeedsSaying(Inequality weaker) => !_inequalities.Exists(other => !ReferenceEquals(other, weaker)
        && Implies(other, weaker) && (!Implies(weaker, other) || _inequalities.IndexOf(other) < _inequalities.IndexOf(weaker)));

    // Per unit of what is to be covered no stock holds more of it.
    private static bool Implies(Inequality stronger, Inequality weaker)
    {
        for (int s = 0; s < weaker.Caps.Length; s++)
        {
            if ((System.Numerics.BigInteger)stronger.Caps[s] * weaker.Covered > (System.Numerics.BigInteger)weaker.Caps[s] * stronger.Covered)
            {
                return false;
            }
        }

        return true;
    }

    private sealed record Inequality(long[] Values, long[] Caps, Int128 Covered, CapScope Scope);
}
