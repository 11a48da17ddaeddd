// Problem: sets that fit stocks at a price are given; what is the cheapest way to cover the whole order?
// Idea:    price(S) = least of a stock's price and the price of what one of its greatest sets leaves of S. Covering too
//          much does no harm, so greatest sets suffice; and some stock must hold the piece of S that the fewest of them
//          hold. A stock of which there is one unit may be used once more before the others: a level of its own. Only
//          sets that remain of the whole are priced, and none whose area alone costs too much.
// Source:  programme over subsets: Held and Karp, J. SIAM 10 (1962), from the whole downwards.
// Cost:    sets met × greatest sets that hold the chosen piece × types, and the same for every limited unit.
namespace PanelService.Cutting.Exact;

/// <summary>The cheapest cover of an order.</summary>
internal sealed class SetCover
{
    private const long None = long.MaxValue;
    private const long Open = -1;

    private readonly MultisetIndex _sets;
    private readonly Search.WorkMeter _work;
    private readonly long[] _leastOfOne;
    private readonly List<CoverSet> _unlimited = [];
    private readonly List<CoverSet[]> _units = [];
    private readonly List<long[]> _price = [];
    private readonly List<int[]> _choice = [];
    private CoverSet[][] _holding = [];
    private int[] _order = [];

    /// <summary>Starts with nothing to cover with.</summary>
    /// <param name="sets">The numbering of the sets.</param>
    /// <param name="leastOfOne">Per type: no plan pays less for one, by its area.</param>
    /// <param name="work">Where work is counted.</param>
    public SetCover(MultisetIndex sets, long[] leastOfOne, Search.WorkMeter work) => (_sets, _leastOfOne, _work) = (sets, leastOfOne, work);

    /// <summary>Adds a stock of which there are enough. Cheaper stocks come first.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="price">Its price.</param>
    /// <param name="fits">Whether a set fits it.</param>
    public void AddUnlimited(int stock, long price, Func<int, bool> fits)
    {
        var cheaper = _unlimited.Select(entry => entry.Number).ToHashSet();
        _unlimited.AddRange(Greatest(fits).Where(set => !cheaper.Contains(set)).Select(set => Entry(stock, set, price)));
    }

    /// <summary>Adds a stock of which there are only so many.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="units">How many.</param>
    /// <param name="price">Its price.</param>
    /// <param name="fits">Whether a set fits it.</param>
    public void AddUnits(int stock, int units, long price, Func<int, bool> fits)
    {
        CoverSet[] entries = [.. Greatest(fits).Select(set => Entry(stock, set, price))];
        _units.AddRange(Enumerable.Repeat(entries, units));
    }

    /// <summary>Finds the cheapest cover of the whole order.</summary>
    /// <returns>Its price, <see cref="long.MaxValue"/> where there is none; null where the work did not suffice.</returns>
    public long? Solve()
    {
        long whole = PriceOf(_sets.Count - 1);
        return _work.Exhausted ? null : whole;
    }

    /// <summary>The least price of a cover of a set; <see cref="long.MaxValue"/> where none was found. All there is to cover with is given by then.</summary>
    /// <param name="set">The set's number.</param>
    public long PriceOf(int set)
    {
        if (_price.Count == 0)
        {
            Prepare();
        }

        return Price(_units.Count, set, _sets.Digits(set));
    }

    private void Prepare()
    {
        _holding = [.. Enumerable.Range(0, _sets.Types).Select(t => _unlimited.Where(entry => entry.Counts[t] > 0).ToArray())];
        _order = [.. Enumerable.Range(0, _sets.Types).OrderBy(t => _holding[t].Length)];
        for (int level = 0; level <= _units.Count; level++)
        {
            long[] price = new long[_sets.Count];
            Array.Fill(price, Open);
            price[0] = 0;
            _price.Add(price);
            _choice.Add(new int[_sets.Count]);
        }
    }

    /// <summary>The cheapest cover found of the whole order; its sets may overlap.</summary>
    public IEnumerable<(int Stock, int Set)> Uses() => Uses(_sets.Count - 1);

    /// <summary>The cheapest cover found of a set that has one; what it is covered with may hold more, and overlap.</summary>
    /// <param name="set">The set's number.</param>
    public IEnumerable<(int Stock, int Set)> Uses(int set)
    {
        int level = _units.Count;
        while (set > 0)
        {
            int at = _choice[level][set];
            var from = level > 0 ? _units[level - 1] : _holding[Rarest(_sets.Digits(set))];
            if (at >= 0)
            {
                yield return (from[at].Stock, from[at].Number);
                set = Less(_sets.Digits(set), from[at].Counts, []);
            }

            level = Math.Max(0, level - 1);
        }
    }

    private CoverSet Entry(int stock, int set, long price) => new(stock, set, _sets.Digits(set), price);

    /// <summary>The least price of a set with so many of the limited units.</summary>
    private long Price(int level, int set, int[] counts)
    {
        if (_price[level][set] != Open || _work.Exhausted)
        {
            return _price[level][set] == Open ? None : _price[level][set];
        }

        var entries = level > 0 ? _units[level - 1] : _holding[Rarest(counts)];
        long best = level > 0 ? Price(level - 1, set, counts) : None;
        int choice = -1;
        int[] rest = new int[counts.Length];
        _work.Spend(1 + ((long)entries.Length * counts.Length / 300));
        for (int i = 0; i < entries.Length; i++)
        {
            int left = Less(counts, entries[i].Counts, rest);
            if (left == set || (best != None && entries[i].Price + Least(level, rest) >= best))
            {
                continue;
            }

            long then = Price(Math.Max(0, level - 1), left, [.. rest]);
            if (then != None && then + entries[i].Price < best)
            {
                (best, choice) = (then + entries[i].Price, i);
            }
        }

        _choice[level][set] = choice;
        return _price[level][set] = best;
    }

    /// <summary>A price no cover of the rest goes below: by area, where no free offcuts are left to take it.</summary>
    private long Least(int level, int[] rest)
    {
        long sum = 0;
        for (int t = 0; level <= 1 && t < rest.Length; t++)
        {
            sum += rest[t] * _leastOfOne[t];
        }

        return sum;
    }

    private int Rarest(int[] counts)
    {
        foreach (int type in _order)
        {
            if (counts[type] > 0)
            {
                return type;
            }
        }

        throw new InvalidOperationException("The empty set costs nothing.");
    }

    private int Less(int[] counts, int[] taken, int[] rest)
    {
        int number = 0;
        for (int t = 0; t < counts.Length; t++)
        {
            int left = Math.Max(0, counts[t] - taken[t]);
            number += left * _sets.One(t);
            if (rest.Length > 0)
            {
                rest[t] = left;
            }
        }

        return number;
    }

    /// <summary>The sets that fit and to which nothing can be added, those of many pieces first.</summary>
    private IEnumerable<int> Greatest(Func<int, bool> fits)
    {
        for (int set = _sets.Count - 1; set > 0; set--)
        {
            if (fits(set) && !Enumerable.Range(0, _sets.Types).Any(t => CanGrow(set, t) && fits(set + _sets.One(t))))
            {
                yield return set;
            }
        }
    }

    private bool CanGrow(int set, int type) =>
        set + _sets.One(type) < _sets.Count && _sets.Digit(set + _sets.One(type), type) > _sets.Digit(set, type);

    private sealed record CoverSet(int Stock, int Number, int[] Counts, long Price);
}
