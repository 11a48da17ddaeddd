// Problem: can these counts of goods hold all pieces? In fractions of patterns, and for what values of the pieces not?
// Idea:    the largest share of the demand that fractions of patterns cut from these goods: column generation, the exact
//          programme as pricing. A share below 1 comes with values of the pieces under which the goods hold less than
//          all pieces are worth: an inequality that forbids these counts, and others. It ends as soon as either is known.
// Source:  Gilmore and Gomory, Operations Research 9 (1961); Farley, Operations Research 38 (1990); the cut: Benders 1962.
// Cost:    one programme and one small linear programme a round.
// Not:     trusted for the inequality: its values are rounded and its right-hand sides come from the exact programme.
using Google.OrTools.LinearSolver;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Relaxes the problem for fixed counts of goods.</summary>
internal sealed class CoverRelaxation
{
    private const int MostRounds = 60;
    private const double Enough = 1 + 1e-7;

    private readonly GoodsModel _goods;
    private readonly Pricing _pricing;
    private readonly Tracer _tracer;
    private readonly SectionPool _pool;
    private readonly WorkMeter _work;

    /// <summary>Makes it.</summary>
    /// <param name="goods">The goods.</param>
    /// <param name="pool">Patterns to start from; new ones are added.</param>
    /// <param name="work">Where work is counted.</param>
    public CoverRelaxation(GoodsModel goods, SectionPool pool, WorkMeter work)
    {
        (_goods, _pool, _work) = (goods, pool, work);
        _pricing = new Pricing(goods.Model, work);
        _tracer = new Tracer(goods, work);
    }

    /// <summary>The inequality of some values.</summary>
    /// <param name="values">Per type, in any unit.</param>
    public Inequality Evaluate(double[] values)
    {
        var inequality = new Inequality(_goods, _pricing.Evaluate(values));
        _tracer.Refilled(inequality.Values);
        return inequality;
    }

    /// <summary>Reads patterns off for the values last evaluated.</summary>
    public Tracer Tracer => _tracer;

    /// <summary>Relaxes.</summary>
    /// <param name="counts">Per good.</param>
    public RelaxedCover Solve(int[] counts)
    {
        using var master = new CoverMaster(_goods, counts);
        foreach (var section in _pool.All)
        {
            master.Add(section);
        }

        for (int round = 0; ; round++)
        {
            if (master.Solve() is not { } solution)
            {
                return new RelaxedCover(1, null, null);
            }

            if (solution.Share >= Enough || round == MostRounds || _work.Exhausted)
            {
                return new RelaxedCover(solution.Share, null, solution);
            }

            var inequality = Evaluate(solution.Values);
            if (HoldsLess(inequality, counts))
            {
                return new RelaxedCover(solution.Share, inequality, solution);
            }

            if (!AddPatterns(master, counts))
            {
                return new RelaxedCover(solution.Share, null, solution);
            }
        }
    }

    private static bool HoldsLess(Inequality inequality, int[] counts)
    {
        long holds = 0;
        for (int g = 0; g < counts.Length; g++)
        {
            holds += inequality.Holds(g, counts[g]);
        }

        return holds < inequality.Needs;
    }

    private bool AddPatterns(CoverMaster master, int[] counts)
    {
        bool added = false;
        for (int g = 0; g < counts.Length; g++)
        {
            if (counts[g] > 0 && _tracer.Pattern(g, Math.Min(_goods.Reach, _goods.Goods[g].LengthOf(counts[g]))) is { } block)
            {
                int before = _pool.All.Count;
                var section = _pool.AddWithParts(_goods.Model.ClassOf[g], block);
                added |= _pool.All.Count > before;
                for (int i = before; i < _pool.All.Count; i++)
                {
                    master.Add(_pool.All[i]);
                }

                _ = section;
            }
        }

        return added;
    }
}

/// <summary>What is known of counts of goods.</summary>
/// <param name="Share">The share of the demand that the patterns known can cover, in fractions.</param>
/// <param name="Forbids">An inequality that forbids these counts; null where none was found.</param>
/// <param name="Solution">The last solution; null where the simplex gave up.</param>
internal sealed record RelaxedCover(double Share, Inequality? Forbids, CoverSolution? Solution);
