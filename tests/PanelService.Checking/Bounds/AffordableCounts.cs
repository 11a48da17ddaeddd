// Problem: are there counts of goods within a budget that no known fact forbids?
// Idea:    what is forbidden stays forbidden with fewer, so only counts that spend what they can are looked at: of the last good as many
//          as can be had. A branch ends where some inequality is out of reach even if all the money left went into the good that holds
//          most for it.
// Cost:    products of a few counts; past a limit of nodes it says that it does not know.
// Not:     in floating point: rates are fractions of whole numbers.

namespace PanelService.Checking.Bounds;

/// <summary>Looks for counts that nothing forbids.</summary>
internal sealed class AffordableCounts
{
    private const int MostNodes = 3_000_000;

    private readonly LengthCase _case;
    private readonly int[] _most;
    private readonly int[] _order;
    private readonly List<Fact> _facts = [];
    private readonly List<int[]> _impossible = [];
    private int _nodes;

    /// <summary>Starts with nothing known.</summary>
    /// <param name="problem">The case.</param>
    /// <param name="most">Per good: more are not to be had.</param>
    public AffordableCounts(LengthCase problem, int[] most)
    {
        (_case, _most) = (problem, most);
        _order = [.. Enumerable.Range(0, most.Length).OrderByDescending(g => problem.Goods[g].Price)];

        // What costs nothing is taken first, all of it.
        _order = [.. _order.Where(g => problem.Goods[g].Price == 0), .. _order.Where(g => problem.Goods[g].Price > 0)];
    }

    /// <summary>Adds what every plan keeps to.</summary>
    /// <param name="holds">Per good and count: what so many hold; never less for more.</param>
    /// <param name="needed">What the counts of a plan hold at the least.</param>
    public void Add(long[][] holds, Int128 needed)
    {
        var rates = new (Int128 Worth, Int128 Price)[holds.Length];
        var free = new Int128[holds.Length];
        for (int g = 0; g < holds.Length; g++)
        {
            var good = _case.Goods[g];
            int paid = good.Price == 0 ? _most[g] : Math.Min(good.Paid, _most[g]);
            free[g] = holds[g][paid];
            rates[g] = (0, 1);
            for (int n = paid + 1; n < holds[g].Length; n++)
            {
                var rate = (Worth: holds[g][n] - free[g], Price: (Int128)good.PriceOf(n));
                rates[g] = rate.Worth * rates[g].Price > rates[g].Worth * rate.Price ? rate : rates[g];
            }
        }

        _facts.Add(new Fact(holds, needed, rates, free));
    }

    /// <summary>Adds counts of which, and of fewer, there is no plan.</summary>
    /// <param name="counts">Per good.</param>
    public void Exclude(int[] counts) => _impossible.Add(counts);

    /// <summary>Looks.</summary>
    /// <param name="budget">What they may cost.</param>
    /// <param name="counts">Counts that nothing forbids; null: there are none.</param>
    /// <returns>Whether the search came to its end.</returns>
    public bool TryFind(long budget, out int[]? counts)
    {
        _nodes = 0;
        int[] chosen = new int[_most.Length];
        bool found = budget >= 0 && Try(0, budget, chosen, new Int128[_facts.Count]);
        counts = found ? chosen : null;
        return _nodes <= MostNodes;
    }

    private bool Try(int depth, long budget, int[] chosen, Int128[] sums)
    {
        if (++_nodes > MostNodes || OutOfReach(depth, budget, sums))
        {
            return false;
        }

        if (depth == _order.Length)
        {
            return !_impossible.Exists(most => KnownFacts.Within(chosen, most));
        }

        int g = _order[depth];
        var good = _case.Goods[g];
        int most = good.Price == 0 ? _most[g] : (int)Math.Min(_most[g], good.Paid + (budget / good.Price));
        int least = good.Price == 0 || depth == _order.Length - 1 ? most : Math.Min(most, good.Paid);
        for (int n = most; n >= least; n--)
        {
            chosen[g] = n;
            if (Try(depth + 1, budget - good.PriceOf(n), chosen, [.. sums.Select((sum, k) => sum + _facts[k].Holds[g][n])]))
            {
                return true;
            }
        }

        chosen[g] = 0;
        return false;
    }

    private bool OutOfReach(int depth, long budget, Int128[] sums)
    {
        for (int k = 0; k < _facts.Count; k++)
        {
            var fact = _facts[k];
            Int128 reach = sums[k];
            Int128 best = 0;
            for (int d = depth; d < _order.Length; d++)
            {
                int g = _order[d];
                reach += fact.Free[g];
                best = Int128.Max(best, fact.Rates[g].Worth * budget / fact.Rates[g].Price);
            }

            if (reach + best < fact.Needed)
            {
                return true;
            }
        }

        return false;
    }

    private sealed record Fact(long[][] Holds, Int128 Needed, (Int128 Worth, Int128 Price)[] Rates, Int128[] Free);
}
